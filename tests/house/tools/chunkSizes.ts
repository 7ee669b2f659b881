import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";

interface Chunk {
  readonly file: string;
  readonly isEntry?: boolean;
  readonly isDynamicEntry?: boolean;
  readonly imports?: readonly string[];
  readonly dynamicImports?: readonly string[];
  readonly css?: readonly string[];
}

export interface ChunkSizes {
  /** Page, entry with its static imports, style sheets; faces not counted. kB = 1000 bytes, gzip -9. */
  readonly firstLoadKb: number;
  /** What each screen of a room adds to the first load, and each part of a screen to that screen. */
  readonly rooms: readonly { readonly room: string; readonly kb: number }[];
  /** The faces as they are: they do not pack. */
  readonly faces: readonly { readonly file: string; readonly kb: number }[];
}

/** What has to be fetched of a built app, read from the build's own list of its chunks. */
export function chunkSizes({ dist }: { readonly dist: string }): ChunkSizes {
  const manifest = JSON.parse(readFileSync(join(dist, ".vite/manifest.json"), "utf8")) as Readonly<
    Record<string, Chunk>
  >;
  const filesOf = (key: string, seen = new Set<string>(), files = new Set<string>()): Set<string> => {
    const chunk = manifest[key];
    if (chunk === undefined || seen.has(key)) return files;
    seen.add(key);
    for (const file of [chunk.file, ...(chunk.css ?? [])]) files.add(file);
    for (const next of chunk.imports ?? []) filesOf(next, seen, files);
    return files;
  };
  const bytes = (file: string) => readFileSync(join(dist, file));
  const kb = (files: readonly string[]) =>
    files.reduce((sum, file) => sum + gzipSync(bytes(file), { level: 9 }).length, 0) / 1000;

  const first = filesOf("index.html");
  const rooms = Object.keys(manifest).filter((key) => manifest[key]?.isDynamicEntry && key.startsWith("src/rooms/"));
  // A part that only one screen fetches comes after that screen: what it adds is what is not there by then.
  const screenOf = (part: string): Set<string> | undefined => {
    const askers = Object.keys(manifest).filter((key) => manifest[key]?.dynamicImports?.includes(part));
    const [screen] = askers;
    return askers.length === 1 && screen?.startsWith("src/rooms/") ? filesOf(screen) : undefined;
  };
  return {
    firstLoadKb: kb(["index.html", "first-light.js", ...first]),
    rooms: rooms.map((room) => {
      const there = new Set([...first, ...(screenOf(room) ?? [])]);
      return { room, kb: kb([...filesOf(room)].filter((file) => !there.has(file))) };
    }),
    faces: Object.values(manifest)
      .filter(({ file }) => file.endsWith(".woff2"))
      .map(({ file }) => ({ file, kb: bytes(file).length / 1000 })),
  };
}
