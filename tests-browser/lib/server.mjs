// Starts the built program on a fresh demo folder and a free port; stops it again.
import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";

const BIN = process.env.SPEARLEAF_BIN;
if (!BIN) throw new Error("SPEARLEAF_BIN must name the built spearleaf program");

/** The day the demo is looked at: fixed, so that the pages are the same on every day the tests run. */
export const TODAY = "2026-05-04";

/** A running program: `url`, `stop()`, and `start()` on the same folder and port after a stop. */
export async function demo() {
  const folder = path.join(mkdtempSync(path.join(tmpdir(), "spearleaf-")), "demo");
  const server = { url: "", child: null };
  server.start = async () => {
    const listen = server.url ? new URL(server.url).host : "127.0.0.1:0";
    [server.child, server.url] = await launch(folder, listen);
  };
  server.stop = () => end(server.child);
  server.remove = async () => {
    await end(server.child);
    rmSync(path.dirname(folder), { recursive: true, force: true });
  };
  await server.start();
  return server;
}

function launch(folder, listen) {
  const child = spawn(BIN, ["demo", folder, "--listen", listen, "--as-of", TODAY, "--json"], { stdio: ["ignore", "pipe", "pipe"] });
  return new Promise((resolve, reject) => {
    let out = "";
    let errors = "";
    child.stderr.on("data", (data) => (errors += data));
    child.stdout.on("data", (data) => {
      out += data;
      const line = out.split("\n").find((text) => text.includes('"serving"') && text.endsWith("}"));
      if (line) resolve([child, JSON.parse(line).address]);
    });
    child.on("exit", (code) => reject(new Error(`spearleaf ended with ${code} before it served: ${errors}`)));
  });
}

function end(child) {
  if (!child || child.exitCode !== null || child.signalCode !== null) return Promise.resolve();
  return new Promise((resolve) => {
    child.once("exit", resolve);
    child.kill("SIGINT");
    // connections that are kept alive may hold a graceful stop up
    setTimeout(() => child.kill("SIGKILL"), 3000).unref();
  });
}
