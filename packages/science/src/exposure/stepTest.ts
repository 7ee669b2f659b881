import { requireInteger, requirePositive, requireWithin } from "../errors/require.ts";

export interface StepTestInput {
  /** What the ledger says; it lies in the middle of the test. */
  readonly timeS: number;
  readonly steps?: number;
  readonly stopsApart?: number;
}

export interface StepTestAnswer {
  /** One after the other, a card drawn across the sheet after each. */
  readonly openingsS: readonly number[];
  /** What each strip has had in the end. */
  readonly totalsS: readonly number[];
  /** Each strip against `timeS`. */
  readonly stops: readonly number[];
  /** The openings in whole ticks, at least one, each chosen so that the total so far comes nearest. */
  readonly counts: readonly number[];
  /** Each strip against `timeS` when it is given to these ticks. */
  readonly countedStops: readonly number[];
}

/**
 * The openings of a step test: one sheet, a card drawn across it, several times.
 *
 * Formula  strip k of n has t · 2^(d (k − (n − 1)/2)); each opening is the difference from the strip before.
 * Units    times in s, d (stopsApart) in stops.
 * Holds    an even board that fills the frame; with an even n the ledger's time lies between the two middle strips.
 * Error    whole ticks: `countedStops` says what the strips then really have; a paper that tires adds its intermittency.
 *
 * @throws {OutOfDomain} notPositive, wrongType, outOfRange
 * @source none: a geometric series of times, as step tests are made (common practice)
 * @example stepTest({ timeS: 12 }).totalsS // [3, 6, 12, 24, 48]
 */
export function stepTest({ timeS, steps = 5, stopsApart = 1 }: StepTestInput): StepTestAnswer {
  requirePositive({ timeS });
  requireInteger({ steps });
  requireWithin({ steps }, { least: 2, most: 21 });
  requirePositive({ stopsApart });
  const stops = Array.from({ length: steps }, (_, step) => stopsApart * (step - (steps - 1) / 2));
  const totalsS = stops.map((step) => timeS * 2 ** step);
  const counts: number[] = [];
  let counted = 0;
  const countedStops = totalsS.map((totalS) => {
    const count = Math.max(1, Math.round(totalS - counted));
    counts.push(count);
    counted += count;
    return Math.log2(counted / timeS);
  });
  return {
    openingsS: totalsS.map((totalS, step) => totalS - (totalsS[step - 1] ?? 0)),
    totalsS,
    stops,
    counts,
    countedStops,
  };
}
