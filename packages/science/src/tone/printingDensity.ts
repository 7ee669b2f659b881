import { requireNotNegative, requireWithin } from "../errors/require.ts";
import { leavingOf, opticsOf, returnOf } from "./layerOptics.ts";

export interface PrintingDensityInput {
  /** Of the paper negative's silver layer, one pass. */
  readonly layerDensity: number;
  /** Of its base, seen from the layer: 0 … 1. */
  readonly baseReflectance: number;
}

/**
 * What a paper negative holds back when it is lit through its own base to print on a second sheet.
 *
 * Formula  D_p = −log10 {[X(D_T) / (1 − ρ G(D_T))] / [X(0) / (1 − ρ r_i)]}; X = ∫ (1 − r(μ)) 10^(−D_T/μ) 2μ dμ over what leaves.
 * Units    densities, over the clear part of the same negative.
 * Holds    a base that spreads light evenly; air between the sheets; n = 1.5.
 * Error    the texture of the base is multiplied in and not counted here.
 *
 * @throws {OutOfDomain} negative, outOfRange, notFinite
 * @source none: the optics of williams-clapper-1953 lit from behind (by hand)
 * @example printingDensity({ layerDensity: 0.1, baseReflectance: 0.940538 }) // 0.3649045
 */
export function printingDensity({ layerDensity, baseReflectance }: PrintingDensityInput): number {
  requireNotNegative({ layerDensity, baseReflectance });
  requireWithin({ baseReflectance }, { least: 0, most: 1 });
  const optics = opticsOf(1.5);
  const leaving = leavingOf(layerDensity, optics) / (1 - baseReflectance * returnOf(layerDensity, optics).factor);
  const clear = leavingOf(0, optics) / (1 - baseReflectance * optics.internalDiffuse);
  return Math.log10(clear / leaving);
}
