// Spanish and US units, by setting, everywhere.
import { after, before, test } from "node:test";
import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import path from "node:path";
import { PHONE, browser, open } from "../lib/browser.mjs";
import { demo } from "../lib/server.mjs";
import { shot } from "../lib/shots.mjs";

const WORDS = path.join(import.meta.dirname, "..", "..", "crates", "desk", "lang", "en");

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
const PAGES = ["/", "/palms", "/palm/L-16", "/palm/Q-19", "/palm/L-16/inspect", "/palm/L-16/edit", "/palm/L-16/holds", "/palm/L-16/remove", "/import", "/sources", "/about", "/settings"];

test("Spanish is chosen in the settings and stays", async () => {
  const page = await open(chrome, server.url, PHONE);
  await page.goto(at("/settings"));
  await page.getByText("Español").click();
  await page.getByRole("button", { name: "Save" }).click();
  await page.goto(at("/palms"));
  assert.equal(await page.locator("html").getAttribute("lang"), "es");
  assert.match(await page.locator("nav").first().innerText(), /Hoy/);
  await page.done();
});

/** Every key of the English word files: none may show itself on a page. */
const KEYS = new Set(
  readdirSync(WORDS).flatMap((file) => [...readFileSync(path.join(WORDS, file), "utf8").matchAll(/^([a-z][\w-]*-[\w-]*) =/gm)].map((m) => m[1])),
);

/** What is ours on a page: no names, notes or titles that came from people and sources. */
const OURS = "h2, h3, label, legend, button, summary, nav a, dt, th, .hint, .button";

for (const at_ of PAGES) {
  test(`${at_} speaks Spanish and leaves no word code bare`, async () => {
    const page = await open(chrome, server.url, { ...PHONE, lang: "es" });
    await page.goto(at(at_));
    const text = await page.locator("body").innerText();
    assert.deepEqual(text.match(/[a-z][\w-]*/g).filter((word) => KEYS.has(word)), [], "codes without words");
    for (const own of await page.locator(OURS).allInnerTexts()) {
      assert.doesNotMatch(own, /\b(the|and|fronds|spear|save|palm)\b/, "English words on a Spanish page");
    }
    await shot(page, `es${at_.replaceAll(/\W+/g, "-")}-phone`);
    await page.done();
  });
}

test("US units: feet on the palm and in the form", async () => {
  const page = await open(chrome, server.url, { ...PHONE, units: "us" });
  await page.goto(at("/palm/L-16"));
  // cautions quote rules and manuals, with the figures as they stand there
  await page.evaluate(() => document.querySelectorAll(".cautions").forEach((part) => part.remove()));
  const text = await page.locator("main").innerText();
  assert.match(text, /\d\sft\b/);
  assert.deepEqual(text.match(/[^.\n]*\d\s(m|cm)\b[^.\n]*/g), null, "metres for a reader of feet");
  await shot(page, "us-palm-phone");
  await page.goto(at("/palm/L-16/edit"));
  assert.match(await page.locator('label[for="trunk_height"]').innerText(), /\(ft\)/);
  await page.done();
});
