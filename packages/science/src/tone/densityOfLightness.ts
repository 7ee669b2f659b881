import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requirePositive } from "../errors/require.ts";

export interface DensityOfLightnessInput {
  /** Above 0, at most 100. */
  readonly lightness: number;
}

/**
 * The density of a tone that looks so light.
 *
 * Formula  L* > 8: Y = ((L* + 16) / 116)³, else Y = (3/29)³ L*; D = −log10 Y.
 * Units    L* has none; D density against the perfect diffuser.
 * Holds    0 < L* ≤ 100; the inverse of `lightness`.
 * Error    1 in L* is 0.03 in D at L* 50.
 *
 * @throws {OutOfDomain} outOfRange, notPositive, notFinite
 * @source cie-15: L* (second hand)
 * @example densityOfLightness({ lightness: 50 }) // 0.734742161
 */
export function densityOfLightness({ lightness }: DensityOfLightnessInput): number {
  requirePositive({ lightness });
  if (lightness > 100) throw new OutOfDomain("outOfRange", { lightness, most: 100 });
  if (lightness > 8) return 0 - 3 * Math.log10((lightness + 16) / 116);
  return -Math.log10((3 / 29) ** 3 * lightness);
}
