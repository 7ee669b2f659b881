import { requireNotNegative } from "../errors/require.ts";
import { requireShare } from "./requireShare.ts";

export interface LuminanceOfSurfaceInput {
  readonly illuminanceLx: number;
  readonly reflectance: number;
}

/**
 * How bright a matt surface looks in a given light.
 *
 * Formula  L = ρ · E / π.
 * Units    L in cd/m²; E in lx; ρ has none.
 * Holds    for a surface that scatters evenly (snow, whitewash, tar when dry); 0 ≤ ρ ≤ 1. Not for enamel or wet tar, which mirror.
 * Error    that of ρ: grey card 0.18, fresh snow 0.8 to 0.9, tar 0.04.
 *
 * @throws {OutOfDomain} negative, outOfRange
 * @source photometry: even scattering (from memory)
 * @example luminanceOfSurface({ illuminanceLx: 1000, reflectance: 0.18 }) // 57.29578, in cd/m²
 */
export function luminanceOfSurface({ illuminanceLx, reflectance }: LuminanceOfSurfaceInput): number {
  requireNotNegative({ illuminanceLx });
  requireShare({ reflectance });
  return (reflectance * illuminanceLx) / Math.PI;
}
