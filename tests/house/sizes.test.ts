import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, test } from "vitest";

// Ceilings of our own; raising one is done in the commit that needs it, with the reason. kB = 1000 bytes, gzip -9.
const firstLoadKb = 150;
const roomKb = 60;
const facesKb = 56;

interface Chunk {
  readonly file: string;
  readonly isEntry?: boolean;
  readonly isDynamicEntry?: boolean;
  readonly imports?: readonly string[];
  readonly css?: readonly string[];
}

const root = fileURLToPath(new URL("../..", import.meta.url));
let dist = "";
let manifest: Readonly<Record<string, Chunk>> = {};

beforeAll(() => {
  dist = mkdtempSync(join(tmpdir(), "captray-sizes-"));
  const words = [`${root}scripts/build.mjs`, "--outDir", dist, "--emptyOutDir"];
  const run = spawnSync(process.execPath, words, { cwd: root, encoding: "utf8" });
  if (run.status !== 0) throw new Error(run.stderr);
  manifest = JSON.parse(readFileSync(join(dist, ".vite/manifest.json"), "utf8")) as Record<string, Chunk>;
});
afterAll(() => rmSync(dist, { recursive: true, force: true }));

describe("what has to be fetched", () => {
  test(`the first load is at most ${firstLoadKb} kB: page, entry with its static imports, style sheets`, () => {
    const files = ["index.html", "first-light.js", ...filesOf("index.html")];
    expect(kb(files)).toBeLessThanOrEqual(firstLoadKb);
    expect(kb(files)).toBeGreaterThan(50); // React alone is more than this: else nothing was counted
  });

  test(`each room is at most ${roomKb} kB more`, () => {
    const first = new Set(filesOf("index.html"));
    const rooms = Object.keys(manifest).filter((key) => manifest[key]?.isDynamicEntry && key.startsWith("src/rooms/"));
    expect(rooms.length).toBeGreaterThan(0);
    const tooBig = rooms
      .map((room) => ({ room, kb: kb([...filesOf(room)].filter((file) => !first.has(file))) }))
      .filter((each) => each.kb > roomKb);
    expect(tooBig).toEqual([]);
  });

  test(`the two faces are at most ${facesKb} kB, and no other is fetched`, () => {
    const faces = Object.values(manifest).filter(({ file }) => file.endsWith(".woff2"));
    expect(faces.length).toBe(2);
    expect(faces.reduce((sum, { file }) => sum + readFileSync(join(dist, file)).length, 0) / 1000).toBeLessThanOrEqual(
      facesKb,
    );
  });
});

function filesOf(key: string, seen = new Set<string>(), files = new Set<string>()): Set<string> {
  const chunk = manifest[key];
  if (chunk === undefined || seen.has(key)) return files;
  seen.add(key);
  for (const file of [chunk.file, ...(chunk.css ?? [])]) files.add(file);
  for (const next of chunk.imports ?? []) filesOf(next, seen, files);
  return files;
}

function kb(files: readonly string[]): number {
  return files.reduce((sum, file) => sum + gzipSync(readFileSync(join(dist, file)), { level: 9 }).length, 0) / 1000;
}
