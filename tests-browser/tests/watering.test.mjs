// Water and feed: who wants water, one tap, the log, weather in, what bars a feeding.
import { after, before, test } from "node:test";
import assert from "node:assert/strict";
import { LAPTOP, PHONE, browser, open } from "../lib/browser.mjs";
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

test("one tap notes the litres the list names, and the palm is done for today", async () => {
  const page = await open(chrome, server.url, PHONE);
  await page.goto(at("/watering"));
  const first = page.locator('[data-group="today"] li[data-tag]').first();
  const tag = await first.getAttribute("data-tag");
  const tap = first.getByTestId("tap");
  const litres = (await tap.innerText()).match(/[\d.,]+/)[0];
  await tap.click();
  await page.waitForURL(/\/watering$/);
  assert.equal(await page.locator(`[data-group="today"] li[data-tag="${tag}"]`).count(), 0, `${tag} is still to be watered today`);
  await page.goto(at(`/palm/${tag}/water`));
  const log = await page.getByTestId("log").locator("li").first().innerText();
  assert.ok(log.includes("4 May 2026") && log.includes(litres), `${litres} is not in ${log}`);
  // taken back: it wants water again
  await page.getByTestId("log").locator("li").first().getByRole("button").click();
  await page.waitForURL(/\/water$/);
  await page.goto(at("/watering"));
  assert.equal(await page.locator(`[data-group="today"] li[data-tag="${tag}"]`).count(), 1);
  await page.done();
});

test("a watering with its litres goes into the log; nonsense comes back with what was typed", async () => {
  const page = await open(chrome, server.url, PHONE);
  await page.goto(at("/palm/Q-05/water"));
  await page.fill("#litres", "a bucket");
  await page.fill("#water_notes", "by hand");
  await page.getByRole("button", { name: "Save the watering" }).click();
  assert.match(await page.locator("#litres-trouble").innerText(), /a bucket/);
  assert.equal(await page.inputValue("#water_notes"), "by hand");
  await page.fill("#litres", "50 gal");
  await page.getByRole("button", { name: "Save the watering" }).click();
  await page.waitForURL(/\/palm\/Q-05\/water$/);
  // 50 US gallons of 3.785 L
  assert.match(await page.getByTestId("log").locator("li").first().innerText(), /189\sL/);
  await shot(page, "water-noted-phone");
  await page.done({ expect: ["422"] });
});

test("weather comes in by the import page and a bad row says where and why", async () => {
  const page = await open(chrome, server.url, LAPTOP);
  await page.goto(at("/import"));
  const rows = ["2026-05-03,,19,29,0", "2026-05-02,,31,20,0", "2026-05-01,Nowhere,19,29,0"];
  const text = ["date,site,tmin_c,tmax_c,rain_mm", ...rows, ""].join("\n");
  await page.setInputFiles("#file", { name: "weather.csv", mimeType: "text/csv", buffer: Buffer.from(text) });
  await page.getByRole("button", { name: "Look through it" }).click();
  await page.waitForURL(/\/import\/./);
  const said = await page.locator("main").innerText();
  for (const part of ["Weather by days.", "1 row would be recorded", "Line 3, tmin_c:", "Line 4, site:", "Nowhere"]) {
    assert.ok(said.includes(part), `${part} is not in ${said}`);
  }
  await page.done();
});

test("a feeding that something stands against is asked about, then noted; a shortage can be asked for", async () => {
  const page = await open(chrome, server.url, PHONE);
  await page.goto(at("/palm/T-07/feeding"));
  assert.equal(await page.locator('[data-against="maintenance"]').getAttribute("data-may"), "false", "fed 40 days ago");
  await page.selectOption("#product", "palm-blend");
  await page.fill("#mass", "1400 g");
  await page.getByRole("button", { name: "Save the feeding" }).click();
  assert.match(await page.locator("#product-trouble").innerText(), /not again before/);
  await page.locator("#product-trouble input[type=checkbox]").check();
  await page.getByRole("button", { name: "Save the feeding" }).click();
  await page.waitForURL(/\/palm\/T-07\/feeding$/);
  assert.match(await page.getByTestId("log").locator("li").first().innerText(), /4 May 2026.*1\.4\skg/s);
  await page.selectOption("#ask-against", "mn-deficiency");
  await page.getByRole("button", { name: "Show" }).click();
  await page.locator('[data-against="mn-deficiency"]').waitFor();
  await shot(page, "feeding-asked-phone");
  await page.done({ expect: ["422"] });
});
