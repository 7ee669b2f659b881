import { requireFinite, requireNotNegative, requirePositive } from "../errors/require.ts";
import { type Curve, type ProcessSettings, wholeCurve, wholeSettings } from "./curve.ts";
import { developmentOf } from "./development.ts";
import { exposureFlashOf, type PlanExposureFlash } from "./exposureFlashOf.ts";
import type { SurfaceInput } from "./surfaceOf.ts";

export interface PlanExposureFlashInput extends SurfaceInput, ProcessSettings {
  /** Image light as now metered, without flare. */
  readonly highlightLxS: number;
  /** Below the highlight. */
  readonly shadowLxS: number;
  /** Mean image exposure of the frame, which flare comes from. */
  readonly meanLxS: number;
  readonly highlightDensity: number;
  readonly shadowDensity: number;
  readonly curve?: Curve | undefined;
}

/**
 * The exposure and the flash that print a highlight and a shadow at the densities wanted.
 *
 * Formula  T = 10^x(D); k = (T_h − T_s) / (H_h − H_s); flash = T_s − k (H_s + v), v = φ H̄; seconds = flash / fr.
 * Units    exposures in lx·s; flash in lx·s and s; ranges in log10; k a factor on the exposure, also in stops
 * Holds    where both densities lie within reach; a negative flash means that the scene is shorter than the paper.
 * Error    flash and picture are added as equals; a flash below the threshold may act more or less.
 *
 * @throws {OutOfDomain} toneOutOfReach, notPositive, negative, wrongType, outOfRange, twoOfOne, unknownWord, unknownKey, notFinite
 * @source none: two equations of exposure, solved (by hand)
 * @example planExposureFlash({ highlightLxS: 30, shadowLxS: 1.5, meanLxS: 6, highlightDensity: 0.55, shadowDensity: 1.6 }).exposureFactor // 0.443897562
 */
export function planExposureFlash({
  highlightLxS,
  shadowLxS,
  meanLxS,
  highlightDensity,
  shadowDensity,
  curve,
  process,
  u1,
  rounds,
  u2,
  ...finish
}: PlanExposureFlashInput): PlanExposureFlash {
  requirePositive({ highlightLxS, shadowLxS });
  requireNotNegative({ meanLxS });
  requireFinite({ highlightDensity, shadowDensity });
  const development = developmentOf(wholeCurve(curve), wholeSettings({ process, u1, rounds, u2 }), finish);
  return exposureFlashOf({ highlightLxS, shadowLxS, meanLxS, highlightDensity, shadowDensity }, development);
}
