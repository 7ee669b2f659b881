import { requireNotNegative, requirePositive } from "../errors/require.ts";

export interface TimingSdStopsInput {
  readonly timeS: number;
  readonly sdS: number;
}

/**
 * The doubt of a hand-timed exposure, in stops.
 *
 * Formula  sd = σ / (t ln 2)
 * Units    σ (one standard deviation), t in s; the answer in stops.
 * Holds    σ small beside t: at σ = t / 4 the short side is already 15 % worse than this says.
 * Error    in proportion to that of σ.
 *
 * @throws {OutOfDomain} notPositive, negative
 * @source none: first order of log2(1 + e / t) (by hand)
 * @example timingSdStops({ timeS: 6, sdS: 0.3 }) // 0.072134752, in stops
 */
export function timingSdStops({ timeS, sdS }: TimingSdStopsInput): number {
  requirePositive({ timeS });
  requireNotNegative({ sdS });
  return sdS / (timeS * Math.LN2);
}
