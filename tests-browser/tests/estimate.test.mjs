// What cuts take and cost: a price set, an estimate that follows it, a quote to print.
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

test("a price is set to the cent, nonsense comes back, and the estimate follows", async () => {
  const page = await open(chrome, server.url, PHONE);
  await page.goto(at("/estimate"));
  assert.match(await page.locator('[data-key="trip"]').innerText(), /48\.00\sUSD/);
  assert.match(await page.locator('[data-key="tip_m3"]').innerText(), /assumed/);
  await page.goto(at("/prices"));
  await page.locator('[id="price.trip"]').fill("cheap");
  await page.getByRole("button", { name: "Save" }).click();
  assert.match(await page.locator('[id="price.trip-trouble"]').innerText(), /cheap/);
  await page.locator('[id="price.trip"]').fill("51,25");
  await page.locator('[id="price.tip_m3"]').fill("9.90");
  await page.getByRole("button", { name: "Save" }).click();
  await page.waitForURL(/\/prices$/);
  assert.equal(await page.locator('[id="price.trip"]').inputValue(), "51.25");
  await page.goto(at("/estimate"));
  assert.match(await page.locator('[data-key="trip"]').innerText(), /51\.25\sUSD/);
  assert.doesNotMatch(await page.locator('[data-key="tip_m3"]').innerText(), /assumed/);
  await shot(page, "estimate-own-prices-phone");
  await page.done({ expect: ["422"] });
});

test("named palms are estimated, one that is not there is refused by name, and the quote is a PDF", async () => {
  const page = await open(chrome, server.url, LAPTOP);
  await page.goto(at("/estimate?palms=T-01,T-02"));
  const tags = await page.locator("li[data-tag]").evaluateAll((all) => all.map((one) => one.dataset.tag));
  const left = await page.locator("li[data-code]").count();
  assert.equal(tags.length + left, 2);
  await page.goto(at("/estimate?palms=nobody"));
  assert.match(await page.locator('[data-code="estimate-no-such-palm"]').innerText(), /nobody/);
  const answer = await page.request.get(at("/quote.pdf"));
  assert.equal(answer.headers()["content-type"], "application/pdf");
  assert.equal((await answer.body()).subarray(0, 5).toString(), "%PDF-");
  await page.done();
});
