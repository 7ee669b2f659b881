import { type Curve, type ProcessSettings, wholeCurve, wholeSettings } from "./curve.ts";
import { developmentOf } from "./development.ts";
import type { SurfaceInput } from "./surfaceOf.ts";
import { type DefaultWants, wantsOf } from "./wantsOf.ts";

export interface DefaultWantsInput extends SurfaceInput, ProcessSettings {
  readonly curve?: Curve | undefined;
}

/**
 * The white and the black to plan for, of the curve in hand, so that a first plan can be met.
 *
 * Formula  direct positive: D at g 1 plus 0.07, D at g 0 minus 0.20; negative: D_min + 0.90 (D_max − D_min), D_min + 0.10.
 * Units    densities, not rounded.
 * Holds    for this process and these doses; a person's own figures replace them.
 * Error    a choice: 0.05 either way is taste.
 *
 * @throws {OutOfDomain} notPositive, negative, wrongType, outOfRange, twoOfOne, unknownWord, unknownKey, notFinite
 * @source none: the distances kept from the ends (by hand)
 * @example defaultWants({}).highlightDensity // 0.431954
 */
export function defaultWants({ curve, process, u1, rounds, u2, ...finish }: DefaultWantsInput): DefaultWants {
  return wantsOf(developmentOf(wholeCurve(curve), wholeSettings({ process, u1, rounds, u2 }), finish));
}
