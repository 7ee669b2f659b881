// Makes a fresh clone ready: the right Node, the locked packages, the terminal built from today's sources.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
if (major < 20 || (major === 20 && minor < 19) || major === 21 || (major === 22 && minor < 12) || major === 23) {
  console.error("Node 20.19, 22.12 or 24 is needed.");
  process.exit(1);
}

const npm = process.env.npm_execpath ? [process.execPath, process.env.npm_execpath] : ["npm"];
/** @param {string[]} words */
function runNpm(...words) {
  const run = spawnSync(/** @type {string} */ (npm[0]), [...npm.slice(1), ...words], {
    cwd: root,
    stdio: ["ignore", 2, 2],
  });
  if (run.status !== 0) process.exit(run.status ?? 1);
}

const stamp = `${root}node_modules/.ready`;
const want = createHash("sha256")
  .update(readFileSync(`${root}package-lock.json`))
  .update(process.versions.modules + process.platform + process.arch)
  .digest("hex");
if (!existsSync(stamp) || readFileSync(stamp, "utf8") !== want) {
  // --include=dev: also where NODE_ENV=production is set.
  runNpm("ci", "--include=dev", "--loglevel=error");
  writeFileSync(stamp, want);
} else {
  runNpm("run", "--silent", "build:terminal");
}
