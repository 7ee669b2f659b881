import { requireFinite, requirePositive } from "../errors/require.ts";
import { type Curve, wholeCurve } from "./curve.ts";
import { negativePoints, rangeOf } from "./negativePoints.ts";
import type { SurfaceInput } from "./surfaceOf.ts";

export interface FilterCurveInput extends SurfaceInput {
  /** ISO R of the paper under the filter. */
  readonly range: number;
  /** Extra exposure the filter asks for at the speed point. */
  readonly filterStops: number;
  readonly curve?: Curve | undefined;
}

export interface FilterCurve {
  readonly x50: number;
  readonly width: number;
}

/**
 * The curve of a variable-contrast paper under a filter, from that without one.
 *
 * Formula  width' = R / λ; x50' = x_speed + log10(2) e + ζ width', ζ = (x50 − x_speed) / width.
 * Units    R in hundredths of log10; e in stops; x50 in log10 lx·s
 * Holds    for filters whose two emulsions act as one; soft ones can show a bump that this has not.
 * Error    flare and sharpness through the filter are not counted.
 *
 * @throws {OutOfDomain} speedPointNotReached, notPositive, outOfRange, twoOfOne, unknownWord, unknownKey, negative, notFinite
 * @source iso-6846: speed point and R (second hand); none: the shift with the filter (by hand)
 * @example filterCurve({ range: 112.6458783, filterStops: 1 }).x50 // 1.10103
 */
export function filterCurve({ range, filterStops, curve, ...finish }: FilterCurveInput): FilterCurve {
  requirePositive({ range });
  requireFinite({ filterStops });
  const whole = wholeCurve(curve);
  const points = negativePoints(whole, finish);
  const width = (range * whole.width) / rangeOf(points);
  const lag = (whole.x50 - points.logSpeedPoint) / whole.width;
  return { x50: points.logSpeedPoint + Math.log10(2) * filterStops + lag * width, width };
}
