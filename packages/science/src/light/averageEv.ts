import { requireReadings } from "./requireReadings.ts";

export interface EvsInput {
  /** Readings of one kind, all reflected or all incident. */
  readonly evs: readonly number[];
}

export type AverageEvInput = EvsInput;

/**
 * The middle of several readings, counted in stops.
 *
 * Formula  EV = (EV₁ + … + EVₙ) / n, the geometric mean of the luminances.
 * Units    EV in stops.
 * Holds    for readings of one kind: convert incident ones first, and say so. Never above `averageEvOfLuminances`.
 * Error    the sd of one reading / √n.
 *
 * @throws {OutOfDomain} noReadings, notFinite
 * @source none: mean of logarithms (common practice)
 * @example averageEv({ evs: [9, 11, 12.5] }) // 10.833333
 */
export function averageEv({ evs }: AverageEvInput): number {
  requireReadings({ evs });
  return evs.reduce((sum, ev) => sum + ev, 0) / evs.length;
}
