// The season: a list of visits, a grid of weeks, what a visit more or fewer does, and the feed for calendars.
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
const at = (path) => new URL(path, server.url).href;

for (const [device, name] of [[PHONE, "phone"], [LAPTOP, "laptop"]]) {
  test(`the season is read and asked on a ${name}`, async () => {
    const page = await open(chrome, server.url, device);
    await page.goto(at("/season"));
    assert.match(await page.getByTestId("summary").innerText(), /\d+ visits at 3 sites in 52 weeks/);
    assert.equal(await page.locator("section.site").count(), 3);
    assert.equal(await page.getByTestId("grid").locator("tbody tr").count(), 3);
    // on a phone the list comes first, on a laptop the grid
    const top = async (what) => (await page.locator(what).boundingBox()).y;
    const listFirst = (await top(".season-list")) < (await top(".weeks-grid"));
    assert.equal(listFirst, name === "phone");
    await page.getByRole("link", { name: "26 weeks" }).click();
    assert.match(await page.getByTestId("summary").innerText(), /in 26 weeks/);
    await page.locator('section[data-site="Lantern Walk"] h2 a').click();
    await page.getByRole("heading", { name: "One visit more or fewer" }).waitFor();
    assert.ok((await page.locator('[data-plan="fewer"], [data-plan="more"]').count()) > 0);
    await page.evaluate(() => document.querySelectorAll("main details").forEach((part) => (part.open = true)));
    assert.deepEqual(await lowContrast(page), [], "contrast under 7:1");
    assert.deepEqual(await smallTargets(page), [], "things to press under 48 px");
    assert.ok((await overflow(page)) <= 0, "the page is wider than the window");
    await shot(page, `season-lantern-walk-${name}`);
    const feed = await page.request.get(await page.getByTestId("feed").evaluate((link) => link.href));
    assert.equal(feed.headers()["content-type"], "text/calendar; charset=utf-8");
    const text = await feed.text();
    assert.ok(text.startsWith("BEGIN:VCALENDAR\r\n") && text.endsWith("END:VCALENDAR\r\n"));
    await page.close();
  });
}
