import { requirePositive } from "../errors/require.ts";
import { type Curve, wholeCurve } from "./curve.ts";
import { negativePoints, rangeOf } from "./negativePoints.ts";
import type { SurfaceInput } from "./surfaceOf.ts";

export interface WidthForRangeInput extends SurfaceInput {
  /** ISO R. */
  readonly range: number;
  readonly curve?: Curve | undefined;
}

/**
 * The width of the curve of a paper whose range its maker quotes.
 *
 * Formula  width = R / λ, λ the range of the same curve at width 1: all but the width is shape.
 * Units    R in hundredths of log10, width in log10 exposure
 * Holds    for the other parameters as they are.
 * Error    makers round R to tens: 5 of 110 is 5 % of the width.
 *
 * @throws {OutOfDomain} speedPointNotReached, notPositive, outOfRange, twoOfOne, unknownWord, unknownKey, negative, notFinite
 * @source iso-6846: R (second hand); none: that it scales with the width (by hand)
 * @example widthForRange({ range: 112.6458783 }) // 0.75
 */
export function widthForRange({ range, curve, ...finish }: WidthForRangeInput): number {
  requirePositive({ range });
  const shape = { ...wholeCurve(curve), width: 1 };
  return range / rangeOf(negativePoints(shape, finish));
}
