import { sourceSpectrum } from "./sourceSpectrum.ts";
import { observer, sumOfProducts } from "./spectralGrid.ts";
import type { SourceInput } from "./spectrum.ts";

export type ChromaticityInput = SourceInput;

export interface Chromaticity {
  readonly x: number;
  readonly y: number;
  readonly cctK: number;
}

/**
 * The colour of a light as the eye sees it, and its correlated colour temperature.
 *
 * Formula  X = Σ S x̄, Y = Σ S ȳ, Z = Σ S z̄;  x = X / (X + Y + Z), y = Y / (X + Y + Z);
 *          T = 449 n³ + 3525 n² + 6823.3 n + 5520.33  with  n = (x − 0.3320) / (0.1858 − y).
 * Units    x and y have none; T in K; summed from 350 to 780 nm in steps of 10 nm.
 * Holds    for T from about 2000 to 12 500 K; outside, x and y hold and T strays.
 * Error    T within a few K of the definition near 6500 K. Two lights of one T can differ by stops on blue-sensitive paper.
 *
 * @throws {OutOfDomain} unknownWord, cctOutOfRange
 * @source cie-15: 1931 observer (seen); none: cubic for the temperature (from memory)
 * @example chromaticity({ source: "illuminantA" }).cctK // 2857.4973
 */
export function chromaticity({ source }: ChromaticityInput): Chromaticity {
  const light = sourceSpectrum(source, "source");
  const sums = [observer.x, observer.y, observer.z].map((curve) => sumOfProducts(light, curve));
  const [sumX = 0, sumY = 0, sumZ = 0] = sums;
  const total = sumX + sumY + sumZ;
  const x = sumX / total;
  const y = sumY / total;
  const n = (x - 0.332) / (0.1858 - y);
  return { x, y, cctK: 449 * n ** 3 + 3525 * n ** 2 + 6823.3 * n + 5520.33 };
}
