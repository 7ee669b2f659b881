import type { PlanAnswer, PlanInput } from "./planTypes.ts";
import { planWithFacts } from "./planWithFacts.ts";

/**
 * From readings to a cap time: the ledger line by line, how sure it is, and how to give it by hand.
 *
 * Formula  log2 t = reading + place + 2 log2(N/N_r) + 2 log2(1 + m/P) + log2(S_r/EI) − log2(T/0.90) + filters − A, then the long
 *          exposure on that sum; doubts in quadrature; nine in ten lie within t · 2^(±1.645 sd).
 * Units    times in s, lengths in mm, lines in stops (+ is more time), exposures in lx·s; see `PlanInput` and `PlanAnswer`.
 * Holds    what is not given stands in `planDefaults`. An index with `foundWith` already holds that light, lens and meter, and
 *          only a change from them is charged. EV100 of the ground: log2(N²/t) − log2(S/100), ev − log2(S/100), log2(100 L/K) …
 * Error    each line has its own; a guessed exposure index (0.7 stop) outweighs all others until a step test.
 *
 * @throws {OutOfDomain} noReadings, unknownArea, mixedIncidentAndReflected, focusNotForPinhole, lampHasNoLightForThisPaper,
 *   transmissionOutOfRange, exponentOutOfRange, tableNotRising, extensionShorterThanFocalLength, subjectInsideFocalLength,
 *   closerThanFourFocalLengths, travelNegative, twoOfOne, missingKey, unknownWord, cctOutOfRange, outOfRange and the general checks
 * @source apex: factors as sums of stops (second hand); iso-2720: K, C (second hand); greivenkamp-2004, p. 29 (second hand); iso-12232: T 0.90, q 0.65 (second hand); reciprocity-article (second hand); none: starting doubts (common practice)
 * @example plan({ lens: { focalLengthMm: 240, fNumber: 8 }, paper: { exposureIndex: 6 }, readings: [{ ev100: 8 }] }).timeS // 4.1666667, in s
 */
export function plan(input: PlanInput): PlanAnswer {
  const answer = planWithFacts(input);
  return { ...answer, ledger: answer.ledger.map(({ line, stops, ground }) => ({ line, stops, ground })) };
}
