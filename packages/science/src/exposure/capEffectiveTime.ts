import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireNotNegative, requirePositive } from "../errors/require.ts";

export interface CapEffectiveTimeInput {
  /** From the start of uncovering to the end of covering. */
  readonly timeS: number;
  readonly uncoverS: number;
  readonly coverS: number;
}

/**
 * What an opening is worth when the cap itself takes time to go and to come.
 *
 * Formula  t_e = t − (a + b) / 2
 * Units    t, a (uncovering), b (covering) in s.
 * Holds    light that rises and falls evenly while the cap moves; the cap near the lens, where it dims the whole picture
 *          alike. A flap held well in front shades sky or foreground instead. With a = b: start to start.
 * Error    half of the misjudged movement: 0.2 s at 2 s is 0.07 stop.
 *
 * @throws {OutOfDomain} notPositive, negative, noExposureLeft
 * @source none: the area under two ramps (by hand)
 * @example capEffectiveTime({ timeS: 2, uncoverS: 0.3, coverS: 0.2 }) // 1.75, in s
 */
export function capEffectiveTime({ timeS, uncoverS, coverS }: CapEffectiveTimeInput): number {
  requirePositive({ timeS });
  requireNotNegative({ uncoverS, coverS });
  const effectiveS = timeS - (uncoverS + coverS) / 2;
  if (effectiveS <= 0) throw new OutOfDomain("noExposureLeft", { timeS, uncoverS, coverS });
  return effectiveS;
}
