// Screenshots for people to look at: test-output/ beside the crates, never committed.
import { mkdirSync } from "node:fs";
import path from "node:path";

const FOLDER = path.join(import.meta.dirname, "..", "..", "test-output");
mkdirSync(FOLDER, { recursive: true });

/** The whole page as a picture. */
export const shot = (page, name) => page.screenshot({ path: path.join(FOLDER, `${name}.png`), fullPage: true, scale: "css" });

/** What is in sight. */
export const view = (page, name) => page.screenshot({ path: path.join(FOLDER, `${name}.png`), scale: "css" });
