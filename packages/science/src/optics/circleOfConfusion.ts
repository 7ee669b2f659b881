import { requirePositive } from "../errors/require.ts";

export interface CircleOfConfusionInput {
  /** Of the seen image: holders mask 3 … 6 mm a side. */
  readonly widthMm: number;
  readonly heightMm: number;
  readonly divisor?: number;
}

/**
 * The widest disc on the paper that still passes for a point, taken from the size of the picture.
 *
 * Formula  c = √(w² + h²) / divisor
 * Units    w, h, c in mm.
 * Holds    a print looked at as a whole. Held in the hand at 25 cm, 0.2 mm (5 line pairs a millimetre) is usual.
 * Error    a convention: a divisor is a matter of how the print is looked at.
 *
 * @throws {OutOfDomain} notPositive
 * @source none: a 1500th of the diagonal (common practice); confusion-article: 0.2 mm at 25 cm (second hand)
 * @example circleOfConfusion({ widthMm: 120, heightMm: 90 }) // 0.1
 */
export function circleOfConfusion({ widthMm, heightMm, divisor = 1500 }: CircleOfConfusionInput): number {
  requirePositive({ widthMm, heightMm, divisor });
  return Math.hypot(widthMm, heightMm) / divisor;
}
