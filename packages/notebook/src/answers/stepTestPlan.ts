import type { OutOfDomain } from "@captray/science/errors";
import { handSd, stepTest, timingSdStops } from "@captray/science/exposure";
import type { Kit } from "./kit.ts";
import { paperLawOf } from "./paperLawOf.ts";
import { planHandOf } from "./planHandOf.ts";
import type { MissingPart } from "./planInputOf.ts";
import { planOf } from "./planOf.ts";

/** How the strips are given: the cap on between them, or the card moved on while it is off. */
export type StepManner = "openings" | "cardMoved";

export interface StepStrip {
  /** The ticks of this opening, or until the card is moved. */
  readonly countS: number;
  /** What the strip has had in the end. */
  readonly totalS: number;
  /** Against the advised time, as given to whole ticks. */
  readonly stops: number;
  /** The doubt of the hand, one standard deviation. */
  readonly sdStops: number;
}

export type StepTestPlan =
  | {
      readonly kind: "plan";
      /** What the ledger says, in the middle of the test. */
      readonly timeS: number;
      /** Its doubt, one standard deviation. */
      readonly sdStops: number;
      /** The least exposure first. */
      readonly strips: readonly StepStrip[];
      /** So short that whole ticks or the hand put a strip a third of a stop out. */
      readonly tooShort: boolean;
    }
  | { readonly kind: "missing"; readonly missing: readonly MissingPart[] }
  | { readonly kind: "refused"; readonly fault: OutOfDomain };

const atMostOutStops = 1 / 3;

/** A step test around the advised time of a scene: openings in whole ticks, what each strip gets, and how sure the hand is of it. */
export function stepTestPlan({
  kit,
  steps,
  stopsApart,
  manner,
}: {
  readonly kit: Kit;
  readonly steps: number;
  readonly stopsApart: number;
  readonly manner: StepManner;
}): StepTestPlan {
  const plan = planOf(kit);
  if (plan.kind !== "plan") return plan;
  const { timeS, timeStops } = plan.answer;
  const { counts, countedStops, stops } = stepTest({ timeS, steps, stopsApart, ...paperLawOf({ kit }) });
  const hand = planHandOf({ hand: kit.hand });
  const scatterS = (openS: number) =>
    handSd({
      timeS: openS,
      ...(hand?.motorSdS !== undefined && { motorSdS: hand.motorSdS }),
      ...(hand?.weber !== undefined && { weber: hand.weber }),
    });
  let totalS = 0;
  let openingsSd = 0;
  const strips = counts.map((countS, strip): StepStrip => {
    totalS += countS;
    openingsSd = Math.hypot(openingsSd, scatterS(countS));
    const sdS = manner === "openings" ? openingsSd : scatterS(totalS);
    return { countS, totalS, stops: countedStops[strip] ?? 0, sdStops: timingSdStops({ timeS: totalS, sdS }) };
  });
  const tooShort = strips.some(
    (strip, place) =>
      Math.abs(strip.stops - (stops[place] ?? 0)) > atMostOutStops || 1.645 * strip.sdStops > atMostOutStops,
  );
  return { kind: "plan", timeS, sdStops: timeStops.sd, strips, tooShort };
}
