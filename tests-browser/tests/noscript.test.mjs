// Everything but the slider works without script.
import { after, before, test } from "node:test";
import assert from "node:assert/strict";
import { PHONE, browser, open } from "../lib/browser.mjs";
import { demo } from "../lib/server.mjs";
import { shot } from "../lib/shots.mjs";

let server, chrome;
before(async () => {
  server = await demo();
  chrome = await browser();
});
after(async () => {
  await chrome?.close();
  await server?.remove();
});
const at = (path) => new URL(path, server.url).href;
const plain = () => open(chrome, server.url, { ...PHONE, script: false });
const save = (page) => page.locator(".save button.primary").click();

test("an inspection is refused, mended and saved", async () => {
  const page = await plain();
  await page.goto(at("/palm/T-01/inspect"));
  assert.equal(await page.locator("button.step:visible").count(), 0, "no buttons that do nothing");
  await page.fill("#green", "x");
  await page.selectOption("#clock_left", "8.5");
  await page.getByRole("radio", { name: "Down", exact: true }).check();
  await save(page);
  assert.match(await page.locator("#green-trouble").innerText(), /no whole number/);
  assert.equal(await page.inputValue("#clock_left"), "8.5");
  assert.ok(await page.locator('input[value="down"]').isChecked());
  await shot(page, "noscript-inspect-phone");
  await page.fill("#green", "12");
  await save(page);
  await page.waitForURL(at("/palm/T-01"));
  assert.match(await page.locator(".history").innerText(), /4 May 2026/);
  await page.done({ expect: ["422"] });
});

test("the spiral counter fills in the count", async () => {
  const page = await plain();
  await page.goto(at("/palm/T-02/inspect"));
  await page.getByText("Find the marked frond by its spiral").click();
  await page.fill("#spiral", "1");
  await page.fill("#place", "6");
  await page.getByRole("button", { name: "Fill in the count" }).click();
  assert.equal(await page.inputValue("#new_leaves"), "40");
  await page.done();
});

test("the Enter key saves", async () => {
  const page = await plain();
  await page.goto(at("/palm/T-02/inspect"));
  await page.fill("#green", "11");
  await page.press("#green", "Enter");
  await page.waitForURL(at("/palm/T-02"));
  await page.done();
});

test("a palm is registered", async () => {
  const page = await plain();
  await page.goto(at("/palms/new"));
  await page.fill("#tag", "NS-1");
  await page.fill("#species", "Sabal palmeto");
  await save(page);
  assert.match(await page.locator("#species-trouble").innerText(), /Sabal palmetto/);
  await page.fill("#species", "Sabal palmetto");
  await save(page);
  await page.waitForURL(at("/palm/NS-1"));
  await page.done({ expect: ["422"] });
});

test("the crown's weeks and cuts are links", async () => {
  const page = await plain();
  await page.goto(at("/palm/T-07"));
  const words = () => page.locator("#crown-counts").innerText();
  const now = await words();
  await page.locator('#crown a[href*="weeks=52"], .weeks a[href*="weeks=52"]').first().click();
  assert.notEqual(await words(), now);
  await page.done();
});

test("the settings and the search work", async () => {
  const page = await plain();
  await page.goto(at("/settings"));
  await page.getByText("Español").click();
  await page.locator("form.settings button").click();
  await page.goto(at("/palms?q=T-07"));
  assert.equal(await page.locator("html").getAttribute("lang"), "es");
  assert.equal(await page.locator('.palms a[href="/palm/T-07"]').count() > 0, true);
  await page.done();
});
