// Signs: the picker on the inspection form, the judgement on a palm's page, disorders, holds that are advised.
import { after, before, describe, test } from "node:test";
import assert from "node:assert/strict";
import { LAPTOP, PHONE, browser, open } from "../lib/browser.mjs";
import { lowContrast, overflow, smallTargets } from "../lib/measure.mjs";
import { demo } from "../lib/server.mjs";
import { shot, view } from "../lib/shots.mjs";

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
const judged = (page, tag) => page.evaluate(async (tag) => (await (await fetch(`/api/palm/${tag}`)).json()).judgement, tag);

describe("the picker", () => {
  test("is folded away, place by place, and says where on the palm", async () => {
    const page = await open(chrome, server.url, PHONE);
    await page.goto(at("/palm/T-09/inspect"));
    const places = page.locator("details.place");
    assert.equal(await places.count(), 8);
    assert.equal(await page.locator("details.place[open]").count(), 0);
    assert.equal(await page.locator("details.place > summary svg").count(), 8);
    await page.locator("#signs").scrollIntoViewIfNeeded();
    await view(page, "signs-picker-closed-phone");
    await page.locator('details.place[data-place="old"] > summary').tap();
    const row = page.locator('details.place[data-place="old"] .sign').first();
    assert.ok(await row.getByText("Not looked").isVisible());
    await row.scrollIntoViewIfNeeded();
    await view(page, "signs-picker-open-phone");
    await page.done();
  });

  test("three states, kept, judged, and shown in the history", async () => {
    const page = await open(chrome, server.url, PHONE);
    await page.goto(at("/palm/T-09/inspect"));
    const old = page.locator('details.place[data-place="old"]');
    await old.locator("> summary").tap();
    const rows = old.locator(".sign");
    const keys = await rows.evaluateAll((all) => all.slice(0, 2).map((row) => row.id.slice("sign-".length)));
    await rows.nth(0).locator("label.seen").tap();
    await rows.nth(1).locator("label.absent").tap();
    assert.match(await old.locator(".tally").innerText(), /\b2 \//);
    await rows.nth(1).locator("label.open").tap();
    assert.match(await old.locator(".tally").innerText(), /\b1 \//);
    await rows.nth(1).locator("label.absent").tap();
    await view(page, "signs-picker-set-phone");
    await page.getByRole("button", { name: "Save", exact: true }).click();
    await page.waitForURL(at("/palm/T-09"));
    const told = await judged(page, "T-09");
    assert.ok(told.seen.includes(keys[0]), `${keys[0]} is not in ${told.seen}`);
    assert.ok(told.absent.includes(keys[1]), `${keys[1]} is not in ${told.absent}`);
    const latest = page.locator(".history ol > li").first();
    assert.match(await latest.innerText(), /not there: /);
    // correcting shows them again
    await latest.getByRole("link", { name: "Correct" }).click();
    assert.ok(await page.locator(`input[name="sign-${keys[0]}"][value="seen"]`).isChecked());
    assert.ok(await page.locator(`input[name="sign-${keys[1]}"][value="absent"]`).isChecked());
    await page.done();
  });

  test("finds a sign by its words", async () => {
    const page = await open(chrome, server.url, PHONE);
    await page.goto(at("/palm/T-09/inspect"));
    const word = (await page.locator(".sign .name").nth(20).textContent()).trim().split(" ").slice(0, 2).join(" ");
    await page.fill("#signs-find", word.toUpperCase());
    assert.ok((await page.locator(".sign:visible").count()) >= 1);
    assert.ok((await page.locator(".sign:visible").count()) < (await page.locator(".sign").count()));
    await view(page, "signs-find-phone");
    await page.fill("#signs-find", "zzzz");
    assert.equal(await page.locator(".sign:visible").count(), 0);
    assert.match(await page.locator("#signs-found").innerText(), /No sign/);
    await page.fill("#signs-find", "");
    assert.equal(await page.locator("details.place:visible").count(), 8);
    await page.done();
  });

  test("works without script", async () => {
    const page = await open(chrome, server.url, { ...PHONE, script: false });
    await page.goto(at("/palm/T-15/inspect"));
    assert.equal(await page.locator("#signs-find").isVisible(), false, "no search that does nothing");
    await page.locator('details.place[data-place="trunk"] > summary').click();
    const row = page.locator('details.place[data-place="trunk"] .sign').first();
    await row.locator("label.absent").click();
    await page.locator(".save button.primary").click();
    await page.waitForURL(at("/palm/T-15"));
    assert.match(await page.locator(".history").innerText(), /not there: /);
    await page.done();
  });

  test("a draft keeps the signs", async () => {
    const page = await open(chrome, server.url, PHONE);
    await page.goto(at("/palm/T-16/inspect"));
    await page.locator('details.place[data-place="young"] > summary').tap();
    await page.locator('details.place[data-place="young"] label.seen').first().tap();
    await page.reload();
    assert.match(await page.locator('details.place[data-place="young"] .tally').innerText(), /\b1 \//);
    await page.done();
  });
});

describe("the judgement", () => {
  test("ranks, says why, and leads to the next look", async () => {
    const page = await open(chrome, server.url, PHONE);
    await page.goto(at("/palm/T-07"));
    const ranking = page.getByTestId("ranking").first();
    assert.equal(await ranking.locator("> li").count(), 3);
    assert.match(await ranking.locator(".odds").first().innerText(), /, .*%/);
    assert.ok((await ranking.locator(".speaks.for li").count()) > 0);
    const look = page.getByTestId("next-look").locator(".look").first();
    const sign = await look.getAttribute("data-sign");
    assert.match(await look.innerText(), /bits a minute/);
    await look.getByRole("link").click();
    const row = page.locator(`#sign-${sign}`);
    assert.ok(await row.isVisible(), "the place of the sign is open");
    await view(page, "signs-look-phone");
    await page.done();
  });

  test("the move stands beside hunger on a palm moved weeks ago", async () => {
    const page = await open(chrome, server.url, LAPTOP);
    await page.goto(at("/palm/Q-01"));
    const sides = page.getByTestId("sides");
    assert.notEqual(await sides.getAttribute("data-call"), "hunger");
    assert.ok(await sides.getByText("What would change the call").isVisible());
    await page.done();
  });

  test("nothing noted: says what to look at first", async () => {
    const page = await open(chrome, server.url, PHONE);
    await page.goto(at("/palm/L-20"));
    assert.ok(await page.getByTestId("untold").isVisible());
    assert.ok((await page.getByTestId("next-look").locator(".look").count()) >= 2);
    await shot(page, "signs-untold-phone");
    await page.done();
  });
});

describe("a hold that the signs ask for", () => {
  test("stands on today, the list, the palm and the form, and can be set", async () => {
    const page = await open(chrome, server.url, PHONE);
    await page.goto(at("/"));
    const row = page.locator(".needs > li").filter({ hasText: "T-10" });
    assert.match(await row.innerText(), /nobody cuts or climbs/);
    await page.goto(at("/palm/T-10/inspect"));
    assert.ok(await page.getByTestId("advised").isVisible());
    await page.goto(at("/palm/T-10"));
    const advised = page.getByTestId("advised").first();
    for (const words of ["Instead", "Tell", "Ends when"]) assert.ok(await advised.getByText(words, { exact: true }).isVisible());
    await view(page, "signs-advised-phone");
    await advised.getByRole("link", { name: "Set this hold" }).click();
    assert.ok(await page.locator('input[name="reason"][value="trunk-rot-suspect"]').isChecked());
    assert.match(await page.inputValue("#note"), /From the signs/);
    await page.getByRole("button", { name: "Set a hold" }).click();
    await page.waitForURL(at("/palm/T-10"));
    assert.ok(await advised.getByText("This hold is set.").isVisible());
    await page.done();
  });
});

describe("disorders", () => {
  test("are listed, cut down to a palm, and each has its page", async () => {
    const page = await open(chrome, server.url, PHONE);
    await page.goto(at("/disorders"));
    const all = await page.locator(".disorders li").count();
    assert.ok(all > 20);
    await page.fill("#on", "Phoenix canariensis");
    await page.getByRole("button", { name: "Show" }).click();
    const some = await page.locator(".disorders li").count();
    assert.ok(some > 3 && some < all, `${some} of ${all}`);
    assert.match(await page.getByTestId("shown").innerText(), /Phoenix canariensis/);
    await page.locator(".disorders a.row").first().click();
    assert.ok((await page.locator(".shown-signs > li").count()) >= 0);
    assert.ok(await page.getByRole("heading", { level: 1 }).isVisible());
    await page.done();
  });

  test("every page answers, in both languages, and holds the measure", async () => {
    for (const lang of ["en", "es"]) {
      const page = await open(chrome, server.url, { ...PHONE, lang });
      await page.goto(at("/disorders"));
      const links = await page.locator(".disorders a.row").evaluateAll((all) => all.map((a) => a.getAttribute("href")));
      for (const link of links) {
        const answer = await page.goto(at(link));
        assert.equal(answer.status(), 200, link);
        assert.ok((await overflow(page)) <= 0, `${link} is wider than the window`);
      }
      await page.done();
    }
  });

  test("a name that nobody knows is not found, and says so", async () => {
    const page = await open(chrome, server.url, PHONE);
    assert.equal((await page.goto(at("/disorders/no-such-thing"))).status(), 404);
    assert.match(await page.locator("h1").innerText(), /no disorder/);
    await page.done({ expect: ["404"] });
  });
});

describe("in Spanish, on the phone", () => {
  for (const [name, path] of Object.entries({ inspect: "/palm/T-07/inspect", palm: "/palm/T-07", moved: "/palm/Q-01", wilt: "/palm/L-16", disorders: "/disorders", disagreements: "/disagreements" })) {
    test(`${name}: contrast, things to press, width`, async () => {
      const page = await open(chrome, server.url, { ...PHONE, lang: "es" });
      await page.goto(at(path));
      await page.evaluate(() => document.querySelectorAll("main details").forEach((part) => (part.open = true)));
      assert.deepEqual(await lowContrast(page), []);
      assert.deepEqual(await smallTargets(page), []);
      assert.ok((await overflow(page)) <= 0);
      await shot(page, `es-${name}-phone`);
      await page.done();
    });
  }
});
