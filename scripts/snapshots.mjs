// Writes packages/drawings/snapshots anew, after the changed pictures were looked at: node scripts/snapshots.mjs
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { runnerImport } from "vite";

const root = fileURLToPath(new URL("..", import.meta.url));
const { module } = await runnerImport(`${root}packages/drawings/src/snapshots.ts`);

rmSync(`${root}packages/drawings/snapshots`, { recursive: true, force: true });
mkdirSync(`${root}packages/drawings/snapshots`);
for (const [name, svg] of module.snapshots()) writeFileSync(`${root}packages/drawings/snapshots/${name}.svg`, svg);
