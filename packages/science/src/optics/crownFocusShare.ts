import { requireWithin } from "../errors/require.ts";

export interface CrownFocusShareInput {
  /** The middle of what the paper sees. */
  readonly paperNm?: number;
  readonly eyeNm?: number;
}

/**
 * By what share of its focal length an uncorrected lens of common crown glass focuses shorter for the paper than for
 * the eye.
 *
 * Formula  δ = 1 − (n(eye) − 1) / (n(paper) − 1)  with  n² = 1 + Σ B λ² / (λ² − C), λ in µm
 * Units    wavelengths in nm; δ has none (0.018: 18 mm in a metre). Below 0 if the paper sees redder than the eye.
 * Holds    310 … 2325 nm; one borosilicate crown (n_d 1.5168, V_d 64.17); a single lens, f ∝ 1 / (n − 1).
 * Error    an older crown of V 58 has about a tenth more; 415 … 440 nm moves δ by ±0.0025.
 *
 * @throws {OutOfDomain} outOfRange
 * @source crown-dispersion: constants B and C (seen); none: f goes with 1/(n − 1) (by hand)
 * @example crownFocusShare({ paperNm: 425, eyeNm: 555 }) // 0.0180978961
 */
export function crownFocusShare({ paperNm = 425, eyeNm = 555 }: CrownFocusShareInput = {}): number {
  requireWithin({ paperNm, eyeNm }, { least: 310, most: 2325 });
  return 1 - (crownIndex(eyeNm) - 1) / (crownIndex(paperNm) - 1);
}

const crownTerms = [
  { b: 1.03961212, c: 0.00600069867 },
  { b: 0.231792344, c: 0.0200179144 },
  { b: 1.01046945, c: 103.560653 },
] as const;

function crownIndex(wavelengthNm: number): number {
  const squareUm = (wavelengthNm / 1000) ** 2;
  return Math.sqrt(crownTerms.reduce((sum, { b, c }) => sum + (b * squareUm) / (squareUm - c), 1));
}
