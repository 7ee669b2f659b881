// Builds the app into apps/web/dist, or into --outDir: in a process of its own, so that no test's NODE_ENV reaches React.
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const run = spawnSync(
  process.execPath,
  [
    `${root}node_modules/vite/bin/vite.js`,
    "build",
    "--config",
    "apps/web/vite.config.ts",
    "--logLevel",
    "warn",
    ...process.argv.slice(2),
  ],
  { cwd: root, stdio: "inherit", env: { ...process.env, NODE_ENV: "production" } },
);
process.exitCode = run.status ?? 1;
