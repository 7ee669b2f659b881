import { PictureProblem } from "../pictureProblem.ts";

export interface FilterInput {
  /** Rows as unpacked, each with the number of its filter before it. */
  readonly bytes: Uint8Array;
  readonly rows: number;
  readonly bytesOfPixel: number;
  /** The row above the first, without its filter's number; holds the last row afterwards. */
  readonly above: Uint8Array;
}

/**
 * Undoes the filters of PNG rows: none, left, above, their mean, or the nearest of left, above and above left (Paeth).
 *
 * @source png-2 section 9 (from memory)
 */
export function undoFilter({ bytes, rows, bytesOfPixel: step, above }: FilterInput): Uint8Array {
  const width = above.length;
  const out = new Uint8Array(rows * width);
  let up = above;
  for (let row = 0; row < rows; row++) {
    const from = row * (width + 1);
    const filter = bytes[from];
    const stored = bytes.subarray(from + 1, from + 1 + width);
    const plain = out.subarray(row * width, (row + 1) * width);
    undoRow(filter, stored, plain, up, step);
    up = plain;
  }
  above.set(up);
  return out;
}

function undoRow(
  filter: number | undefined,
  stored: Uint8Array,
  plain: Uint8Array,
  up: Uint8Array,
  step: number,
): void {
  const width = plain.length;
  const s = stored as unknown as readonly number[];
  const p = plain as unknown as readonly number[];
  const u = up as unknown as readonly number[];
  if (filter === 0) plain.set(stored);
  else if (filter === 1) {
    plain.set(stored.subarray(0, step));
    for (let i = step; i < width; i++) plain[i] = (s[i] as number) + (p[i - step] as number);
  } else if (filter === 2) {
    for (let i = 0; i < width; i++) plain[i] = (s[i] as number) + (u[i] as number);
  } else if (filter === 3) {
    for (let i = 0; i < width; i++) {
      const left = i < step ? 0 : (p[i - step] as number);
      plain[i] = (s[i] as number) + ((left + (u[i] as number)) >> 1);
    }
  } else if (filter === 4) {
    for (let i = 0; i < Math.min(step, width); i++) plain[i] = (s[i] as number) + (u[i] as number);
    for (let i = step; i < width; i++) {
      const a = p[i - step] as number;
      const b = u[i] as number;
      const c = u[i - step] as number;
      const pa = b > c ? b - c : c - b;
      const pb = a > c ? a - c : c - a;
      const both = a + b - 2 * c;
      const pc = both < 0 ? -both : both;
      plain[i] = (s[i] as number) + (pa <= pb && pa <= pc ? a : pb <= pc ? b : c);
    }
  } else throw new PictureProblem("pictureBroken", `a row of it has the filter ${filter}`);
}
