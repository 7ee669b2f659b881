import { spawnSync } from "node:child_process";
import { basename, dirname } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../../..", import.meta.url));

interface BuildWriterInput {
  readonly writer: URL;
  readonly forNode: boolean;
}

/** Builds a writer in a process of its own, as the app is built, and gives the folder it lies in. */
export function buildWriter({ writer, forNode }: BuildWriterInput): string {
  const file = fileURLToPath(writer);
  const out = `${root}node_modules/.cache/captray-${basename(file, ".ts")}`;
  const what = forNode ? ["--ssr", file] : ["--base", "./"];
  const words = ["build", dirname(file), "--outDir", out, "--emptyOutDir", "--logLevel", "warn", ...what];
  const run = spawnSync(process.execPath, [`${root}node_modules/vite/bin/vite.js`, ...words], {
    cwd: root,
    encoding: "utf8",
    env: { ...process.env, NODE_ENV: "production" },
  });
  if (run.status !== 0) throw new Error(`The writer does not build:\n${run.stdout}${run.stderr}`);
  return out;
}
