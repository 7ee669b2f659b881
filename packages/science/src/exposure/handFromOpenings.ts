import { requirePositive } from "../errors/require.ts";
import { chiSquared } from "../numbers/chiSquared.ts";
import { studentT } from "../numbers/studentT.ts";
import { handSd } from "./handSd.ts";
import { planDefaults } from "./planDefaults.ts";

export interface HandFromOpeningsInput {
  /** What the hand went for (ticks, or counts of its own), and what the watch said. */
  readonly openings: readonly { readonly wantedS: number; readonly givenS: number }[];
  /** Counted in the head: the hand has a second of its own, which is found too. */
  readonly counted?: boolean;
}

export interface HandFromOpeningsAnswer {
  /** What an opening is given too long (+). 1.645 sd is nine in ten, as everywhere. */
  readonly biasS: { readonly value: number; readonly sd: number };
  /** Seconds of the watch in one counted second; 1 ± 0 to the ticks. */
  readonly rate: { readonly value: number; readonly sd: number };
  /** The scatter of the next opening, as `handSd` takes it. */
  readonly motorSdS: number;
  readonly weber: number;
  /** How uneven this hand is beside one before practice (1), and between what it lies, nine in ten. */
  readonly unevenness: { readonly value: number; readonly least: number; readonly most: number };
}

/** What is believed of a hand before its first opening: out by 0.2 s and by a tenth of the time, evenness as four openings tell. */
const start = { biasSdS: 0.2, rateSd: 0.1, openingsWorth: 4 } as const;

const nineInTen = 1.6448536269514722;

/**
 * What some openings of the cap say of a hand: its bias, its own second, its evenness, each with its doubt.
 *
 * Formula  given = rate · wanted + bias + e, e of sd u σ(wanted), σ as before practice; normal–inverse-χ² around the start;
 *          bias and rate lie on Student's t, u² on ν s²/χ², ν = 4 + n; the next opening's scatter is s t(0.95, ν)/1.645
 * Units    times in s; rate, weber and u (unevenness) have none.
 * Holds    openings that err independently; motor share and Weber share keep their proportion, one factor moves both.
 * Error    few openings are drawn toward the start: half of the way at four. Bias and rate are doubted together (negatively), and
 *          who adds both doubts in quadrature is a little too careful.
 *
 * @throws {OutOfDomain} notPositive
 * @source bayes-regression: conjugate regression with unknown variance (from memory); none: the start (assumption)
 * @example handFromOpenings({ openings: [{ wantedS: 4, givenS: 4.3 }] }).biasS.value // 0.13333333, drawn toward 0
 */
export function handFromOpenings({ openings, counted = false }: HandFromOpeningsInput): HandFromOpeningsAnswer {
  // Sums of the weighted regression about the start, bias first: error = bias + (rate − 1) wanted.
  let [biasBias, biasRate, rateRate] = [start.biasSdS ** -2, 0, start.rateSd ** -2];
  let [biasError, rateError, squares] = [0, 0, 0];
  for (const { wantedS, givenS } of openings) {
    requirePositive({ wantedS });
    requirePositive({ givenS });
    const weight = handSd({ timeS: wantedS }) ** -2;
    const errorS = givenS - wantedS;
    biasBias += weight;
    biasError += weight * errorS;
    squares += weight * errorS ** 2;
    if (!counted) continue;
    biasRate += weight * wantedS;
    rateRate += weight * wantedS ** 2;
    rateError += weight * wantedS * errorS;
  }
  const determinant = biasBias * rateRate - biasRate ** 2;
  const bias = (rateRate * biasError - biasRate * rateError) / determinant;
  const slower = (biasBias * rateError - biasRate * biasError) / determinant;
  const degrees = start.openingsWorth + openings.length;
  // What the line leaves over; rounding must not make it less than nothing.
  const left = Math.max(0, squares - bias * biasError - slower * rateError);
  const scale = Math.sqrt((start.openingsWorth + left) / degrees);
  // Student's t is wider than the normal doubt that a ± is made of.
  const widened = (scale * studentT(0.95, degrees)) / nineInTen;
  return {
    biasS: { value: bias, sd: widened * Math.sqrt(rateRate / determinant) },
    rate: counted ? { value: 1 + slower, sd: widened * Math.sqrt(biasBias / determinant) } : { value: 1, sd: 0 },
    motorSdS: widened * planDefaults.hand.motorSdS,
    weber: widened * planDefaults.hand.weber,
    unevenness: {
      value: scale,
      least: scale * Math.sqrt(degrees / chiSquared(0.95, degrees)),
      most: scale * Math.sqrt(degrees / chiSquared(0.05, degrees)),
    },
  };
}
