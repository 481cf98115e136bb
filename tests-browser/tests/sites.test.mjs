// Describing a site and a crew: rows that grow, troubles beside their row, nothing typed lost.
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
const save = (page) => page.getByRole("button", { name: "Save", exact: true }).click();

test("a site gets a second window, an overlap is said beside it, and mended it is saved", async () => {
  const page = await open(chrome, server.url, PHONE);
  await page.goto(at("/sites"));
  await page.getByRole("link", { name: "Lantern Walk" }).click();
  await page.getByRole("link", { name: "Edit the description" }).click();
  assert.equal(await page.inputValue("#hours_1-from"), "05:30");
  await page.fill("#hours_2-from", "10:00");
  await page.fill("#hours_2-to", "12:00");
  await page.fill("#notes", "Two dogs now.");
  await save(page);
  await page.locator("#hours_2-trouble").waitFor();
  assert.match(await page.locator("#hours_2-trouble").innerText(), /overlaps 05:30-11:00/);
  assert.equal(await page.inputValue("#notes"), "Two dogs now.");
  await view(page, "site-overlap-phone");
  await page.fill("#hours_2-from", "16:00");
  await page.fill("#hours_2-to", "18:30");
  await save(page);
  await page.waitForURL(at("/site/Lantern%20Walk"));
  const said = await page.locator("main").innerText();
  assert.match(said, /05:30 to 11:00, 16:00 to 18:30/);
  assert.match(said, /Two dogs now\./);
  await page.done({ expect: ["422"] });
});

test("a new crew is described in yards and stands in the list", async () => {
  const page = await open(chrome, server.url, { ...LAPTOP, units: "us" });
  await page.goto(at("/crews"));
  await page.getByRole("link", { name: "Describe a new crew" }).click();
  await page.fill("#crew_name", "Heron");
  await page.fill("#people", "2");
  await page.fill("#from_lat", "25.56, -80.47");
  await page.getByLabel("Working from a lift").check();
  await page.fill("#room", "20");
  await save(page);
  await page.waitForURL(at("/crew/Heron"));
  assert.match(await page.locator("main").innerText(), /20\syd³/);
  await page.goto(at("/crews"));
  await page.getByRole("link", { name: "Heron" }).waitFor();
  await page.done();
});
