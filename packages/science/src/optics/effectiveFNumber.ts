import { requireNotNegative, requirePositive } from "../errors/require.ts";

export interface EffectiveFNumberInput {
  readonly fNumber: number;
  readonly magnification: number;
  readonly pupilRatio?: number;
}

/**
 * The f-number the paper sees once the lens is racked out.
 *
 * Formula  N_e = N (1 + m / P)
 * Units    none; P is exit pupil ÷ entrance pupil.
 * Holds    m ≥ 0, P > 0 (0.3 … 3 is plausible). Not for a pinhole: its v / hole holds the extension already.
 * Error    leaving out P = 0.8 at m = 0.5 is 0.23 stop.
 *
 * @throws {OutOfDomain} notPositive, negative
 * @source greivenkamp-2004, p. 29: N_w = (1 + |m|/P) N (second hand); walree: pupil magnification P (second hand)
 * @example effectiveFNumber({ fNumber: 8, magnification: 0.5 }) // 12
 */
export function effectiveFNumber({ fNumber, magnification, pupilRatio = 1 }: EffectiveFNumberInput): number {
  requirePositive({ fNumber });
  requireNotNegative({ magnification });
  requirePositive({ pupilRatio });
  return fNumber * (1 + magnification / pupilRatio);
}
