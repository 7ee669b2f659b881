import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requirePositive } from "../errors/require.ts";

export interface TimingErrorStopsInput {
  readonly timeS: number;
  /** What was given too long (+) or too short (−). */
  readonly errorS: number;
}

/**
 * What a slip of the hand costs.
 *
 * Formula  stops = log2((t + e) / t)
 * Units    t, e in s; the answer in stops, + for too much.
 * Holds    t + e > 0.
 * Error    the same slip costs more on the short side: 0.3 s at 1 s is +0.38 or −0.51 stop.
 *
 * @throws {OutOfDomain} notPositive, notFinite, noExposureLeft
 * @source none: a stop is a factor of two of the time (by hand)
 * @example timingErrorStops({ timeS: 2, errorS: 0.3 }) // 0.20163386, in stops
 */
export function timingErrorStops({ timeS, errorS }: TimingErrorStopsInput): number {
  requirePositive({ timeS });
  requireFinite({ errorS });
  if (timeS + errorS <= 0) throw new OutOfDomain("noExposureLeft", { timeS, errorS }, "errorS");
  return Math.log2((timeS + errorS) / timeS);
}
