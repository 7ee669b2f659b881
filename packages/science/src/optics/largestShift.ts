import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requirePositive } from "../errors/require.ts";

export interface LargestShiftInput {
  readonly imageCircleMm: number;
  /** Side of the sheet along the shift. */
  readonly alongMm: number;
  readonly acrossMm: number;
}

/**
 * How far the sheet may be shifted along one side before a corner leaves the image circle.
 *
 * Formula  √((C/2)² − (h/2)²) − w/2, w along the shift, h across
 * Units    all in mm.
 * Holds    the sheet fits unshifted; no shift across at the same time, no tilt.
 * Error    as sharp as the edge of the circle: leave a margin.
 *
 * @throws {OutOfDomain} formatLargerThanCircle
 * @source none: the far corner against the radius (by hand)
 * @example largestShift({ imageCircleMm: 210, alongMm: 127, acrossMm: 101.6 }) // 28.3931987
 */
export function largestShift({ imageCircleMm, alongMm, acrossMm }: LargestShiftInput): number {
  requirePositive({ imageCircleMm, alongMm, acrossMm });
  if (alongMm ** 2 + acrossMm ** 2 > imageCircleMm ** 2) {
    throw new OutOfDomain("formatLargerThanCircle", { imageCircleMm, alongMm, acrossMm });
  }
  const chordMm = Math.sqrt((imageCircleMm - acrossMm) * (imageCircleMm + acrossMm));
  // A sheet that just fits leaves 0, not a rounding error below it.
  return Math.max(0, (chordMm - alongMm) / 2);
}
