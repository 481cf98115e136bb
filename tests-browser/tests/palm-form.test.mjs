// Registering and editing palms, holds, removal, in both kinds of units.
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

test("a palm is registered in feet and edited in metres without drifting", async () => {
  const us = await open(chrome, server.url, { ...LAPTOP, units: "us" });
  await us.goto(at("/palms"));
  await us.locator('a[href="/palms/new"]').click();
  await us.waitForURL(at("/palms/new"));
  await us.fill("#tag", "X 1/2");
  await us.fill("#species", "Sabal palmetto");
  await us.fill("#trunk_height", "12 ft 6 in");
  await us.fill("#lat", "27.95, -82.46");
  await us.fill("#full_crown", "34");
  await save(us);
  await us.waitForURL(at("/palm/X%201%2F2"));
  assert.match(await us.locator("main").innerText(), /Sabal palmetto/);
  await us.done();
  const si = await open(chrome, server.url, LAPTOP);
  await si.goto(at("/palm/X%201%2F2/edit"));
  assert.equal(await si.inputValue("#trunk_height"), "3.81");
  assert.deepEqual([await si.inputValue("#lat"), await si.inputValue("#lon")], ["27.95", "-82.46"]);
  await si.fill("#over", "the café terrace");
  await save(si);
  await si.waitForURL(at("/palm/X%201%2F2"));
  assert.match(await si.locator("main").innerText(), /the café terrace/);
  await si.done();
});

test("species are offered while typing, and an unknown one is asked about", async () => {
  const page = await open(chrome, server.url, PHONE);
  await page.goto(at("/palms/new"));
  await page.locator("#species").pressSequentially("phoenix can");
  await page.waitForFunction(() => [...document.querySelectorAll("#known-species option")].map((o) => o.value).join() === "Phoenix canariensis");
  await page.fill("#tag", "X2");
  await page.fill("#species", "Phoenix canariensus");
  await save(page);
  await page.locator("#species-trouble").waitFor();
  await view(page, "palm-species-phone");
  await page.getByRole("button", { name: "Phoenix canariensis" }).click();
  assert.equal(await page.inputValue("#species"), "Phoenix canariensis");
  await save(page);
  await page.waitForURL(at("/palm/X2"));
  await page.done({ expect: ["422"] });
});

test("the device's position fills the place", async () => {
  const page = await open(chrome, server.url, PHONE);
  await page.context().grantPermissions(["geolocation"]);
  await page.context().setGeolocation({ latitude: 28.5, longitude: -81.25 });
  await page.goto(at("/palms/new"));
  await page.getByRole("button", { name: "Use this device’s position" }).click();
  await page.waitForFunction(() => document.getElementById("lon").value === "-81.250000");
  assert.equal(await page.inputValue("#lat"), "28.500000");
  await page.done();
});

test("a hold is set, stops the cut, and is lifted", async () => {
  const page = await open(chrome, server.url, PHONE);
  await page.goto(at("/palm/Q-01"));
  const take = await page.getByTestId("may-take").innerText();
  assert.match(take, /\d/, "something may be taken before the hold");
  await page.goto(at("/palm/Q-01/holds"));
  await page.getByText("Nest or bats in the crown").click();
  await page.fill("#note", "two eggs");
  await page.getByRole("button", { name: "Set a hold" }).click();
  await page.waitForURL(at("/palm/Q-01"));
  assert.notEqual(await page.getByTestId("may-take").innerText(), take);
  await page.goto(at("/palm/Q-01/holds"));
  await page.getByLabel("Why it may be lifted").fill("flown");
  await page.getByRole("button", { name: "Lift this hold" }).click();
  await page.waitForURL(at("/palm/Q-01"));
  assert.equal(await page.getByTestId("may-take").innerText(), take);
  await page.done();
});

test("a palm is taken off the register with a reason", async () => {
  const page = await open(chrome, server.url, PHONE);
  await page.goto(at("/palm/T-02/remove"));
  await page.getByRole("button", { name: "Take out of the register" }).click();
  await page.locator("#why-trouble").waitFor();
  await page.fill("#why", "felled after a storm");
  await page.getByRole("button", { name: "Take out of the register" }).click();
  await page.waitForURL(at("/palms"));
  assert.equal((await page.request.get(at("/palm/T-02"))).status(), 404);
  await page.done({ expect: ["422"] });
});
