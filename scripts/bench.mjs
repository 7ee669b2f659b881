// npm run bench [name …]: tries every promise about speed in benchmarks/, and writes RESULTS.md after a whole run.
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { chromiumFlags, needChromium } from "./need.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
const app = mkdtempSync(join(tmpdir(), "captray-bench-"));
// Built like the app and the terminal, so that what is timed is what people run; below node_modules it finds the libraries.
const programs = `${root}node_modules/.cache/captray-bench`;

/** @param {string[]} words */
function runNode(...words) {
  const run = spawnSync(process.execPath, words, {
    cwd: root,
    stdio: ["ignore", 2, 2],
    env: { ...process.env, NODE_ENV: "production" },
  });
  if (run.status !== 0) process.exit(run.status ?? 1);
}

try {
  runNode(`${root}scripts/build.mjs`, "--outDir", app, "--emptyOutDir");
  const vite = `${root}node_modules/vite/bin/vite.js`;
  const out = ["--outDir", programs, "--emptyOutDir", "--logLevel", "warn"];
  runNode(vite, "build", `${root}benchmarks`, "--ssr", `${root}benchmarks/main.ts`, ...out);
  const { main } = await import(pathToFileURL(join(programs, "main.js")).href);
  await main({ root, app, chromiumPath: needChromium(), chromiumFlags, only: process.argv.slice(2) });
} finally {
  rmSync(app, { recursive: true, force: true });
}
