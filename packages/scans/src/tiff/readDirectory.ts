import { readExactly } from "../bytes/readExactly.ts";
import { lettersOf, viewOf } from "../bytes/view.ts";
import type { ByteSource } from "../picture.ts";
import { PictureProblem } from "../pictureProblem.ts";

/** A directory of a TIFF: its entries by tag, their values fetched when they are asked for. */
export interface Directory {
  readonly littleEndian: boolean;
  readonly has: (tag: number) => boolean;
  /** All values of a tag as numbers; none where the tag is missing. */
  readonly numbers: (tag: number) => Promise<readonly number[]>;
  /** The first value of a tag. */
  readonly number: (tag: number) => Promise<number | undefined>;
  readonly bytes: (tag: number) => Promise<Uint8Array | undefined>;
  readonly text: (tag: number) => Promise<string>;
}

interface Entry {
  readonly type: number;
  readonly count: number;
  /** Where its values lie in the file. */
  readonly at: number;
}

// Bytes of one value, by field type (TIFF 6.0 section 2; BigTIFF: 13, 16 to 18).
const SIZES = [0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8, 4, 0, 0, 8, 8, 8];
const MOST_ENTRIES = 4096;
const MOST_DIRECTORIES = 64;
const MOST_VALUES = 2_000_000;
const SUBFILE_TYPE = 254;

/**
 * The directory of the picture itself: the first that is no thumbnail and no mask.
 *
 * @source tiff-6 sections 2 and 8; bigtiff (from memory)
 */
export async function readDirectory(source: ByteSource): Promise<Directory> {
  const head = viewOf(await readExactly(source, 0, Math.min(16, source.size)));
  const littleEndian = head.getUint8(0) === 0x49;
  const big = head.byteLength >= 8 && head.getUint16(2, littleEndian) === 43;
  if (head.byteLength < (big ? 16 : 8)) throw new PictureProblem("pictureBroken", "it ends within its head");
  let at = big ? wholeAt(head, 8, littleEndian) : head.getUint32(4, littleEndian);
  let first: Directory | undefined;
  const seen = new Set<number>();
  // A chain of directories may lead round in a circle.
  while (at !== 0 && !seen.has(at) && seen.size < MOST_DIRECTORIES) {
    seen.add(at);
    const { directory, next } = await directoryAt(source, at, littleEndian, big);
    first ??= directory;
    if ((((await directory.number(SUBFILE_TYPE)) ?? 0) & 5) === 0) return directory;
    at = next;
  }
  if (first === undefined) throw new PictureProblem("pictureBroken", "it has no directory");
  return first;
}

async function directoryAt(
  source: ByteSource,
  at: number,
  littleEndian: boolean,
  big: boolean,
): Promise<{ directory: Directory; next: number }> {
  const countBytes = big ? 8 : 2;
  const counted = viewOf(await readExactly(source, at, countBytes));
  const count = big ? wholeAt(counted, 0, littleEndian) : counted.getUint16(0, littleEndian);
  if (count < 1 || count > MOST_ENTRIES) throw new PictureProblem("pictureBroken", `its directory lists ${count} tags`);
  const width = big ? 20 : 12;
  const view = viewOf(await readExactly(source, at + countBytes, count * width + (big ? 8 : 4)));
  const entries = new Map<number, Entry>();
  for (let i = 0; i < count; i++) {
    const from = i * width;
    const tag = view.getUint16(from, littleEndian);
    const type = view.getUint16(from + 2, littleEndian);
    const values = big ? wholeAt(view, from + 4, littleEndian) : view.getUint32(from + 4, littleEndian);
    const inline = big ? 8 : 4;
    const valueAt = from + (big ? 12 : 8);
    const fits = (SIZES[type] ?? 0) * values <= inline;
    const where = fits
      ? at + countBytes + valueAt
      : big
        ? wholeAt(view, valueAt, littleEndian)
        : view.getUint32(valueAt, littleEndian);
    // The first of two entries with one tag holds.
    if (!entries.has(tag)) entries.set(tag, { type, count: values, at: where });
  }
  const next = big ? wholeAt(view, count * width, littleEndian) : view.getUint32(count * width, littleEndian);
  return { directory: directoryOf(source, entries, littleEndian), next };
}

function directoryOf(source: ByteSource, entries: ReadonlyMap<number, Entry>, littleEndian: boolean): Directory {
  const bytes = async (tag: number): Promise<Uint8Array | undefined> => {
    const entry = entries.get(tag);
    if (entry === undefined) return undefined;
    const size = SIZES[entry.type] ?? 0;
    if (size === 0) return undefined;
    if (entry.count > MOST_VALUES * 8)
      throw new PictureProblem("pictureBroken", `tag ${tag} lists ${entry.count} values`);
    return readExactly(source, entry.at, size * entry.count);
  };
  const numbers = async (tag: number): Promise<readonly number[]> => {
    const entry = entries.get(tag);
    if (entry === undefined) return [];
    if (entry.count > MOST_VALUES) throw new PictureProblem("pictureBroken", `tag ${tag} lists ${entry.count} values`);
    const raw = await bytes(tag);
    if (raw === undefined) return [];
    const view = viewOf(raw);
    const size = SIZES[entry.type] ?? 1;
    return Array.from({ length: entry.count }, (_, i) => valueAt(view, i * size, entry.type, littleEndian));
  };
  return {
    littleEndian,
    has: (tag) => entries.has(tag),
    numbers,
    number: async (tag) => (await numbers(tag))[0],
    bytes,
    text: async (tag) => {
      const entry = entries.get(tag);
      if (entry === undefined || entry.count > 4096) return "";
      return lettersOf((await bytes(tag)) ?? new Uint8Array(0));
    },
  };
}

function valueAt(view: DataView, at: number, type: number, littleEndian: boolean): number {
  switch (type) {
    case 3:
      return view.getUint16(at, littleEndian);
    case 8:
      return view.getInt16(at, littleEndian);
    case 4:
    case 13:
      return view.getUint32(at, littleEndian);
    case 9:
      return view.getInt32(at, littleEndian);
    case 5: {
      const below = view.getUint32(at + 4, littleEndian);
      return below === 0 ? 0 : view.getUint32(at, littleEndian) / below;
    }
    case 10: {
      const below = view.getInt32(at + 4, littleEndian);
      return below === 0 ? 0 : view.getInt32(at, littleEndian) / below;
    }
    case 11:
      return view.getFloat32(at, littleEndian);
    case 12:
      return view.getFloat64(at, littleEndian);
    case 16:
    case 17:
    case 18:
      return wholeAt(view, at, littleEndian);
    default:
      return view.getUint8(at);
  }
}

/** Eight bytes as a number: a place beyond 2^53 lies in no file, and is refused where it is read. */
function wholeAt(view: DataView, at: number, littleEndian: boolean): number {
  return Number(view.getBigUint64(at, littleEndian));
}
