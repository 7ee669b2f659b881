import { requirePositive } from "../errors/require.ts";

export interface DiffractionCutoffInput {
  readonly effectiveFNumber: number;
  /** 550 for the eye, 450 for blue-sensitive paper. */
  readonly wavelengthNm?: number;
}

/**
 * The finest line pattern that this aperture can pass on at all.
 *
 * Formula  ν0 = 1 / (λ N_e)
 * Units    λ in nm, ν0 in cycles (line pairs) per mm; N_e (racked out, not as marked) has none.
 * Holds    round aperture, no aberration.
 * Error    contrast is gone long before: a third is left at 0.55 ν0.
 *
 * @throws {OutOfDomain} notPositive
 * @source airy: cut-off of a round pupil (from memory); otf-article: highest transmitted frequency (second hand)
 * @example diffractionCutoff({ effectiveFNumber: 32 }) // 56.8181818
 */
export function diffractionCutoff({ effectiveFNumber, wavelengthNm = 550 }: DiffractionCutoffInput): number {
  requirePositive({ effectiveFNumber, wavelengthNm });
  return 1 / (wavelengthNm * 1e-6 * effectiveFNumber);
}
