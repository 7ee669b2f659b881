import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../../..", import.meta.url));

/** Builds one of the writers here in a process of its own, as the app is built, and gives the folder it lies in. */
export function buildWriter({ name, forNode }: { readonly name: string; readonly forNode: boolean }): string {
  const out = `${root}node_modules/.cache/captray-${name}`;
  const here = `${root}tests/endurance/writing`;
  const what = forNode ? ["--ssr", `${here}/${name}.ts`] : ["--base", "./"];
  const run = spawnSync(
    process.execPath,
    [
      `${root}node_modules/vite/bin/vite.js`,
      "build",
      here,
      "--outDir",
      out,
      "--emptyOutDir",
      "--logLevel",
      "warn",
      ...what,
    ],
    { cwd: root, encoding: "utf8", env: { ...process.env, NODE_ENV: "production" } },
  );
  if (run.status !== 0) throw new Error(`The writer does not build:\n${run.stdout}${run.stderr}`);
  return out;
}
