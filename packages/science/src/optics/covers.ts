import { requireFinite, requirePositive } from "../errors/require.ts";

export interface CoversInput {
  readonly imageCircleMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly shiftXMm?: number;
  readonly shiftYMm?: number;
}

/**
 * Whether every corner of a shifted sheet still lies within the image circle.
 *
 * Formula  (w + 2 |x|)² + (h + 2 |y|)² ≤ C²
 * Units    all in mm; the answer is true or false.
 * Holds    shifts x along w and y along h, of any sign, from the middle of the circle; no tilt.
 * Error    as sharp as the edge of the circle: leave a margin.
 *
 * @throws {OutOfDomain} notPositive, notFinite
 * @source none: the far corner against the radius (by hand)
 * @example covers({ imageCircleMm: 210, widthMm: 127, heightMm: 101.6, shiftXMm: 28 }) // true
 */
export function covers({ imageCircleMm, widthMm, heightMm, shiftXMm = 0, shiftYMm = 0 }: CoversInput): boolean {
  requirePositive({ imageCircleMm, widthMm, heightMm });
  requireFinite({ shiftXMm, shiftYMm });
  // Squares, no roots: a sheet that fits exactly, 90 × 120 in 150, must be told so.
  return (widthMm + 2 * Math.abs(shiftXMm)) ** 2 + (heightMm + 2 * Math.abs(shiftYMm)) ** 2 <= imageCircleMm ** 2;
}
