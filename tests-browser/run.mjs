// Runs the browser tests and says how many passed. Needs SPEARLEAF_BIN (the built program) and a Chromium.
import { run } from "node:test";
import { spec } from "node:test/reporters";
import { readdirSync } from "node:fs";
import path from "node:path";

const here = import.meta.dirname;
const wanted = process.argv.slice(2);
const files = readdirSync(path.join(here, "tests"))
  .filter((name) => name.endsWith(".test.mjs"))
  .filter((name) => wanted.length === 0 || wanted.some((part) => name.includes(part)))
  .map((name) => path.join(here, "tests", name));

const counts = { passed: 0, failed: 0, files: 0 };
const tests = run({ files, concurrency: 2, timeout: 900_000 });
// suites, and files that did not run to their end, are reported as tests of their own: only those in them are counted
const own = (event) => event.details?.type !== "suite" && !event.name.endsWith(".test.mjs");
tests.on("test:pass", (event) => own(event) && (counts.passed += 1));
tests.on("test:fail", (event) => (counts[own(event) ? "failed" : "files"] += 1));
tests.compose(spec).pipe(process.stdout);
tests.on("end", () => {
  setImmediate(() => {
    const failed = counts.failed || counts.files;
    console.log(`browser: ${counts.passed} passed, ${failed} failed`);
    process.exitCode = failed === 0 && counts.passed > 0 ? 0 : 1;
  });
});
