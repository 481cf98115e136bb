// Blades: the rack, the cutting log with its answer, the bath with its timer, the trace; with and without script.
import { after, before, describe, test } from "node:test";
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
const state = (page, id) => page.getByTestId(id).getAttribute("data-state");
const save = (page) => page.locator(".save button.primary").click();

async function register(page, tag) {
  await page.goto(at("/blades/new"));
  await page.fill("#tag", tag);
  await page.getByLabel("hand saw", { exact: true }).check();
  await save(page);
  await page.waitForURL(at(`/blades/${tag}`));
}

/** Cleans a blade in the bath of the strictest source, done already. */
async function clean(page, tag, minutes) {
  await page.goto(at(`/cleaning?blade=${tag}`));
  await page.locator('input[name="brushed"][type="checkbox"]').check();
  const mix = page.locator('input[value="mix:bleach-soak-25"]');
  if (!(await mix.isVisible())) await page.getByText("No bath noted: choose the mix").click();
  await mix.check();
  await page.fill("#contact_min", String(minutes));
  await page.getByRole("button", { name: "Already done: save" }).click();
  await page.waitForURL(/\/cleaning\?saved=/);
}

for (const script of [true, false]) {
  describe(script ? "with script" : "without script", () => {
    const n = script ? "JS" : "NS";
    const start = () => open(chrome, server.url, { ...PHONE, script });

    test("a blade is registered, unknown, too short, clean, and soiled by a cut", async () => {
      const page = await start();
      await register(page, `${n}-1`);
      assert.equal(await state(page, "stands"), "nothing");
      await clean(page, `${n}-1`, 4);
      await page.goto(at(`/cutting?blade=${n}-1&palm=T-01`));
      assert.equal(await state(page, "verdict"), "short");
      assert.match(await page.getByTestId("verdict").innerText(), /6 minutes too short/);
      await clean(page, `${n}-1`, 10);
      await page.goto(at(`/cutting?blade=${n}-1`));
      await page.fill("#palm", "T-01");
      await page.locator(".ask-palm button").click();
      assert.equal(await state(page, "verdict"), "clean");
      await page.fill("#off_brown", "3");
      await save(page);
      await page.waitForURL(/saved=T-01/);
      await page.goto(at(`/blades/${n}-1`));
      assert.match(await page.locator(".log").innerText(), /Cut T-01[\s\S]*3 dead off/);
      await page.goto(at(`/cutting?blade=${n}-1&palm=T-01`));
      assert.equal(await state(page, "verdict"), "same");
      await page.goto(at(`/cutting?blade=${n}-1&palm=T-02`));
      assert.equal(await state(page, "verdict"), "dirty");
      await page.goto(at("/palm/T-01"));
      assert.match(await page.locator(".cuts").innerText(), new RegExp(`${n}-1[\\s\\S]*Before that cleaned, enough`));
      await page.done();
    });

    test("a blade that is not clean is saved only with a reason, and the reason stays", async () => {
      const page = await start();
      await register(page, `${n}-2`);
      await page.goto(at(`/cutting?blade=${n}-2&palm=T-03`));
      await save(page);
      assert.match(await page.locator("#despite-trouble").innerText(), /not clean for this palm/);
      await page.fill("#despite", "loose frond over the gate");
      await save(page);
      await page.waitForURL(/saved=T-03/);
      await page.goto(at(`/blades/${n}-2`));
      assert.match(await page.locator(".despite").innerText(), /loose frond over the gate/);
      await page.done({ expect: ["422"] });
    });

    test("a palm on hold is cut by nobody", async () => {
      const page = await start();
      await page.goto(at("/cutting?palm=L-16"));
      assert.equal(await state(page, "verdict"), "held");
      assert.equal(await page.locator("#cut").count(), 0);
      await page.done();
    });
  });
}

test("a blade that cut a palm which is held since for a wilt is blocked, not merely dirty", async () => {
  const page = await open(chrome, server.url, PHONE);
  await register(page, "K-1");
  await page.goto(at("/cutting?blade=K-1&palm=T-05"));
  await page.fill("#despite", "before anything was known");
  await save(page);
  await page.waitForURL(/saved=T-05/);
  await page.goto(at("/palm/T-05/holds"));
  await page.locator('input[name="reason"][value="wilt-suspect"]').check();
  await page.getByRole("button", { name: /hold/i }).last().click();
  await page.waitForURL(at("/palm/T-05"));
  await page.goto(at("/cutting?blade=K-1&palm=T-06"));
  assert.equal(await state(page, "verdict"), "blocked");
  assert.match(await page.getByTestId("verdict").innerText(), /T-05/);
  await shot(page, "cutting-blocked-phone");
  await save(page);
  assert.match(await page.locator("#despite-trouble").innerText(), /may carry an infection/);
  await page.done({ expect: ["422"] });
});

test("the start button notes the time and cleaning counts down", async () => {
  const page = await open(chrome, server.url, PHONE);
  await register(page, "R-1");
  await page.goto(at("/cutting?blade=R-1&palm=T-01"));
  assert.equal(await page.locator("#started").inputValue(), "");
  await page.getByRole("button", { name: "Start the cut" }).tap();
  assert.match(await page.locator("#started").inputValue(), /^2026-05-04T\d\d:\d\d$/);
  assert.match(await page.locator("#running").innerText(), /Cutting since \d\d:\d\d/);
  await page.goto(at("/cleaning?blade=R-1"));
  await page.locator('input[name="brushed"][type="checkbox"]').check();
  await page.locator("#with summary").first().click();
  const mix = page.locator('input[value="mix:bleach-soak-25"]');
  if (!(await mix.isVisible())) await page.locator("#with summary").first().click();
  await mix.check();
  await page.getByRole("button", { name: "Start the time" }).tap();
  const soak = page.locator('.soaks [data-tag="R-1"]');
  await soak.waitFor();
  assert.match(await soak.locator("[data-count]").innerText(), /^(10:00|9:\d\d)$/);
  assert.match(await soak.innerText(), /ready at \d\d:\d\d/);
  await shot(page, "cleaning-soaking-phone");
  await soak.getByRole("button", { name: "Take it out early" }).tap();
  await page.waitForURL(/saved=R-1/);
  await page.goto(at("/blades/R-1"));
  assert.match(await page.locator(".log").innerText(), /Cleaned, not enough/);
  await page.done();
});

test("the demo's wilt suspect is traced: lanes, list, sources, both languages", async () => {
  for (const [lang, device, name] of [["en", PHONE, "phone"], ["en", LAPTOP, "laptop"], ["es", PHONE, "phone-es"]]) {
    const page = await open(chrome, server.url, { ...device, lang });
    await page.goto(at("/trace?case=L-16&disorder=fusarium-wilt-canariensis"));
    assert.ok((await page.locator(".exposed li").count()) > 0, "somebody is exposed");
    assert.ok((await page.locator(".lanes-drawn .chain").count()) > 0, "a chain is drawn");
    assert.equal(await page.getByTestId("first").count(), 0, "this wilt travels on blades");
    await shot(page, `trace-${name}`);
    await page.done();
  }
  const page = await open(chrome, server.url, PHONE);
  await page.goto(at("/trace?case=L-16&disorder=lethal-bronzing"));
  assert.match(await page.getByTestId("first").innerText(), /not known to travel on blades/);
  await page.done();
});
