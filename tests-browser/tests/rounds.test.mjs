// A day is planned, kept, printed and worked off on the phone.
import { after, before, test } from "node:test";
import assert from "node:assert/strict";
import { LAPTOP, browser, open } from "../lib/browser.mjs";
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

test("a day is proposed, kept, printed, and its first palms are done and left out", async () => {
  const page = await open(chrome, server.url, LAPTOP);
  await page.goto(at("/rounds/plan"));
  await page.fill("#day", "2026-05-05");
  await page.getByRole("button", { name: "Propose", exact: true }).click();
  await page.waitForURL(/go=yes/);
  const palms = await page.locator(".proposed tr[data-tag]").count();
  assert.ok(palms > 5, `${palms} palms`);
  assert.ok((await page.getByTestId("proposal").innerText()).startsWith(`${palms} palms`));
  await page.fill("#notes", "Ask for the key at the kiosk.");
  await page.getByTestId("keep").click();
  await page.waitForURL(/\/rounds$/);
  await page.locator('.rounds-list li[data-state="planned"] a').filter({ hasText: "5 May" }).first().click();
  await page.waitForURL(/\/round\//);
  assert.ok((await page.locator("main").innerText()).includes("Ask for the key at the kiosk."));
  const sheet = await page.request.get(`${page.url()}/sheet.pdf`, { timeout: 90_000 });
  assert.equal(sheet.headers()["content-type"], "application/pdf");
  assert.ok((await sheet.body()).subarray(0, 5).toString() === "%PDF-");

  await page.setViewportSize({ width: 390, height: 844 });
  await page.getByTestId("start").click();
  const next = page.getByTestId("next");
  const tag = await next.getAttribute("data-tag");
  await shot(page, "round-next-phone");
  await page.fill("#minutes", "14");
  await page.getByTestId("done").click();
  const done = page.locator(`.round-stops li[data-tag="${tag}"]`);
  assert.equal(await done.getAttribute("data-state"), "done");
  assert.match(await done.innerText(), /14 min/);
  const second = await next.getAttribute("data-tag");
  assert.notEqual(second, tag);
  await next.locator("details.leave summary").click();
  await next.getByTestId("skip").click();
  assert.match(await page.locator("#why-trouble").innerText(), /why/i);
  await next.getByLabel("wind or rain").check();
  await next.getByTestId("skip").click();
  assert.equal(await page.locator(`.round-stops li[data-tag="${second}"]`).getAttribute("data-state"), "skipped");
  await page.getByTestId("finish").click();
  await page.goto(at("/rounds"));
  assert.equal(await page.locator('.rounds-list li[data-state="finished"]').filter({ hasText: "5 May" }).count(), 1);
  await page.done({ expect: ["422"] });
});
