import { requireNotNegative, requirePositive } from "../errors/require.ts";
import { diffractionCutoff } from "./diffractionCutoff.ts";

export interface DiffractionMtfInput {
  readonly frequencyPerMm: number;
  readonly effectiveFNumber: number;
  /** 550 for the eye, 450 for blue-sensitive paper. */
  readonly wavelengthNm?: number;
}

/**
 * How much contrast diffraction leaves in a line pattern on the paper.
 *
 * Formula  MTF = (2/π) (arccos s − s √(1 − s²)),  s = ν λ N_e;  0 from s = 1 on
 * Units    ν in cycles per mm on the paper, λ in nm; N_e and MTF (0 … 1) have none.
 * Holds    round aperture, no aberration: a best case.
 * Error    a real old lens is worse than this at every stop above its sharpest.
 *
 * @throws {OutOfDomain} notPositive, negative
 * @source otf-article: (2/π)(arccos ν − ν √(1 − ν²)) of a round pupil (second hand)
 * @example diffractionMtf({ frequencyPerMm: 10, effectiveFNumber: 32 }) // 0.7770721787
 */
export function diffractionMtf({ frequencyPerMm, effectiveFNumber, wavelengthNm = 550 }: DiffractionMtfInput): number {
  requireNotNegative({ frequencyPerMm });
  requirePositive({ effectiveFNumber, wavelengthNm });
  const s = frequencyPerMm / diffractionCutoff({ effectiveFNumber, wavelengthNm });
  if (s >= 1) return 0;
  return (2 / Math.PI) * (Math.acos(s) - s * Math.sqrt((1 - s) * (1 + s)));
}
