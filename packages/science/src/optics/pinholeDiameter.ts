import { requirePositive } from "../errors/require.ts";

export interface PinholeDiameterInput {
  /** From the hole to the paper. */
  readonly extensionMm: number;
  /** 1.9 after Rayleigh, √2 = 1.414 in an earlier note of his; √2.44 = 1.562 makes the hole as wide as its own diffraction disc. */
  readonly constant?: number;
  /** 550 for the eye, 450 for blue-sensitive paper. */
  readonly wavelengthNm?: number;
  /** From the subject to the hole; null for a distant subject. */
  readonly subjectDistanceMm?: number | null;
}

/**
 * The hole that draws sharpest.
 *
 * Formula  d = k √(λ f_e)  with  f_e = v (distant subject) or u v / (u + v)
 * Units    d, v, u in mm; λ in nm; k has none. The f-number is v / d, with no further bellows loss.
 * Holds    thin round hole, middle of the picture.
 * Error    k is a matter of taste between 1.4 and 2; a hole 20 % off is hardly seen but is 0.5 stop.
 *
 * @throws {OutOfDomain} notPositive
 * @source pinhole-pages: 1.9 √(f λ) (second hand); pinhole-pages: √(2.44 λ f) (seen); rayleigh-1891: 2 r² = λ f (second hand)
 * @example pinholeDiameter({ extensionMm: 200 }) // 0.6301587
 */
export function pinholeDiameter({
  extensionMm,
  constant = 1.9,
  wavelengthNm = 550,
  subjectDistanceMm = null,
}: PinholeDiameterInput): number {
  requirePositive({ extensionMm, constant, wavelengthNm });
  if (subjectDistanceMm !== null) requirePositive({ subjectDistanceMm });
  const zoneMm = subjectDistanceMm === null ? extensionMm : 1 / (1 / subjectDistanceMm + 1 / extensionMm);
  const wavelengthMm = wavelengthNm * 1e-6;
  return constant * Math.sqrt(wavelengthMm * zoneMm);
}
