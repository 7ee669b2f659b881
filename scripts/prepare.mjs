// Builds the terminal after an install, where the sources and the development tools are there; else does nothing.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const vite = `${root}node_modules/vite/bin/vite.js`;
if (existsSync(vite) && existsSync(`${root}apps/captray/src/main.ts`)) {
  const run = spawnSync(
    process.execPath,
    [vite, "build", "--config", "apps/captray/vite.config.ts", "--logLevel", "warn"],
    {
      cwd: root,
      stdio: "inherit",
    },
  );
  process.exitCode = run.status ?? 1;
}
