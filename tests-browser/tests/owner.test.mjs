// The owner's sheet: a link is given, opened without a session, revoked, and closed.
import { after, before, test } from "node:test";
import assert from "node:assert/strict";
import { LAPTOP, PHONE, browser, open } from "../lib/browser.mjs";
import { lowContrast, overflow, smallTargets } from "../lib/measure.mjs";
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
const at = (to) => new URL(to, server.url).href;

test("a link is given, opens without a session, and closes when it is revoked", async () => {
  const keeper = await open(chrome, server.url, PHONE);
  await keeper.goto(at("/palm/Q-01"));
  await keeper.getByTestId("owner").click();
  await keeper.getByLabel("For whom").fill("Ines");
  await keeper.getByRole("button", { name: "Make the link" }).click();
  const link = await keeper.getByTestId("secret-link").getAttribute("href");
  assert.match(link, /\/o\/[a-z2-9]{32}$/);
  await shot(keeper, "owner-given");
  await keeper.goto(at("/palm/Q-01/owner"));
  assert.equal(await keeper.getByTestId("secret-link").count(), 0, "shown once");
  assert.ok(!(await keeper.content()).includes(link.split("/o/")[1]));

  // another browser, no cookies, no script
  const owner = await open(chrome, server.url, { ...PHONE, script: false });
  const answer = await owner.goto(link);
  assert.equal(answer.status(), 200);
  assert.equal(answer.headers()["cache-control"], "no-store, private");
  assert.match(answer.headers()["x-robots-tag"], /noindex/);
  assert.match(await owner.locator("h1").innerText(), /Q-01/);
  assert.equal(await owner.locator(".crowns figure svg").count(), 3);
  const addresses = await owner.locator("a[href]").evaluateAll((all) => all.map((a) => new URL(a.href).pathname));
  const path = new URL(link).pathname;
  assert.ok(addresses.every((to) => to === path || to === `${path}/sheet.pdf`), addresses.join(" "));
  assert.deepEqual(await lowContrast(owner), []);
  assert.deepEqual(await smallTargets(owner), []);
  assert.equal(await overflow(owner), 0);
  await shot(owner, "owner-page");
  const pdf = await owner.request.get(`${link}/sheet.pdf`, { timeout: 90_000 });
  assert.equal(pdf.headers()["content-type"], "application/pdf");
  await owner.getByText("Español").click();
  assert.equal(await owner.locator("html").getAttribute("lang"), "es");

  const row = keeper.locator(".links li", { hasText: "Ines" });
  await row.getByRole("button", { name: "Revoke" }).click();
  assert.equal(await keeper.locator(".links li", { hasText: "Ines" }).count(), 0);
  await keeper.done();
  const closed = await owner.goto(link);
  assert.equal(closed.status(), 404);
  const body = await owner.locator("main").innerText();
  const unknown = await owner.goto(at("/o/" + "a".repeat(32)));
  assert.equal(unknown.status(), 404);
  assert.equal(await owner.locator("main").innerText(), body);
  await owner.done({ expect: ["404"] });
});

test("the keeper's page fits phone and laptop", async () => {
  for (const [name, device] of [["phone", PHONE], ["laptop", LAPTOP]]) {
    const page = await open(chrome, server.url, device);
    await page.goto(at("/palm/L-16/owner"));
    assert.deepEqual(await lowContrast(page), []);
    assert.equal(await overflow(page), 0);
    await shot(page, `owner-keeper-${name}`);
    await page.done();
  }
});
