// Files in: first a look, then taking; refused rows come back as a file.
import { after, before, test } from "node:test";
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
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
const choose = (page, name, text) => page.setInputFiles("#file", { name, mimeType: "text/csv", buffer: Buffer.from(text) });

test("a list of palms is looked through, then taken, and refused rows can be fetched", async () => {
  const page = await open(chrome, server.url, LAPTOP);
  await page.goto(at("/import"));
  const rows = ["N-1,Sabal palmetto,New yard,2", "N-2,Sabal palmeto,New yard,", "N-3,Butia odorata,New yard,-2", "T-01,Sabal palmetto,Elsewhere,"];
  await choose(page, "palms.csv", ["tag,species,site,trunk_height_m", ...rows, ""].join("\n"));
  await page.getByRole("button", { name: "Look through it" }).click();
  await page.waitForURL(/\/import\/./);
  const said = await page.locator("main").innerText();
  for (const part of ["2 rows would be recorded", "2 are refused", "Line 4, trunk_height_m:", "Line 5, tag:", "Nearest: Sabal palmetto"]) {
    assert.ok(said.includes(part), `${part} is not in ${said}`);
  }
  await shot(page, "import-preview-laptop");
  await page.setViewportSize(PHONE.viewport);
  await shot(page, "import-preview-phone");
  const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("link", { name: "Refused rows as a file" }).click()]);
  const refused = readFileSync(await download.path(), "utf8").trim().split("\n");
  assert.equal(refused.length, 3);
  assert.match(refused[1], /^N-3,Butia odorata,New yard,-2,4,trunk_height_m,/);
  assert.equal((await page.request.get(at("/palm/N-1"))).status(), 404, "a preview records nothing");
  await page.getByRole("button", { name: "Record 2 rows" }).click();
  await page.getByText("2 rows are recorded.").waitFor();
  assert.equal((await page.request.get(at("/palm/N-1"))).status(), 200);
  await shot(page, "import-done-phone");
  await page.done();
});

test("inspections come in and change the palm", async () => {
  const page = await open(chrome, server.url, PHONE);
  await page.goto(at("/import"));
  await choose(page, "inspections.csv", "tag,date,green,yellowing,brown\nT-03,2026-05-02,13,1,0\nT-99,2026-05-02,13,1,0\n");
  await page.getByRole("button", { name: "Look through it" }).click();
  await page.getByRole("button", { name: "Record 1 row" }).click();
  await page.getByText("1 row is recorded.").waitFor();
  await page.goto(at("/palm/T-03"));
  assert.match(await page.locator(".history").innerText(), /2 May 2026/);
  await page.done();
});

test("a file that is none is refused in words", async () => {
  const page = await open(chrome, server.url, PHONE);
  await page.goto(at("/import"));
  await page.getByRole("button", { name: "Look through it" }).click();
  await page.getByText("Choose a file first.").waitFor();
  await choose(page, "empty.csv", "");
  await page.getByRole("button", { name: "Look through it" }).click();
  await page.getByText("The file is empty.").waitFor();
  await page.done({ expect: ["422"] });
});
