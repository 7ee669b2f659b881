import { requirePositive } from "../errors/require.ts";

export interface HyperfocalDistanceInput {
  readonly focalLengthMm: number;
  readonly fNumber: number;
  readonly confusionMm: number;
}

/**
 * The nearest distance to focus on so that the horizon is still sharp enough.
 *
 * Formula  u_H = f² / (N c) + f
 * Units    f, c, u_H in mm; N has none.
 * Holds    u_H from the front principal plane; the near limit is then half of it (P = 1).
 * Error    many tables leave out the last f: at f/16 and 0.1 mm with 210 mm that is 0.8 %.
 *
 * @throws {OutOfDomain} notPositive
 * @source none: far limit at infinity, m = N c / f (by hand); jacobson, question 10: far limit for P = 1 (seen)
 * @example hyperfocalDistance({ focalLengthMm: 210, fNumber: 16, confusionMm: 0.1 }) // 27772.5
 */
export function hyperfocalDistance({ focalLengthMm, fNumber, confusionMm }: HyperfocalDistanceInput): number {
  requirePositive({ focalLengthMm, fNumber, confusionMm });
  return focalLengthMm ** 2 / (fNumber * confusionMm) + focalLengthMm;
}
