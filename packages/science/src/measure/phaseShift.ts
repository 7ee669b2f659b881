import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite } from "../errors/require.ts";
import type { Plane } from "./fourier2.ts";
import { phaseCorrelation, shiftOf } from "./phaseCorrelation.ts";

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
  const planes = [planeOf(first, columns, "first"), planeOf(second, columns, "second")] as const;
  return shiftOf(phaseCorrelation(...planes), { rows, columns });
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
