import { type Curve, wholeCurve } from "./curve.ts";
import { type IsoFromCurve, isoOf } from "./isoOf.ts";
import type { SurfaceInput } from "./surfaceOf.ts";

export interface IsoFromCurveInput extends SurfaceInput {
  readonly curve?: Curve | undefined;
}

/**
 * Speed and range that a maker would quote for a paper of this curve, developed as a negative.
 *
 * Formula  toe D_min + 0.04, speed point D_min + 0.60, shoulder D_min + 0.90 (D_max − D_min); P = 1000 / H_speed,
 *          R = 100 (x_shoulder − x_toe); gradient = (0.90 (D_max − D_min) − 0.04) / (R / 100).
 * Units    log exposures in log10 lx·s of the printing lamp; R in hundredths of log10
 * Holds    for first development as written; at least 0.60 must lie between the ends.
 * Error    reading the nine tenths as of the gross density moves the shoulder by 0.02 in D at most.
 *
 * @throws {OutOfDomain} speedPointNotReached, outOfRange, twoOfOne, unknownWord, unknownKey, negative, notFinite
 * @source focal-encyclopedia, p. 679: 0.04 and nine tenths (seen); iso-6846: 0.60 (second hand); none: the 1000 of P (from memory)
 * @example isoFromCurve({}).range // 112.6458783
 */
export function isoFromCurve({ curve, ...finish }: IsoFromCurveInput): IsoFromCurve {
  return isoOf(wholeCurve(curve), finish);
}
