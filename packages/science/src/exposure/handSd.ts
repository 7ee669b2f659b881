import { requireNotNegative, requirePositive } from "../errors/require.ts";

export interface HandSdInput {
  readonly timeS: number;
  /** The scatter of the movement itself, the same for every time. */
  readonly motorSdS?: number;
  /** The share that grows with the time. */
  readonly weber?: number;
}

/**
 * How evenly a hand keeps a time with the cap.
 *
 * Formula  σ(t) = √(σ_m² + (w t)²)
 * Units    t, σ_m and σ in s; w has none.
 * Holds    0.10 s and 0.05 are a start before any practice (assumption); cap practice measures both and the bias.
 * Error    the share of a person's sd falls slowly with the time, so a constant w is a little pessimistic at long times.
 *
 * @throws {OutOfDomain} notPositive, negative
 * @source lewis-miall-2009: variation of timed intervals (second hand); none: the starting values (assumption)
 * @example handSd({ timeS: 6 }) // 0.31622777, in s
 */
export function handSd({ timeS, motorSdS = 0.1, weber = 0.05 }: HandSdInput): number {
  requirePositive({ timeS });
  requireNotNegative({ motorSdS, weber });
  return Math.hypot(motorSdS, weber * timeS);
}
