import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requirePositive } from "../errors/require.ts";

export interface MagnificationFromTotalInput {
  readonly focalLengthMm: number;
  /** From subject to paper. */
  readonly totalDistanceMm: number;
  /** Separation of the principal planes, of any sign; 0 where unknown. */
  readonly hiatusMm?: number;
  /** Two lens positions fit every distance: true takes the one that enlarges. */
  readonly larger?: boolean;
}

/**
 * Magnification from the whole distance between subject and paper.
 *
 * Formula  m = (k − √(k² − 4)) / 2 with k = (T − h) / f − 2; the larger image is its inverse.
 * Units    T, h (hiatus), f in mm; m has none.
 * Holds    T − h ≥ 4 f: nearer than four focal lengths no sharp image fits between subject and paper.
 * Error    an unknown hiatus counts in full as distance; near 4 f, small errors of T grow without limit in m.
 *
 * @throws {OutOfDomain} closerThanFourFocalLengths
 * @source lens-relations: least total 4 f at M = 1 (seen); none: T = f (2 + m + 1/m) + h solved for m (by hand)
 * @example magnificationFromTotal({ focalLengthMm: 210, totalDistanceMm: 1050 }) // 0.3819660113
 */
export function magnificationFromTotal({
  focalLengthMm,
  totalDistanceMm,
  hiatusMm = 0,
  larger = false,
}: MagnificationFromTotalInput): number {
  requirePositive({ focalLengthMm, totalDistanceMm });
  requireFinite({ hiatusMm });
  const beyondFourMm = totalDistanceMm - hiatusMm - 4 * focalLengthMm;
  if (beyondFourMm < 0) {
    throw new OutOfDomain("closerThanFourFocalLengths", { totalDistanceMm, hiatusMm, focalLengthMm });
  }
  // k² − 4 as (k − 2)(k + 2), and the small root as the inverse of the large one: no digits are lost at either end.
  const kLessTwo = beyondFourMm / focalLengthMm;
  const enlarging = (kLessTwo + 2 + Math.sqrt(kLessTwo) * Math.sqrt(kLessTwo + 4)) / 2;
  return larger ? enlarging : 1 / enlarging;
}
