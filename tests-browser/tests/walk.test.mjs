// A walk over a site and how to get at a palm: asked with the form, answered in a sentence, a list and drawings.
import { after, before, test } from "node:test";
import assert from "node:assert/strict";
import { LAPTOP, PHONE, browser, open } from "../lib/browser.mjs";
import { demo } from "../lib/server.mjs";

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
  for (const script of [true, false]) {
    test(`a walk is ordered on a ${name} ${script ? "with" : "without"} script`, async () => {
      const page = await open(chrome, server.url, { ...device, script });
      await page.goto(at("/palms"));
      await page.getByRole("link", { name: "Plan a walk" }).click();
      await page.waitForURL(at("/walk"));
      assert.equal(await page.getByTestId("answer").count(), 0, "nothing was asked yet");
      await page.selectOption("#site", { value: "site:Lantern Walk" });
      await page.getByRole("button", { name: "Order the walk" }).click();
      assert.match(await page.getByTestId("answer").innerText(), /\d+ palms, .* on foot/);
      // the classes stand in the order of health, numbered through
      const classes = await page.locator(".walk-stops").evaluateAll((all) => all.map((one) => one.dataset.class));
      const order = ["healthy", "unknown", "suspect", "confirmed"];
      assert.deepEqual(classes, order.filter((one) => classes.includes(one)));
      assert.ok(classes.includes("suspect"), "the demo has a wilt suspect there");
      const numbers = await page.locator(".walk-stops li").evaluateAll((all) => all.map((one) => one.value));
      assert.deepEqual(numbers, numbers.map((_, i) => i + 1));
      assert.equal(await page.locator(".walk-drawn .spot").count(), numbers.length);
      const suspects = page.locator(".walk-stops[data-class=suspect] li");
      assert.ok((await suspects.locator(".why-class").allInnerTexts()).every((why) => why.length > 5));
      await page.done();
    });
  }
}

test("what is wrong is said at its field and what was typed stays", async () => {
  const page = await open(chrome, server.url, PHONE);
  await page.goto(at("/walk?site=site:Lantern+Walk&tags=L-15,NOBODY"));
  assert.match(await page.getByTestId("trouble").innerText(), /NOBODY/);
  assert.equal(await page.inputValue("#tags"), "L-15,NOBODY");
  await page.goto(at("/walk?site=site:Lantern+Walk&sets=2.5"));
  assert.equal(await page.locator("#sets").getAttribute("aria-invalid"), "true");
  await page.done();
});

test("a palm's page says with what and from where, its own page says why", async () => {
  const page = await open(chrome, server.url, PHONE);
  await page.goto(at("/palm/T-07"));
  assert.match(await page.getByTestId("reach").innerText(), /From the ground|Only from a lift/);
  await page.getByTestId("reach-more").click();
  await page.waitForURL(/\/palm\/T-07\/reach/);
  assert.ok((await page.locator(".reach-tools li").count()) >= 9);
  await page.fill("#petiole", "20");
  await page.getByRole("button", { name: "Show" }).click();
  // no loppers open to 20 cm
  assert.equal(await page.locator('.reach-tools li.taken[data-tool$="loppers"]').count(), 0);
  assert.match(await page.locator('.reach-tools li[data-tool="loppers"]').innerText(), /opens no wider|no higher/);
  await page.fill("#petiole", "wide");
  await page.getByRole("button", { name: "Show" }).click();
  assert.match(await page.locator("[role=alert]").innerText(), /A width from/);
  assert.equal(await page.inputValue("#petiole"), "wide");
  await page.done();
});

test("near wires the answer is no", async () => {
  const page = await open(chrome, server.url, PHONE);
  await page.goto(at("/palm/L-10/reach"));
  const answer = page.getByTestId("reach");
  assert.match(await answer.getAttribute("class"), /refuse/);
  assert.match(await answer.innerText(), /line-clearance/);
  assert.equal(await page.locator(".reach-tools, .reach-places").count(), 0, "no tool and no place is offered");
  await page.done();
});
