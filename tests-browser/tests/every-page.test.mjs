// Every page, on a phone and on a laptop: contrast, things to press, width, accessibility rules, outside requests,
// console errors; and a picture of each to look at.
import { after, before, describe, test } from "node:test";
import assert from "node:assert/strict";
import { createRequire } from "node:module";
import { LAPTOP, PHONE, browser, open } from "../lib/browser.mjs";
import { lowContrast, overflow, smallTargets } from "../lib/measure.mjs";
import { demo } from "../lib/server.mjs";
import { shot } from "../lib/shots.mjs";

const AXE = createRequire(import.meta.url).resolve("axe-core/axe.min.js");

/** Pages by the name of their picture. The palms are picked for what they show: wilt, hunger, move, stems. */
const PAGES = {
  today: "/",
  palms: "/palms",
  "palms-found": "/palms?q=L-1",
  "palms-none": "/palms?q=nothing-like-it",
  "palm-wilt": "/palm/L-16",
  "palm-hungry": "/palm/T-07",
  "palm-moved": "/palm/Q-01",
  "palm-stems": "/palm/Q-19",
  "palm-asked": "/palm/T-07?live=6",
  "palm-untold": "/palm/L-20",
  disorders: "/disorders",
  "disorders-palm": "/disorders?on=Phoenix+canariensis",
  "disorder-wilt": "/disorders/fusarium-wilt-canariensis",
  "disorder-hunger": "/disorders/k-deficiency",
  disagreements: "/disagreements",
  "holds-asked": "/palm/T-07/holds?reason=wilt-suspect",
  season: "/season",
  "season-site": "/season?site=Torvane+House",
  rotation: "/rotation",
  walk: "/walk",
  "walk-asked": "/walk?site=site:Lantern+Walk",
  "reach-pole": "/palm/T-07/reach?petiole=3",
  "reach-wires": "/palm/L-10/reach",
  "rotation-asked": "/rotation?palms=12&minutes=6&sets=2",
  inspect: "/palm/T-07/inspect",
  "inspect-stems": "/palm/Q-19/inspect?stem=2",
  "palm-new": "/palms/new",
  "palm-edit": "/palm/L-16/edit",
  holds: "/palm/L-16/holds",
  remove: "/palm/L-16/remove",
  watering: "/watering",
  "feeding-list": "/feeding",
  rounds: "/rounds",
  "rounds-plan": "/rounds/plan",
  "rounds-proposal": "/rounds/plan?go=yes&day=2026-05-05&scope=due",
  "watering-site": "/watering?site=Quillmere+Yard",
  water: "/palm/Q-01/water",
  "water-settled": "/palm/T-07/water",
  "water-correct": "/palm/L-20/water",
  feeding: "/palm/T-08/feeding",
  "feeding-moved": "/palm/Q-01/feeding",
  sites: "/sites",
  site: "/site/Lantern%20Walk",
  "site-edit": "/site/Lantern%20Walk/edit",
  crews: "/crews",
  crew: "/crew/Fenlock",
  "crew-edit": "/crew/Fenlock/edit",
  owners: "/owners",
  "owner-summary": "/owners/summary?owner=the+parish+of+Quillmere",
  "owner-summary-stock": "/owners/summary?owner=the%20yard%27s%20own%20stock",
  estimate: "/estimate",
  "estimate-palms": "/estimate?palms=T-01,T-02,L-16",
  prices: "/prices",
  import: "/import",
  sources: "/sources",
  about: "/about",
  settings: "/settings",
  "not-found": "/nothing-here",
};

let server, chrome;
before(async () => {
  server = await demo();
  chrome = await browser();
});
after(async () => {
  await chrome?.close();
  await server?.remove();
});

/** Rules of WCAG 2.2 A and AA and axe's best practices; contrast is measured by us, at 7:1. */
async function broken(page) {
  // the page's own policy forbids foreign script: the rules are put in by the debugger, not by a tag
  const source = (await import("node:fs")).readFileSync(AXE, "utf8");
  await page.evaluate(source);
  const found = await page.evaluate(() => window.axe.run(document, { rules: { "color-contrast": { enabled: false } } }));
  return found.violations.map((v) => `${v.id} (${v.impact}): ${v.help}: ${v.nodes.slice(0, 3).map((n) => n.target.join(" ")).join("; ")}`);
}

for (const [device, name] of [[PHONE, "phone"], [LAPTOP, "laptop"]]) {
  describe(name, () => {
    for (const [what, path] of Object.entries(PAGES)) {
      test(`${what}: ${path}`, async () => {
        const page = await open(chrome, server.url, device);
        const answer = await page.goto(new URL(path, server.url).href);
        assert.equal(answer.status(), what === "not-found" ? 404 : 200);
        assert.ok(await page.getByTestId("demo").isVisible(), "the demo says that it is one");
        await shot(page, `${what}-${name}`);
        // what is folded away is measured too
        await page.evaluate(() => document.querySelectorAll("main details").forEach((part) => (part.open = true)));
        assert.deepEqual(await lowContrast(page), [], "contrast under 7:1");
        assert.deepEqual(await smallTargets(page), [], "things to press under 48 px");
        assert.ok((await overflow(page)) <= 0, "the page is wider than the window");
        assert.deepEqual(await broken(page), [], "accessibility rules");
        await page.done({ expect: what === "not-found" ? ["404"] : [] });
      });
    }
  });
}
