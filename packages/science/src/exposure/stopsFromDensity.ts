import { requireNotNegative } from "../errors/require.ts";

export interface StopsFromDensityInput {
  readonly density: number;
}

/**
 * What a neutral filter of a given density costs.
 *
 * Formula  stops = D / log10 2 = 3.321928 D
 * Units    D has none (base 10); the answer in stops.
 * Holds    D ≥ 0. “ND 0.9”, “ND 8” and “3 stops” are marks of one and the same filter: read which is meant.
 * Error    taking the density itself for stops loses 2.32 D stops, 2.1 stops with a 0.9.
 *
 * @throws {OutOfDomain} notFinite, negative
 * @source photometry: D = −log10 T (from memory); none: 1 stop = log10 2 (by hand)
 * @example stopsFromDensity({ density: 0.9 }) // 2.9897353, in stops
 */
export function stopsFromDensity({ density }: StopsFromDensityInput): number {
  requireNotNegative({ density });
  return density / Math.log10(2);
}
