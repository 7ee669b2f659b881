import { requirePositive } from "../errors/require.ts";

export interface ShortestTimeInput {
  /** How far a hand may be out. */
  readonly errorS: number;
  readonly toleranceStops: number;
}

/**
 * The shortest time a cap can honestly give.
 *
 * Formula  t_min = e / (1 − 2^(−s)): there e too little costs just s stops.
 * Units    e in s, s in stops; the answer in s.
 * Holds    for the short side, which is the worse one.
 * Error    in proportion to that of e: practice with the cap pays here.
 *
 * @throws {OutOfDomain} notPositive
 * @source none: log2((t − e) / t) = −s solved for t (by hand)
 * @example shortestTime({ errorS: 0.3, toleranceStops: 0.5 }) // 1.0242641, in s
 */
export function shortestTime({ errorS, toleranceStops }: ShortestTimeInput): number {
  requirePositive({ errorS, toleranceStops });
  return -errorS / Math.expm1(-toleranceStops * Math.LN2);
}
