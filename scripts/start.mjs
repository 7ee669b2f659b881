// npm start: builds the app, serves it to this machine, and prints the address last.
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
/** @param {string[]} words */
function runNode(...words) {
  const run = spawnSync(process.execPath, words, { cwd: root, stdio: ["ignore", 2, 2] });
  if (run.status !== 0) process.exit(run.status ?? 1);
}
runNode(`${root}scripts/build.mjs`);
runNode(
  `${root}node_modules/vite/bin/vite.js`,
  "build",
  "--config",
  "apps/server/vite.config.ts",
  "--logLevel",
  "warn",
);

const built = new URL("../apps/server/dist/serving.js", import.meta.url);
const { serve } = await import(built.href);
const { address, close } = await serve({ folder: `${root}apps/web/dist`, port: 4870, nextFree: true });
for (const signal of ["SIGINT", "SIGTERM"]) process.once(signal, () => close().then(() => process.exit(0)));
console.log(`Cap & Tray is open on this machine. Stop it with Ctrl+C.\n${address}`);
