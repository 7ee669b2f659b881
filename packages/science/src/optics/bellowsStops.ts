import { requireNotNegative, requirePositive } from "../errors/require.ts";

export interface BellowsStopsInput {
  readonly magnification: number;
  readonly pupilRatio?: number;
}

/**
 * Light lost to the extension, in stops.
 *
 * Formula  loss = 2 log2(1 + m / P). For P = 1 this is 2 log2(v / f).
 * Units    stops; m, P (exit pupil ÷ entrance pupil) have none.
 * Holds    in air, m ≥ 0, P > 0 (0.3 … 3 is plausible).
 * Error    taking v / f instead of its square as the factor of time gives exactly half the stops.
 *
 * @throws {OutOfDomain} notPositive, negative
 * @source greivenkamp-2004, p. 29: N_w = (1 + |m|/P) N (second hand); army-ss0512: (image/subject + 1)² for P = 1 (seen)
 * @example bellowsStops({ magnification: 0.5 }) // 1.1699250014
 */
export function bellowsStops({ magnification, pupilRatio = 1 }: BellowsStopsInput): number {
  requireNotNegative({ magnification });
  requirePositive({ pupilRatio });
  return 2 * Math.log2(1 + magnification / pupilRatio);
}
