import { requireNotNegative, requirePositive } from "../errors/require.ts";

export interface DensityStandardErrorInput {
  readonly reflectance: number;
  readonly reflectanceSd: number;
}

/**
 * The standard error of a density, from that of its reflectance.
 *
 * Formula  SE_D = SE_R / (ln 10 · R).
 * Units    reflectance 0 to 1; density.
 * Holds    while SE_R is small against R: below a tenth of it.
 * Error    at SE_R = R / 10 it is 0.5 % short.
 *
 * @throws {OutOfDomain} notPositive, negative, notFinite
 * @source none: first-order propagation of D = −log10 R
 * @example densityStandardError({ reflectance: 0.1, reflectanceSd: 0.0005 }) // 0.0021714724
 */
export function densityStandardError({ reflectance, reflectanceSd }: DensityStandardErrorInput): number {
  requirePositive({ reflectance });
  requireNotNegative({ reflectanceSd });
  return reflectanceSd / (Math.LN10 * reflectance);
}
