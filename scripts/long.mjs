// The long forms of the endurance tests: npm run endure [kills, 200] and npm run fuzz [damaged texts and pictures, 100000].
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
/** @type {Readonly<Record<string, { count: string, usual: number, tests: string[] }>>} */
const forms = {
  endure: { count: "CAPTRAY_KILLS", usual: 200, tests: ["diskKill", "browserKill", "browser/trays"] },
  fuzz: { count: "CAPTRAY_FUZZ", usual: 100_000, tests: ["damagedNotebook", "mutated"] },
};
const [name = "", asked] = process.argv.slice(2);
const form = forms[name];
if (form === undefined) throw new Error(`There is no long form “${name}”: ${Object.keys(forms).join(", ")}.`);
const run = spawnSync(
  process.execPath,
  [
    `${root}node_modules/vitest/vitest.mjs`,
    "run",
    "--project",
    "endurance",
    "--project",
    "unit",
    "--project",
    "browser",
    ...form.tests,
  ],
  { cwd: root, stdio: "inherit", env: { ...process.env, [form.count]: asked ?? String(form.usual) } },
);
process.exitCode = run.status ?? 1;
