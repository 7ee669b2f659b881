import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite } from "../errors/require.ts";
import { fourier2, type Plane } from "./fourier2.ts";

export interface PhaseShiftInput {
  /** Rows of one picture. */
  readonly first: readonly (readonly number[])[];
  /** Rows of the other, of the same size. */
  readonly second: readonly (readonly number[])[];
}

export interface PhaseShift {
  readonly downPx: number;
  readonly rightPx: number;
}

/**
 * How far the second picture is shifted against the first.
 *
 * Method   phase correlation: the transform of the second times the conjugate of the first's, each number brought to length 1;
 *          back again it is a peak at the shift. A parabola through the peak and its neighbours gives the fraction.
 * Units    pixels, down and to the right, between minus and plus half the picture.
 * Holds    for pictures of one thing whose edges run into one another or matter little.
 * Error    none for whole shifts; 0.2 px for fractions.
 *
 * @throws {OutOfDomain} tooFew, listsDiffer, notFinite
 * @source kuglin-hines-1975: phase correlation (from memory)
 * @example phaseShift({ first: [[9, 1, 2], [3, 7, 1], [2, 2, 5]], second: [[2, 9, 1], [1, 3, 7], [5, 2, 2]] }) // {"downPx": 0, "rightPx": 1}
 */
export function phaseShift({ first, second }: PhaseShiftInput): PhaseShift {
  const rows = first.length;
  const columns = first[0]?.length ?? 0;
  if (rows < 2 || columns < 2) throw new OutOfDomain("tooFew", { first: Math.min(rows, columns), least: 2 });
  if (second.length !== rows) throw new OutOfDomain("listsDiffer", { first: rows, second: second.length }, "second");
  const { peak, data } = correlation(planeOf(first, columns, "first"), planeOf(second, columns, "second"));
  const [row, column] = [Math.floor(peak / columns), peak % columns];
  const value = (r: number, c: number) => data[((r + rows) % rows) * columns + ((c + columns) % columns)] ?? 0;
  const down = row + vertexOf(value(row - 1, column), value(row, column), value(row + 1, column));
  const right = column + vertexOf(value(row, column - 1), value(row, column), value(row, column + 1));
  // A shift by more than half is one the other way.
  return { downPx: down > rows / 2 ? down - rows : down, rightPx: right > columns / 2 ? right - columns : right };
}

function planeOf(rows: readonly (readonly number[])[], columns: number, name: string): Plane {
  const re = new Float64Array(rows.length * columns);
  for (const [r, row] of rows.entries()) {
    if (row.length !== columns) throw new OutOfDomain("listsDiffer", { [name]: row.length, columns }, name);
    for (const [c, value] of row.entries()) {
      requireFinite({ [name]: value });
      re[r * columns + c] = value;
    }
  }
  return { rows: rows.length, columns, re, im: new Float64Array(re.length) };
}

/** The phase correlation of two planes, and where it is highest. */
function correlation(first: Plane, second: Plane): { peak: number; data: Float64Array } {
  const a = fourier2(first);
  const b = fourier2(second);
  for (let i = 0; i < a.re.length; i++) {
    const [ar, ai, br, bi] = [a.re[i] ?? 0, a.im[i] ?? 0, b.re[i] ?? 0, b.im[i] ?? 0];
    const re = br * ar + bi * ai;
    const im = bi * ar - br * ai;
    const length = Math.hypot(re, im);
    a.re[i] = length > 1e-12 ? re / length : 0;
    a.im[i] = length > 1e-12 ? im / length : 0;
  }
  const { re: data } = fourier2(a, "back");
  let peak = 0;
  for (let i = 1; i < data.length; i++) if ((data[i] ?? 0) > (data[peak] ?? 0)) peak = i;
  return { peak, data };
}

/** How far the top of a parabola lies from the middle of three points, at most half a step. */
function vertexOf(before: number, middle: number, after: number): number {
  const bend = before - 2 * middle + after;
  // What is only the last digits of the transform is no fraction.
  if (bend >= 0 || Math.abs(before - after) < 1e-9 * Math.abs(middle)) return 0;
  return Math.max(-0.5, Math.min(0.5, (0.5 * (before - after)) / bend));
}
