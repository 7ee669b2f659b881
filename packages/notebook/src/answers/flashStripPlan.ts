import { OutOfDomain } from "@captray/science/errors";
import { flashThreshold, type PlanFlashStrip, planFlashStrip } from "@captray/science/tone";
import type { FlashLamp, Test } from "../records/index.ts";
import { type FlashPaper, flashPaperOf } from "./flashPaperOf.ts";
import { flashStripAnswer } from "./flashStripAnswer.ts";
import type { FindsRecords } from "./kitOf.ts";

export type FlashStripPlan =
  | (PlanFlashStrip & {
      readonly kind: "plan";
      /** What the lamp is thought to give, and why. */
      readonly rateLx: number;
      readonly basis: "nothing" | "meter" | "strip" | "boundOfStrip";
    })
  | { readonly kind: "refused"; readonly fault: OutOfDomain };

/** Assumed of a lamp that was set so that a hand can time it; a factor of five either way. */
const unknown = { rateLx: 0.1, rateSdLn: 1, basis: "nothing" } as const;
/** A meter at the end of its range, and what this paper makes of the lamp's colour: assumed. */
const meterSdLn = 0.7;
/** Where a strip only gave a bound, the next one is looked for three times beyond it. */
const beyondBound = 3;

/**
 * The seconds of a flash strip before any is given: from the paper's curve and from what is known of the lamp.
 *
 * Best known is a former strip of the same set-up, then what a meter at the paper says, then nothing.
 */
export function flashStripPlan({
  notebook,
  paper,
  flashLamp,
  strips = [],
  steps,
}: {
  readonly notebook: FindsRecords;
  readonly paper: FlashPaper;
  readonly flashLamp: FlashLamp | undefined;
  /** Former strips, oldest first. */
  readonly strips?: readonly Test[];
  readonly steps?: number | undefined;
}): FlashStripPlan {
  try {
    const { exposureLxS: thresholdLxS, sdLn: thresholdSdLn } = flashThreshold(flashPaperOf(notebook, paper));
    const guess = guessOf(notebook, flashLamp, strips);
    const plan = planFlashStrip({
      rateLx: guess.rateLx,
      rateSdLn: guess.rateSdLn,
      thresholdLxS,
      thresholdSdLn: guess.basis === "strip" ? 0 : thresholdSdLn,
      ...(steps !== undefined && { steps }),
    });
    return { kind: "plan", ...plan, rateLx: guess.rateLx, basis: guess.basis };
  } catch (fault) {
    if (fault instanceof OutOfDomain) return { kind: "refused", fault };
    throw fault;
  }
}

interface Guess {
  readonly rateLx: number;
  readonly rateSdLn: number;
  readonly basis: "nothing" | "meter" | "strip" | "boundOfStrip";
}

function guessOf(notebook: FindsRecords, lamp: FlashLamp | undefined, strips: readonly Test[]): Guess {
  if (lamp?.rate) return { rateLx: lamp.rate.valueLx, rateSdLn: lamp.rate.sdLn, basis: "strip" };
  const ofLamp = strips.filter((strip) => lamp !== undefined && strip.flashLampId === lamp.id);
  for (const strip of ofLamp.toReversed()) {
    const answer = flashStripAnswer({ notebook, test: strip });
    if (answer.kind === "allShow") {
      return { rateLx: answer.atLeastLx * beyondBound, rateSdLn: meterSdLn, basis: "boundOfStrip" };
    }
    if (answer.kind === "noneShow") {
      return { rateLx: answer.atMostLx / beyondBound, rateSdLn: meterSdLn, basis: "boundOfStrip" };
    }
  }
  if (lamp?.meterLx) return { rateLx: lamp.meterLx.value, rateSdLn: meterSdLn, basis: "meter" };
  return unknown;
}
