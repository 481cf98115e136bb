// Spanish and US units, by setting, everywhere.
import { after, before, test } from "node:test";
import assert from "node:assert/strict";
import { PHONE, browser, open } from "../lib/browser.mjs";
import { demo } from "../lib/server.mjs";
import { shot } from "../lib/shots.mjs";

let server, chrome;
before(async () => {
  [server, chrome] = await Promise.all([demo(), browser()]);
});
after(async () => {
  await chrome?.close();
  await server?.remove();
});
const at = (path) => new URL(path, server.url).href;
const PAGES = ["/", "/palms", "/palm/L-16", "/palm/Q-19", "/palm/L-16/inspect", "/palm/L-16/edit", "/palm/L-16/holds", "/palm/L-16/remove", "/import", "/sources", "/about", "/settings"];

test("Spanish is chosen in the settings and stays", async () => {
  const page = await open(chrome, server.url, PHONE);
  await page.goto(at("/settings"));
  await page.getByText("Español").click();
  await page.getByRole("button", { name: "Save" }).click();
  await page.goto(at("/palms"));
  assert.equal(await page.locator("html").getAttribute("lang"), "es");
  assert.match(await page.locator("nav").first().innerText(), /Hoy/);
  await page.done();
});

for (const path of PAGES) {
  test(`${path} speaks Spanish and leaves no word code bare`, async () => {
    const page = await open(chrome, server.url, { ...PHONE, lang: "es" });
    await page.goto(at(path));
    const text = await page.locator("body").innerText();
    const codes = text.match(/\b(common|forms?|palm|palms|reading|crown|asked|cut|hold|need|today|caution|measure|error|history|explanation)-[a-z]+(-[a-z]+)*\b/g);
    assert.deepEqual(codes, null);
    assert.doesNotMatch(text, /\b(the|and|fronds|spear|save)\b/i, "English words on a Spanish page");
    await shot(page, `es${path.replaceAll(/\W+/g, "-")}-phone`);
    await page.done();
  });
}

test("US units: feet on the palm and in the form, inches in the cut", async () => {
  const page = await open(chrome, server.url, { ...PHONE, units: "us" });
  await page.goto(at("/palm/L-16"));
  const text = await page.locator("main").innerText();
  assert.match(text, /\d\sft\b/);
  assert.doesNotMatch(text, /\d\s(m|cm)\b/);
  await shot(page, "us-palm-phone");
  await page.goto(at("/palm/L-16/edit"));
  assert.match(await page.locator('label[for="trunk_height"]').innerText(), /\(ft\)/);
  await page.done();
});
