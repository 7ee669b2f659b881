import { execFile, execFileSync } from "node:child_process";
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";

const runFile = promisify(execFile);

/** The repository's root, with a slash at its end. */
export const root = fileURLToPath(new URL("../../../", import.meta.url));

/** Every file below a folder that git tracks or would track, by its path from the root. */
export function filesOf(...patterns: string[]): string[] {
  const listed = execFileSync("git", ["ls-files", "--cached", "--others", "--exclude-standard", "--", ...patterns], {
    cwd: root,
    encoding: "utf8",
  });
  return [...new Set(listed.split("\n").filter((path) => path !== "" && isFile(path)))].sort();
}

function isFile(path: string): boolean {
  try {
    return statSync(join(root, path)).isFile();
  } catch {
    return false;
  }
}

/** The text of a file, by its path from the root. */
export function textOf(path: string): string {
  return readFileSync(join(root, path), "utf8");
}

/** The names of the folders directly below one. */
export function foldersOf(path: string): string[] {
  return readdirSync(join(root, path), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort();
}

/** Runs a program of node_modules and gives its exit code and everything it said. */
export async function run(program: string, ...words: string[]): Promise<{ code: number; said: string }> {
  try {
    const { stdout } = await runFile(join(root, "node_modules/.bin", program), words, {
      cwd: root,
      encoding: "utf8",
      maxBuffer: 64 * 1024 * 1024,
      env: { ...process.env, NO_COLOR: "1", FORCE_COLOR: "0" },
    });
    return { code: 0, said: stdout };
  } catch (fault) {
    const { code, stdout, stderr } = fault as { code?: number | string; stdout?: string; stderr?: string };
    return { code: typeof code === "number" ? code : 1, said: `${stdout ?? ""}${stderr ?? ""}` };
  }
}
