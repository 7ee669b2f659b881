import { requirePositive } from "../errors/require.ts";

export interface AiryDiameterUmInput {
  readonly effectiveFNumber: number;
  /** 550 for the eye, 450 for blue-sensitive paper. */
  readonly wavelengthNm?: number;
}

/**
 * Width of the disc that diffraction makes of a point, to its first dark ring.
 *
 * Formula  d = 2 (j / π) λ N_e = 2.439 λ N_e, j = 3.8317 the first zero of J1
 * Units    λ in nm, d in µm; N_e (racked out, not as marked) has none.
 * Holds    round aperture, no aberration, cone of small angle (N_e > 2).
 * Error    below 1 % for N_e > 4.
 *
 * @throws {OutOfDomain} notPositive
 * @source airy: first zero of the diffraction pattern (from memory); pinhole-pages: 2.44 λ f / d (seen)
 * @example airyDiameterUm({ effectiveFNumber: 32 }) // 42.9323802
 */
export function airyDiameterUm({ effectiveFNumber, wavelengthNm = 550 }: AiryDiameterUmInput): number {
  requirePositive({ effectiveFNumber, wavelengthNm });
  return ((2 * firstZeroOfJ1) / Math.PI) * (wavelengthNm / 1000) * effectiveFNumber;
}

const firstZeroOfJ1 = 3.8317059702075125;
