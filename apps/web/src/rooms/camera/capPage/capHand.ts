import { practiceOf as practiceIn } from "@captray/notebook/answers";
import type { Hand, Practice } from "@captray/notebook/records";
import { handSd, openingsTiming } from "@captray/science/exposure";
import type { CapPlan, CapStrips, CapWay } from "./capPlan.ts";

/** What is known of the hand in one of its two ways; null before any practice. */
export function practiceOf({ hand, way }: { readonly hand: Hand | undefined; readonly way: CapWay }): Practice | null {
  return practiceIn({ hand, way }) ?? null;
}

/** What a cap page plans by: the ledger's time and this hand's own bias and second. */
export function capPlanOf({
  wantedS,
  way,
  practice,
  strips,
}: {
  readonly wantedS: number;
  readonly way: CapWay;
  readonly practice: Practice | null;
  readonly strips?: CapStrips | undefined;
}): CapPlan {
  const rate = way === "counted" ? (practice?.rate?.value ?? 1) : 1;
  // A practice that says a second is nothing, or that no time is left, is a broken one.
  const biasS = practice?.biasS.value ?? 0;
  const shortestS = strips?.totalsS[0] ?? wantedS;
  return {
    wantedS: strips?.totalsS.at(-1) ?? wantedS,
    way,
    biasS: biasS < shortestS - 0.1 ? biasS : 0,
    rate: rate > 0.1 && rate < 10 ? rate : 1,
    ...(strips && { strips }),
  };
}

/** The scatter of one opening, one standard deviation in s. */
export function openingSdS({
  timeS,
  practice,
}: {
  readonly timeS: number;
  readonly practice: Practice | null;
}): number {
  if (practice === null) return handSd({ timeS });
  const scatterS = handSd({ timeS, motorSdS: practice.motorSdS, weber: practice.weber });
  const rateSdS = practice.rate === undefined ? 0 : (practice.rate.sd * timeS) / Math.max(practice.rate.value, 0.1);
  return Math.hypot(scatterS, practice.biasS.sd, rateSdS);
}

/**
 * The doubt of a time given in these openings, one standard deviation in stops. Openings err independently of each other.
 */
export function openingsSdStops({
  openTimesS,
  practice,
}: {
  readonly openTimesS: readonly number[];
  readonly practice: Practice | null;
}): number {
  const timeS = openTimesS.reduce((sum, one) => sum + one, 0);
  if (!(timeS > 0)) return 0;
  const squares = openTimesS.map((one) => (one > 0 ? openingSdS({ timeS: one, practice }) ** 2 : 0));
  const meanSquare = squares.reduce((sum, one) => sum + one, 0) / openTimesS.length;
  return openingsTiming({ timeS, openings: openTimesS.length, openingSdS: Math.sqrt(meanSquare) }).sdStops;
}
