import type { WholeCurve } from "./curve.ts";
import { negativePoints, rangeOf, shoulderShare, toeAbove } from "./negativePoints.ts";
import { paperSpeed } from "./paperSpeed.ts";
import type { SurfaceInput } from "./surfaceOf.ts";

/** Of the negative, as a maker would quote it before rounding. */
export interface IsoFromCurve {
  readonly minDensity: number;
  readonly maxDensity: number;
  /** log10 lx·s, as the other two. */
  readonly logToe: number;
  readonly logSpeedPoint: number;
  readonly logShoulder: number;
  /** ISO P. */
  readonly speed: number;
  /** ISO R. */
  readonly range: number;
  /** Density by log10 exposure between toe and shoulder. */
  readonly averageGradient: number;
}

/** The same for a whole curve, which need not be one that may be typed in. Inner helper. */
export function isoOf(curve: WholeCurve, finish: SurfaceInput): IsoFromCurve {
  const points = negativePoints(curve, finish);
  const range = rangeOf(points);
  const net = points.maxDensity - points.minDensity;
  return {
    ...points,
    speed: paperSpeed({ speedPointLxS: 10 ** points.logSpeedPoint }),
    range,
    averageGradient: (shoulderShare * net - toeAbove) / (range / 100),
  };
}
