import { requireInteger, requirePositive, requireWithin } from "../errors/require.ts";
import { reciprocityEffectiveTime } from "./reciprocityEffectiveTime.ts";
import { reciprocityTime } from "./reciprocityTime.ts";
import { requireExponent } from "./requireExponent.ts";

export interface StepTestInput {
  /** What the ledger says, long exposure included; it lies in the middle of the test. */
  readonly timeS: number;
  readonly steps?: number;
  readonly stopsApart?: number;
  /** Schwarzschild's exponent of this paper; 1: none. */
  readonly reciprocityExponent?: number;
  readonly reciprocityFromS?: number;
}

export interface StepTestAnswer {
  /** One after the other, a card drawn across the sheet after each. */
  readonly openingsS: readonly number[];
  /** What each strip has had in the end. */
  readonly totalsS: readonly number[];
  /** Each strip against `timeS`, as exposure. */
  readonly stops: readonly number[];
  /** The openings in whole ticks, at least one, each chosen so that the total so far comes nearest. */
  readonly counts: readonly number[];
  /** Each strip against `timeS` when it is given to these ticks. */
  readonly countedStops: readonly number[];
}

/**
 * The openings of a step test: one sheet, a card drawn across it, several times.
 *
 * Formula  strip k of n has the exposure of t times 2^(d (k − (n − 1)/2)): its effective time is t_e of `reciprocityEffectiveTime`
 *          times that, and its time the inverse; each opening is the difference from the strip before.
 * Units    times in s, d (stopsApart) in stops.
 * Holds    an even board that fills the frame; with an even n the ledger's time lies between the two middle strips. Dark gaps repair
 *          nothing: the paper sees the strip's openings as one.
 * Error    whole ticks: `countedStops` says what the strips then really have; a paper that tires adds its intermittency.
 *
 * @throws {OutOfDomain} notPositive, wrongType, outOfRange, exponentOutOfRange
 * @source reciprocity-article: Schwarzschild's law E t^p (second hand); none: a geometric series, as step tests are made (common practice)
 * @example stepTest({ timeS: 12 }).totalsS // [3, 6, 12, 24, 48]
 */
export function stepTest({
  timeS,
  steps = 5,
  stopsApart = 1,
  reciprocityExponent = 1,
  reciprocityFromS = 1,
}: StepTestInput): StepTestAnswer {
  requirePositive({ timeS });
  requireInteger({ steps });
  requireWithin({ steps }, { least: 2, most: 21 });
  requirePositive({ stopsApart });
  requireExponent(reciprocityExponent);
  requirePositive({ reciprocityFromS });
  const law = { exponent: reciprocityExponent, fromS: reciprocityFromS };
  const middleS = reciprocityEffectiveTime({ timeS, ...law });
  const stops = Array.from({ length: steps }, (_, step) => stopsApart * (step - (steps - 1) / 2));
  const totalsS = stops.map((step) => reciprocityTime({ meteredTimeS: middleS * 2 ** step, ...law }));
  const counts: number[] = [];
  let counted = 0;
  const countedStops = totalsS.map((totalS) => {
    const count = Math.max(1, Math.round(totalS - counted));
    counts.push(count);
    counted += count;
    return Math.log2(reciprocityEffectiveTime({ timeS: counted, ...law }) / middleS);
  });
  return {
    openingsS: totalsS.map((totalS, step) => totalS - (totalsS[step - 1] ?? 0)),
    totalsS,
    stops,
    counts,
    countedStops,
  };
}
