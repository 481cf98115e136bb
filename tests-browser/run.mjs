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

const counts = { passed: 0, failed: 0 };
const tests = run({ files, concurrency: 1, timeout: 300_000 });
// a file is reported as a test of its own around those in it: only those in it are counted
const inFile = (event) => event.details?.type !== "suite" && event.name !== event.file && !event.name.endsWith(".test.mjs");
tests.on("test:pass", (event) => inFile(event) && (counts.passed += 1));
tests.on("test:fail", (event) => inFile(event) && (counts.failed += 1));
tests.on("test:summary", ({ success }) => (counts.whole ??= true) && (counts.whole &&= success));
tests.compose(spec).pipe(process.stdout);
tests.on("end", () => {
  setImmediate(() => {
    console.log(`browser: ${counts.passed} passed, ${counts.failed} failed`);
    process.exitCode = counts.failed === 0 && counts.passed > 0 && counts.whole ? 0 : 1;
  });
});
