/** What the tests of this package share: a clock and a chance that are repeatable. */
import { type MemoryBase, newMemoryBase, openMemoryStorage } from "../storage/index.ts";
import type { Storage } from "../storage/storage.ts";
import type { Notebook } from "./notebook.ts";
import { openNotebook } from "./openNotebook.ts";

/** Chance from a seed, in [0, 1): the 32-bit mixing of "splitmix" (common practice). */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 2 ** 32;
  };
}

/** A December morning at the boatyard; each look at the clock is a second later. */
export function steppingClock(from = 1_796_115_600_000): () => number {
  let at = from;
  return () => {
    at += 1000;
    return at;
  };
}

export interface OpenForTestInput {
  readonly base?: MemoryBase;
  readonly storage?: Storage;
  readonly seed?: number;
  readonly device?: string;
  readonly now?: () => number;
}

export function openForTest({
  base = newMemoryBase(),
  storage = openMemoryStorage({ base }),
  seed = 1,
  device = "boatyard",
  now = steppingClock(),
}: OpenForTestInput = {}): Promise<Notebook> {
  return openNotebook({ storage, notebookId: "winter", now, random: seededRandom(seed), device });
}
