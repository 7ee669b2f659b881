import type { PlanByHand } from "./planTypes.ts";
import { shortestTime } from "./shortestTime.ts";

export interface HandOnTheCap {
  readonly biasS: number;
  readonly errorS: number;
  readonly toleranceStops: number;
}

/** How to give a time in one opening, or that it is too short for a cap. Inner helper of `plan`. */
export function byHandOf(timeS: number, { biasS, errorS, toleranceStops }: HandOnTheCap): PlanByHand {
  const shortestS = shortestTime({ errorS, toleranceStops });
  if (timeS < shortestS) return { how: "tooShort", shortestS };
  const countS = countOf(timeS, biasS);
  return { how: "oneOpening", shortestS, countS, countErrorStops: Math.log2((countS + biasS) / timeS) };
}

/** Whole seconds from 2 s up, half seconds below, a half going up; never so few that nothing is given. */
function countOf(timeS: number, biasS: number): number {
  // The time comes out of logarithms: what is a half to nine digits goes up.
  const wantedS = (timeS - biasS) * (1 + 1e-9);
  const stepS = wantedS >= 2 ? 1 : 0.5;
  const nearestS = Math.floor(wantedS / stepS + 0.5) * stepS;
  const leastS = (Math.floor(Math.max(0, -biasS) / stepS) + 1) * stepS;
  return Math.max(nearestS, leastS);
}
