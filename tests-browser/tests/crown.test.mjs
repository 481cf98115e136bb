// The drawn crown moves: the slider through the weeks, the switch through the cuts.
import { after, before, test } from "node:test";
import assert from "node:assert/strict";
import { LAPTOP, PHONE, browser, open } from "../lib/browser.mjs";
import { demo } from "../lib/server.mjs";
import { view } from "../lib/shots.mjs";

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
const drawn = (page) => page.evaluate(() => ["fronds-far", "fronds-near"].map((id) => document.getElementById(id).innerHTML).join());
const counts = (page) => page.locator("#crown-counts").innerText();

test("the slider moves the crown through the forecast", async () => {
  const page = await open(chrome, server.url, PHONE);
  await page.goto(at("/palm/T-07"));
  const [crown, words] = [await drawn(page), await counts(page)];
  assert.ok((await page.locator("#crown use").count()) > 5, "fronds are drawn");
  const slider = page.locator("#weeks");
  await slider.focus();
  for (let i = 0; i < 13; i++) await page.keyboard.press("ArrowRight");
  assert.equal(await slider.inputValue(), "52");
  assert.notEqual(await drawn(page), crown);
  assert.notEqual(await counts(page), words);
  assert.match(await slider.getAttribute("aria-valuetext"), /\S/);
  await page.locator("#crown").scrollIntoViewIfNeeded();
  await view(page, "crown-52-weeks-phone");
  await page.done();
});

test("the switch shows the crown as planned, as asked and uncut", async () => {
  const page = await open(chrome, server.url, LAPTOP);
  await page.goto(at("/palm/T-07"));
  await page.fill("#ask-live", "6");
  await page.locator(".ask-cut button[type=submit]").click();
  await page.waitForURL(/live=6/);
  assert.ok(["allowed", "partly", "refused"].includes(await page.getByTestId("answer").getAttribute("data-verdict")));
  const seen = {};
  for (const mode of ["plan", "asked", "uncut"]) {
    await page.locator(`#crown-switch a[data-mode="${mode}"]`).click();
    assert.equal(await page.locator("#crown").getAttribute("data-mode"), mode);
    await page.locator("#weeks").fill("8");
    seen[mode] = [await drawn(page), await counts(page)];
  }
  assert.notDeepEqual(seen.asked, seen.uncut, "what is asked for changes the crown");
  assert.notEqual(seen.asked[1], seen.plan[1]);
  await page.done();
});

test("taking 25 of a palm's fronds is refused with a reason and a nearer cut", async () => {
  const page = await open(chrome, server.url, LAPTOP);
  await page.goto(at("/palm/Q-01?live=25"));
  const answer = page.getByTestId("answer");
  assert.equal(await answer.getAttribute("data-verdict"), "refused");
  assert.match(await page.getByTestId("allowed").innerText(), /\d|[Nn]othing/);
  await page.done();
});
