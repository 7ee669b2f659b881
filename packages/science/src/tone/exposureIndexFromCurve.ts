import { requirePositive } from "../errors/require.ts";
import { aimOf } from "./aimOf.ts";
import { type Curve, type ProcessSettings, wholeCurve, wholeSettings } from "./curve.ts";
import { developmentOf, logExposureOf } from "./development.ts";
import { exposureIndexFromAim } from "./exposureIndexFromAim.ts";
import type { SurfaceInput } from "./surfaceOf.ts";

export interface ExposureIndexFromCurveInput extends SurfaceInput, ProcessSettings {
  readonly curve?: Curve | undefined;
  readonly meterK?: number | undefined;
  readonly exposureConstant?: number | undefined;
}

export interface ExposureIndexFromCurve {
  readonly exposureIndex: number;
  /** The density meant for mid. */
  readonly aimDensity: number;
  readonly aimLxS: number;
}

/**
 * The exposure index of a paper and its recipe, from their curve.
 *
 * Formula  EI = q · K / H_aim; aim in a direct positive D 0.75 (L* 49), in a negative D_min + 0.60.
 * Units    H_aim in lx·s, all of it, so without flare and flash; K in cd·s/m²; EI and q have none
 * Holds    where the aim lies within reach of paper and baths.
 * Error    flare moves the tone placed on mid by 0.02 in D at most.
 *
 * @throws {OutOfDomain} toneOutOfReach, notPositive, negative, wrongType, outOfRange, twoOfOne, unknownWord, unknownKey, notFinite
 * @source iso-12232: camera equation (second hand); iso-6846: 0.60 (second hand); none: the aim of a direct positive (by hand)
 * @example exposureIndexFromCurve({}).exposureIndex // 0.686673
 */
export function exposureIndexFromCurve({
  curve,
  process,
  u1,
  rounds,
  u2,
  meterK = 12.5,
  exposureConstant = 0.65,
  ...finish
}: ExposureIndexFromCurveInput): ExposureIndexFromCurve {
  requirePositive({ meterK, exposureConstant });
  const development = developmentOf(wholeCurve(curve), wholeSettings({ process, u1, rounds, u2 }), finish);
  const aimDensity = aimOf(development);
  const aimLxS = 10 ** logExposureOf(aimDensity, development, "curve");
  return { exposureIndex: exposureIndexFromAim({ aimLxS, meterK, exposureConstant }), aimDensity, aimLxS };
}
