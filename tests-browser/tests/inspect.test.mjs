// The inspection form: one thumb, saved once, nothing typed is lost.
import { after, before, describe, test } from "node:test";
import assert from "node:assert/strict";
import { LAPTOP, PHONE, browser, open } from "../lib/browser.mjs";
import { TODAY, demo } from "../lib/server.mjs";
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
const value = (page, id) => page.locator(`#${id}`).inputValue();
const looksOf = (page, tag) =>
  page.evaluate(async (tag) => {
    const text = await (await fetch(`/palm/${tag}`)).text();
    return new DOMParser().parseFromString(text, "text/html").querySelectorAll(".history ol > li").length;
  }, tag);

describe("a new inspection", () => {
  test("changes the reading of the palm", async () => {
    const page = await open(chrome, server.url, PHONE);
    await page.goto(at("/palm/T-01"));
    const headline = page.getByTestId("headline");
    assert.equal(await headline.getAttribute("data-explanation"), "ageing");
    await page.goto(at("/palm/T-01/inspect"));
    assert.equal(await value(page, "date"), TODAY);
    await page.fill("#green", "5");
    await page.fill("#yellowing", "4");
    await page.fill("#brown", "8");
    await page.getByRole("radio", { name: "Leaning", exact: true }).check();
    await page.getByRole("button", { name: "Save", exact: true }).click();
    await page.waitForURL(at("/palm/T-01"));
    assert.notEqual(await headline.getAttribute("data-explanation"), "ageing");
    assert.match(await page.locator(".history").innerText(), /4 May 2026/);
    await page.done();
  });

  test("is counted with plus and minus; not counted is not none", async () => {
    const page = await open(chrome, server.url, PHONE);
    await page.goto(at("/palm/T-02/inspect"));
    const green = page.locator('[data-counter="green"]');
    assert.equal(await value(page, "green"), "");
    assert.equal(await page.locator("#green").getAttribute("placeholder"), "not counted");
    assert.ok(await green.getByRole("button", { name: "One less: Green" }).isDisabled(), "nothing to take from");
    await green.getByRole("button", { name: "None: Green" }).tap();
    assert.equal(await value(page, "green"), "0");
    await green.getByRole("button", { name: "Clear: Green" }).tap();
    assert.equal(await value(page, "green"), "");
    for (let i = 0; i < 3; i++) await green.getByRole("button", { name: "One more: Green" }).tap();
    await green.getByRole("button", { name: "One less: Green" }).tap();
    assert.equal(await value(page, "green"), "2");
    assert.equal(await page.locator("#green").getAttribute("inputmode"), "numeric");
    await page.done();
  });

  test("reads the clock from a tap on the dial", async () => {
    const page = await open(chrome, server.url, PHONE);
    await page.goto(at("/palm/T-02/inspect"));
    const dial = page.locator("#dial");
    await dial.scrollIntoViewIfNeeded();
    const box = await dial.boundingBox();
    const tap = async (hour) => {
      const turn = (hour * Math.PI) / 6;
      const position = { x: box.width / 2 + Math.sin(turn) * box.width * 0.4, y: box.height / 2 - Math.cos(turn) * box.height * 0.4 };
      await dial.tap({ position });
    };
    await tap(8.25);
    await tap(4);
    assert.deepEqual([await value(page, "clock_left"), await value(page, "clock_right")], ["8.25", "4"]);
    assert.equal(await page.locator("#clock_left option:checked").innerText(), "8:15");
    assert.equal(await page.locator('[data-hand="clock_left"]').getAttribute("transform"), "rotate(247.5)");
    await page.locator('[data-clock="clock_right"][data-step="1"]').tap();
    assert.equal(await value(page, "clock_right"), "4.25");
    await view(page, "inspect-dial-phone");
    await page.done();
  });

  test("counts new fronds by the spiral of a marked one, without the network", async () => {
    const page = await open(chrome, server.url, PHONE);
    await page.goto(at("/palm/T-02/inspect"));
    await page.context().setOffline(true);
    await page.getByText("Find the marked frond by its spiral").tap();
    await page.fill("#spiral", "4");
    await page.fill("#place", "3");
    await page.getByRole("button", { name: "Fill in the count" }).tap();
    // worked example of the oil palm field handbook: frond 20, so 19 new since frond 1
    assert.equal(await value(page, "new_leaves"), "19");
    await page.done({ expect: ["ERR_INTERNET_DISCONNECTED"] });
  });

  test("goes stem by stem on a palm of several", async () => {
    const page = await open(chrome, server.url, PHONE);
    await page.goto(at("/palm/Q-19/inspect"));
    await page.fill("#green", "8");
    await view(page, "inspect-stems-phone");
    await page.getByRole("button", { name: "Save, next stem" }).click();
    await page.waitForURL(at("/palm/Q-19/inspect?stem=2"));
    assert.match(await page.locator(".stems").innerText(), /Stem 1 ✓/);
    await page.done();
  });
});

describe("saving", () => {
  test("twice saves once, and a changed form corrects", async () => {
    const page = await open(chrome, server.url, LAPTOP);
    await page.goto(at("/palm/T-03/inspect"));
    const before = await looksOf(page, "T-03");
    const fields = await page.evaluate(() => Object.fromEntries(new FormData(document.getElementById("inspect"))));
    const send = (more) =>
      page.evaluate(async (body) => (await fetch("/palm/T-03/inspect", { method: "POST", body: new URLSearchParams(body) })).url, { ...fields, ...more });
    await Promise.all([send({ green: "11" }), send({ green: "11" })]);
    assert.equal(await send({ green: "11" }), at("/palm/T-03"));
    assert.equal(await looksOf(page, "T-03"), before + 1);
    await send({ green: "12" });
    await page.goto(at("/palm/T-03"));
    assert.match(await page.locator(".history ol > li").first().innerText(), /12/);
    await page.done();
  });

  test("a quick double tap on Save saves once", async () => {
    const page = await open(chrome, server.url, PHONE);
    await page.goto(at("/palm/T-04/inspect"));
    const before = await looksOf(page, "T-04");
    await page.fill("#green", "10");
    await page.locator(".save .primary").dblclick({ noWaitAfter: true });
    await page.waitForURL(at("/palm/T-04"));
    assert.equal(await looksOf(page, "T-04"), before + 1);
    await page.done();
  });

  test("refused: what was typed stays, the message stands at the field", async () => {
    const page = await open(chrome, server.url, PHONE);
    await page.goto(at("/palm/T-05/inspect"));
    await page.fill("#green", "12,5");
    await page.fill("#brown", "3");
    await page.fill("#notes", "by the gate");
    await page.getByRole("radio", { name: "Firm", exact: true }).check();
    await page.getByRole("button", { name: "Save", exact: true }).click();
    await page.locator("#green-trouble").waitFor();
    assert.match(await page.locator("#green-trouble").innerText(), /“12,5” is no whole number/);
    assert.equal(await page.evaluate(() => document.activeElement.id), "trouble");
    assert.deepEqual([await value(page, "green"), await value(page, "brown"), await value(page, "notes")], ["12,5", "3", "by the gate"]);
    assert.ok(await page.locator('input[name="spear"][value="firm"]').isChecked());
    await view(page, "inspect-refused-phone");
    await page.fill("#green", "12");
    await page.getByRole("button", { name: "Save", exact: true }).click();
    await page.waitForURL(at("/palm/T-05"));
    await page.done({ expect: ["422"] });
  });

  test("unusual counts are asked about once", async () => {
    const page = await open(chrome, server.url, PHONE);
    await page.goto(at("/palm/T-05/inspect?stem=1"));
    await page.fill("#date", "2026-05-03");
    await page.fill("#green", "120");
    await page.fill("#yellowing", "0");
    await page.getByRole("button", { name: "Save", exact: true }).click();
    await page.getByLabel("Yes, this is right").check();
    await page.getByRole("button", { name: "Save", exact: true }).click();
    await page.waitForURL(at("/palm/T-05"));
    await page.done({ expect: ["422"] });
  });

  test("without a server: nothing is lost, and trying again saves once", async () => {
    const page = await open(chrome, server.url, PHONE);
    await page.goto(at("/palm/T-06/inspect"));
    const before = await looksOf(page, "T-06");
    await page.fill("#green", "9");
    await page.fill("#notes", "no signal here");
    await page.locator('[data-clock="clock_left"][data-step="1"]').click();
    await server.stop();
    await page.getByRole("button", { name: "Save", exact: true }).click();
    await page.locator("#send-trouble").waitFor();
    assert.match(await page.locator("#send-trouble").innerText(), /Not saved: there is no connection/);
    assert.equal(await value(page, "green"), "9");
    await view(page, "inspect-not-sent-phone");
    await server.start();
    // the page is loaded anew before the save got through: the draft is still there, and says so
    await page.goto(at("/palm/T-06/inspect"));
    assert.deepEqual([await value(page, "green"), await value(page, "notes"), await value(page, "clock_left")], ["9", "no signal here", "9"]);
    assert.ok(await page.locator("#draft-note").isVisible());
    await view(page, "inspect-draft-phone");
    // this time the server saves, but its answer gets lost
    let lost = 0;
    await page.route("**/palm/T-06/inspect", async (route) => {
      if (route.request().method() !== "POST" || lost++ > 0) return route.continue();
      await route.fetch();
      await route.abort();
    });
    await page.getByRole("button", { name: "Save", exact: true }).click();
    await page.locator("#send-trouble").waitFor();
    await page.getByRole("button", { name: "Try again" }).click();
    await page.waitForURL(at("/palm/T-06"));
    assert.equal(await looksOf(page, "T-06"), before + 1);
    await page.goto(at("/palm/T-06/inspect"));
    assert.ok(await page.locator("#draft-note").isHidden(), "what was saved is no draft");
    assert.equal(await value(page, "green"), "");
    await page.done({ expect: ["ERR_CONNECTION_REFUSED", "ERR_FAILED"] });
  });

  test("a draft can be discarded", async () => {
    const page = await open(chrome, server.url, PHONE);
    await page.goto(at("/palm/T-07/inspect"));
    await page.fill("#green", "7");
    await page.goto(at("/palm/T-07/inspect"));
    assert.equal(await value(page, "green"), "7");
    await page.getByRole("button", { name: "Discard it and start afresh" }).click();
    await page.waitForFunction(() => document.getElementById("green")?.value === "");
    assert.ok(await page.locator("#draft-note").isHidden());
    await page.done();
  });
});

test("an inspection is corrected and taken back from the history", async () => {
  const page = await open(chrome, server.url, LAPTOP);
  await page.goto(at("/palm/L-01"));
  await page.locator('a[href*="corrects="]').first().click();
  await page.waitForURL(/corrects=/);
  assert.match(await page.locator("h1").innerText(), /Correct an inspection of L-01/);
  assert.notEqual(await value(page, "green"), "");
  await page.fill("#green", "17");
  await page.getByRole("button", { name: "Save", exact: true }).click();
  await page.waitForURL(at("/palm/L-01"));
  assert.match(await page.locator(".history").innerText(), /17/);
  await page.locator('a[href*="corrects="]').first().click();
  await page.waitForURL(/corrects=/);
  await page.fill("#why", "wrong palm");
  await page.getByRole("button", { name: "Take this inspection back" }).click();
  await page.waitForURL(at("/palm/L-01"));
  await page.done();
});
