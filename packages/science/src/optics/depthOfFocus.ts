import { requireNotNegative, requirePositive } from "../errors/require.ts";

export interface DepthOfFocusInput {
  readonly fNumber: number;
  readonly magnification: number;
  readonly confusionMm: number;
  readonly pupilRatio?: number;
}

/**
 * How far the paper may stand off its place, front to back in all: bulging sheets, loose holders.
 *
 * Formula  2 c N (1 + m / P)
 * Units    c and the result in mm; N, m, P (exit pupil ÷ entrance pupil) have none.
 * Holds    m ≥ 0, thin pupils.
 * Error    exact for this geometry; half of it lies on either side.
 *
 * @throws {OutOfDomain} notPositive, negative
 * @source none: the cone of N_e cut at width c (by hand); greivenkamp-2004, p. 29: N_w = (1 + |m|/P) N (second hand)
 * @example depthOfFocus({ fNumber: 8, magnification: 0.25, confusionMm: 0.1 }) // 2
 */
export function depthOfFocus({ fNumber, magnification, confusionMm, pupilRatio = 1 }: DepthOfFocusInput): number {
  requirePositive({ fNumber });
  requireNotNegative({ magnification });
  requirePositive({ confusionMm, pupilRatio });
  return 2 * confusionMm * fNumber * (1 + magnification / pupilRatio);
}
