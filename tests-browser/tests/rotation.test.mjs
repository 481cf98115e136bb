// Blade sets in rotation: asked with the form, answered in a sentence, tables and lanes; with and without script.
import { after, before, describe, test } from "node:test";
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { LAPTOP, PHONE, browser, open } from "../lib/browser.mjs";
import { lowContrast, overflow, smallTargets } from "../lib/measure.mjs";
import { demo } from "../lib/server.mjs";
import { shot } from "../lib/shots.mjs";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

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

async function broken(page) {
  await page.evaluate(AXE);
  const found = await page.evaluate(() => window.axe.run(document, { rules: { "color-contrast": { enabled: false } } }));
  return found.violations.map((v) => `${v.id}: ${v.help}: ${v.nodes.map((n) => n.target.join(" ")).join("; ")}`);
}

async function fit(page) {
  await page.evaluate(() => document.querySelectorAll("main details").forEach((part) => (part.open = true)));
  assert.deepEqual(await lowContrast(page), [], "contrast under 7:1");
  assert.deepEqual(await smallTargets(page), [], "things to press under 48 px");
  assert.ok((await overflow(page)) <= 0, "the page is wider than the window");
  assert.deepEqual(await broken(page), [], "accessibility rules");
}

for (const [device, name] of [[PHONE, "phone"], [LAPTOP, "laptop"]]) {
  for (const script of [true, false]) {
    test(`a round is planned on a ${name} ${script ? "with" : "without"} script`, async () => {
      const page = await open(chrome, server.url, { ...device, script });
      await page.goto(at("/blades"));
      await page.getByRole("link", { name: "Plan the blade sets" }).click();
      await page.waitForURL(at("/rotation"));
      assert.equal(await page.getByTestId("answer").count(), 0, "nothing was asked yet");
      await page.fill("#palms", "12");
      await page.fill("#minutes", "6");
      await page.getByRole("button", { name: "Plan the round" }).click();
      // bleach of the strictest source: 10 minutes, brushed and rinsed 12; a pair of cuts turns in 18 minutes, not 12
      assert.match(await page.getByTestId("answer").innerText(), /2 sets: you wait 30 min in all and are done in 1 h 42 min; with 3 sets nobody waits, done in 1 h 12 min/);
      assert.equal(await page.locator(".turns tbody tr").count(), 12);
      assert.equal(await page.locator(".rota-drawn .rota-cut").count(), 12);
      assert.match(await page.locator(".rota-drawn").textContent(), /soaks/);
      assert.match(await page.getByTestId("choices").innerText(), /3\s+fewest without waiting\s+0 min/);
      await page.fill("#sets", "3");
      await page.getByRole("button", { name: "Plan the round" }).click();
      assert.match(await page.getByTestId("answer").innerText(), /3 sets: no waiting, done in 1 h 12 min; with 2 sets you would wait 30 min/);
      assert.equal(await page.locator(".rota-drawn .rota-wait").count(), 0);
      await page.done();
    });
  }

  describe(name, () => {
    const looks = {
      "rotation-waits": "/rotation?palms=12&minutes=6&sets=2",
      "rotation-long": "/rotation?palms=60&minutes=4.5&sets=4&soak=7&holds=1",
      "rotation-wrong": "/rotation?palms=0&minutes=six&sets=&mix=",
    };
    for (const [what, path] of Object.entries(looks)) {
      test(what, async () => {
        for (const lang of ["en", "es"]) {
          const page = await open(chrome, server.url, { ...device, lang });
          await page.goto(at(path));
          await shot(page, `${what}-${lang}-${name}`);
          await fit(page);
          await page.done();
        }
      });
    }

    test("the palms of grounds, with links", async () => {
      const page = await open(chrome, server.url, device);
      await page.goto(at("/rotation"));
      const value = await page.locator("#site option").nth(1).getAttribute("value");
      await page.selectOption("#site", value);
      await page.fill("#minutes", "8");
      await page.getByRole("button", { name: "Plan the round" }).click();
      const first = page.locator(".turns tbody th a").first();
      assert.match(await first.getAttribute("href"), /^\/palm\//);
      await shot(page, `rotation-grounds-${name}`);
      await fit(page);
      await page.done();
    });
  });
}

test("what is wrong is said at its field, and a soak that is too short is said first", async () => {
  const page = await open(chrome, server.url, PHONE);
  await page.goto(at("/rotation?palms=0&minutes=six&sets=2&mix="));
  assert.match(await page.getByTestId("trouble").innerText(), /How many palms: a number from 1 to 500/);
  assert.match(await page.locator("#minutes-trouble").innerText(), /a number from 0.5 to 480/);
  assert.match(await page.locator("#mix-trouble").innerText(), /say the minutes of soak/);
  assert.equal(await page.inputValue("#minutes"), "six", "what was typed stays");
  await page.goto(at("/rotation?palms=12&minutes=6&sets=2&soak=7"));
  assert.match(await page.locator(".rota-answer .short").innerText(), /7 min of contact, where 10 min are needed/);
  await page.goto(at("/cleaning"));
  assert.equal(await page.locator('a[href="/rotation"]').count(), 1);
  await page.done();
});
