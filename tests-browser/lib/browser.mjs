// Chromium, and pages that watch themselves: an outside request or a console error fails the test that made it.
import { chromium } from "playwright-core";
import assert from "node:assert/strict";

export const PHONE = { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, hasTouch: true, isMobile: true };
export const LAPTOP = { viewport: { width: 1280, height: 800 } };

const QUIET = [
  "--no-sandbox",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-default-apps",
  "--disable-domain-reliability",
  "--disable-sync",
  "--no-first-run",
  "--no-pings",
];

/** A browser; close it when done. */
export function browser() {
  return chromium.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: QUIET });
}

/**
 * A page of its own context. `settings`: `lang`, `units` (cookies as the settings page sets them), `script: false`,
 * and anything Playwright's contexts take. `page.done()` closes it and checks what it watched.
 */
export async function open(chrome, url, { lang, units, script = true, ...device } = PHONE) {
  const context = await chrome.newContext({ locale: "en-US", javaScriptEnabled: script, ...device });
  const cookies = Object.entries({ lang, units }).filter(([, value]) => value);
  await context.addCookies(cookies.map(([name, value]) => ({ name, value, url })));
  context.setDefaultTimeout(15_000);
  const page = await context.newPage();
  const home = new URL(url).origin;
  page.outside = [];
  page.errors = [];
  context.on("request", (request) => {
    const to = new URL(request.url());
    if (to.origin !== home && !["data:", "blob:"].includes(to.protocol)) page.outside.push(request.url());
  });
  page.on("console", (message) => message.type() === "error" && page.errors.push(message.text()));
  page.on("pageerror", (error) => page.errors.push(String(error)));
  page.done = async ({ expect = [] } = {}) => {
    const errors = page.errors.filter((text) => !expect.some((part) => text.includes(part)));
    await context.close();
    assert.deepEqual(page.outside, [], "requests to other places");
    assert.deepEqual(errors, [], "errors in the console");
  };
  return page;
}
