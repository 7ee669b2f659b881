/** One stroke a tick, in a drawing 358 wide; the lens cap hangs over the one at which it goes on. */
export interface Strokes {
  readonly height: number;
  readonly strokes: readonly { readonly x: number; readonly y: number; readonly filled: number }[];
  readonly strokeHeight: number;
  readonly numbers: readonly { readonly x: number; readonly y: number; readonly n: number }[];
  readonly cap: { readonly x: number; readonly y: number } | null;
  /** Beyond a minute the strokes are those of the present one. */
  readonly minute: number;
  readonly minutes: number;
}

export const strokesWidth = 358;
export const strokeWidth = 9;
const mostInRow = 20;
const mostStrokes = 60;

/**
 * Where the strokes stand: in fives, in rows of twenty, sixty at most.
 *
 * @param ticks how many there are when the cap goes on; a part of a tick has a stroke of its own
 * @param done how many are over; the last may be filled in part
 */
export function layStrokes({ ticks, done }: { readonly ticks: number; readonly done: number }): Strokes {
  const all = Math.max(1, Math.ceil(ticks - 1e-6));
  const minutes = Math.ceil(all / mostStrokes);
  const minute = Math.min(minutes, Math.floor(Math.max(0, done) / mostStrokes) + 1);
  const before = (minute - 1) * mostStrokes;
  const here = Math.min(mostStrokes, all - before);
  const rows = Math.ceil(here / mostInRow);
  const inRow = Math.min(here, mostInRow);
  const gaps = Math.floor((inRow - 1) / 5) / 2;
  const pitch = Math.min(24.13, (strokesWidth - 24 - strokeWidth) / Math.max(1, inRow - 1 + gaps));
  const left = (strokesWidth - strokeWidth - pitch * (inRow - 1 + gaps)) / 2;
  const strokeHeight = rows === 1 ? 60 : rows === 2 ? 34 : 20;
  const top = 34;
  const numbersBelow = rows === 1 ? 24 : 0;
  // Between rows there is room for the cap.
  const rowPitch = strokeHeight + 30;
  const place = (n: number) => {
    const row = Math.floor((n - 1) / mostInRow);
    const column = (n - 1) % mostInRow;
    return { x: round(left + pitch * (column + Math.floor(column / 5) / 2)), y: top + row * rowPitch };
  };
  const strokes = Array.from({ length: here }, (_, i) => ({
    ...place(i + 1),
    filled: round(Math.min(1, Math.max(0, done - before - i)), 3),
  }));
  const isLast = minute === minutes;
  const last = place(here);
  const numbers = Array.from({ length: here }, (_, i) => i + 1)
    .filter((n) => rows === 1 && (n === here ? isLast : n % 5 === 0 && here - n > 1))
    .map((n) => ({
      x: place(n).x + strokeWidth / 2,
      y: top + strokeHeight + 22,
      n: n === here ? round(before + here - (all - ticks)) : before + n,
    }));
  return {
    height: top + rows * rowPitch - 30 + numbersBelow + 2,
    strokes,
    strokeHeight,
    numbers,
    cap: isLast ? { x: last.x + strokeWidth / 2, y: last.y } : null,
    minute,
    minutes,
  };
}

function round(x: number, digits = 1): number {
  return Number(x.toFixed(digits));
}
