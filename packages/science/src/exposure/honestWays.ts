import { requirePositive } from "../errors/require.ts";
import { byHandOf } from "./byHandOf.ts";
import { handSd } from "./handSd.ts";
import { openingsEffectiveTime } from "./openingsEffectiveTime.ts";
import { openingsTiming } from "./openingsTiming.ts";
import { checkedHand } from "./planHand.ts";
import type { PlanHand } from "./planTypes.ts";
import { requireExponent } from "./requireExponent.ts";
import { type TimeLeversAnswer, timeLevers } from "./timeLevers.ts";
import { timingErrorStops } from "./timingErrorStops.ts";
import { timingSdStops } from "./timingSdStops.ts";
import { notNegativeAt, positiveAt } from "./valuesAt.ts";

export interface HonestWaysInput {
  readonly timeS: number;
  /** As `plan` takes it, defaults included. */
  readonly hand?: PlanHand;
  /** How long a person's counted second is, once practised; before that one second, good to a twentieth. */
  readonly counted?: { readonly secondS: number; readonly secondSdS: number };
  readonly magnification?: number;
  readonly pupilRatio?: number;
  /** Of the paper; 1 where nobody has tested it. */
  readonly reciprocityExponent?: number;
  readonly reciprocityFromS?: number;
}

export type HonestWay =
  | {
      readonly how: "ticks" | "head";
      /** Whole ticks, or whole counts of one's own. */
      readonly counts: number;
      /** What these come to, with what the hand gives too long. */
      readonly givenS: number;
      readonly errorStops: number;
      readonly sdStops: number;
    }
  | {
      readonly how: "openings";
      readonly openings: number;
      readonly openingS: number;
      /** What to hold so that the hand's bias comes out even. */
      readonly holdS: number;
      readonly sdStops: number;
      /** What the bias would cost if it were not held against. */
      readonly biasStops: number;
      /** How much more the paper may see if every opening starts it afresh; the truth lies between 0 and this. */
      readonly gapStops: number;
    };

export type HonestWaysAnswer =
  | { readonly kind: "ways"; readonly shortestS: number; readonly ways: readonly HonestWay[] }
  | { readonly kind: "tooShort"; readonly shortestS: number; readonly levers: TimeLeversAnswer };

const mostOpenings = 6;
/** Share by which an unpractised counted second may be off (sd). */
const unpractisedSecondSd = 0.05;

/**
 * Every honest way to give a time with the cap, each with what it costs; or what would make the time long enough.
 *
 * Formula  ticks: n = round(t − b), error log2((n + b) / t); in the head n counts of one's own second; n openings of t / n with
 *          √n σ(t / n) / (t ln 2). Below the shortest honest time no way, but `timeLevers`.
 * Units    t, b (bias), σ in s; errors and sds in stops.
 * Holds    openings are offered from two to six, as long as each is not below the shortest honest time. Dark gaps of seconds.
 * Error    before practice the evenness of the hand and a counted second good to 1/20 (sd) are assumptions.
 *
 * @throws {OutOfDomain} notPositive, negative, exponentOutOfRange
 * @source none: the counts (by hand); lewis-miall-2009: evenness of timed intervals (second hand); reciprocity-article: intermittency (second hand); none: starting values (assumption)
 * @example honestWays({ timeS: 12.6 }).kind // "ways"
 */
export function honestWays({
  timeS,
  hand: givenHand,
  counted,
  magnification = 0,
  pupilRatio = 1,
  reciprocityExponent = 1,
  reciprocityFromS = 1,
}: HonestWaysInput): HonestWaysAnswer {
  requirePositive({ timeS });
  const hand = checkedHand(givenHand);
  requireExponent(reciprocityExponent, "reciprocityExponent");
  requirePositive({ reciprocityFromS });
  const secondS = positiveAt(counted?.secondS ?? 1, "counted", "secondS");
  const secondSdS = notNegativeAt(counted?.secondSdS ?? unpractisedSecondSd, "counted", "secondSdS");
  const { how, shortestS } = byHandOf(timeS, hand);
  if (how === "tooShort") {
    const levers = timeLevers({ timeS, minimumTimeS: shortestS, magnification, pupilRatio });
    return { kind: "tooShort", shortestS, levers };
  }
  const ways: HonestWay[] = [oneOpening("ticks", 1, 0), oneOpening("head", secondS, secondSdS / secondS)];
  for (let openings = 2; openings <= mostOpenings && timeS / openings >= shortestS; openings += 1) {
    const way = inOpenings(openings);
    if (way !== undefined) ways.push(way);
  }
  return { kind: "ways", shortestS, ways };

  function oneOpening(by: "ticks" | "head", unitS: number, unitSd: number): HonestWay {
    const least = Math.floor(Math.max(0, -hand.biasS) / unitS) + 1;
    const counts = Math.max(least, Math.floor((timeS - hand.biasS) / unitS + 0.5));
    const givenS = counts * unitS + hand.biasS;
    const sdS = Math.hypot(handSd({ timeS: givenS, ...hand }), unitSd * counts * unitS);
    return {
      how: by,
      counts,
      givenS,
      errorStops: timingErrorStops({ timeS, errorS: givenS - timeS }),
      sdStops: timingSdStops({ timeS: givenS, sdS }),
    };
  }

  function inOpenings(openings: number): HonestWay | undefined {
    const openingS = timeS / openings;
    const holdS = openingS - hand.biasS;
    if (holdS <= 0 || timeS + openings * hand.biasS <= 0) return undefined;
    const openingSdS = handSd({ timeS: openingS, ...hand });
    const worth = { openings, openingTimeS: openingS, exponent: reciprocityExponent, fromS: reciprocityFromS };
    return {
      how: "openings",
      openings,
      openingS,
      holdS,
      ...openingsTiming({ timeS, openings, openingSdS, openingBiasS: hand.biasS }),
      gapStops: Math.log2(
        openingsEffectiveTime({ ...worth, rule: "each" }) / openingsEffectiveTime({ ...worth, rule: "asOne" }),
      ),
    };
  }
}
