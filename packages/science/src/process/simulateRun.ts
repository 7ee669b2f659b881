import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireNotNegative, requirePositive } from "../errors/require.ts";
import type { LaneCue, LaneRefusal } from "./laneTypes.ts";
import type { ProcessRecipe } from "./processTypes.ts";
import { recipeNonsense } from "./recipeNonsense.ts";
import { runLane } from "./runLane.ts";

/** The presses that a run knows whose rounds are counted in its recipe. */
export type SimulatedPress =
  | "next"
  | "late"
  | "repeat"
  | "skip"
  | "pause"
  | "resume"
  | "takeBack"
  | "killed"
  | "restored";

export interface SimulateRunInput {
  /** `override`: a knowing person goes on with what is called nonsense. */
  readonly recipe: ProcessRecipe & { readonly override?: boolean | undefined };
  readonly events: readonly { readonly atS: number; readonly press: SimulatedPress }[];
  readonly waitForMe?: boolean | undefined;
  /** The clock runs until then; until the last event unless said. */
  readonly untilS?: number | undefined;
}

export interface SimulatedStay {
  readonly step: string;
  readonly round: number;
  readonly plannedS: number;
  readonly actualS: number | null;
  readonly bathC: number | null;
  readonly effectiveS: number | null;
  readonly log2Ratio: number | null;
  readonly late: boolean;
  readonly how: "tapped" | "assumed" | "skipped" | null;
}

export interface SimulatedRun {
  readonly record: readonly SimulatedStay[];
  readonly cues: readonly LaneCue[];
  readonly endedAtS: number | null;
  readonly state: "done" | "running" | "paused";
  readonly refused: readonly LaneRefusal[];
}

/** What the contract of a simulated run calls nonsense; doubts are for the rooms to say. */
const refusedCodes: ReadonlySet<string> = new Set([
  "reexposureBeforeBleach",
  "noStopBeforeBleach",
  "whiteLightBeforeStop",
  "whiteLightBeforeFix",
  "noSecondDeveloper",
]);

/**
 * A whole run on a clock that is made up: what was pressed when, and what the record, the cues and the end come to.
 *
 * Method   `runLane` from the first bath on, after the recipe and the order of the events have been looked at.
 * Units    s from the first bath, temperatures in °C.
 * Holds    for sheets that go together; development from 14 to 28 °C.
 *
 * @throws {OutOfDomain} tooFew, tooManySteps, recipeNonsense, temperatureOutOfRange, eventsNotRising, notPositive, negative, outOfRange
 * @source none: the engine of the trays itself (by hand)
 * @example simulateRun({ recipe: { kind: "negative", steps: [{ step: "developer", does: "develop", timeS: 120, bathC: 20.5 }] }, events: [{ atS: 126, press: "next" }] }).record[0].effectiveS // 130.443380
 */
export function simulateRun({ recipe, events, waitForMe = false, untilS }: SimulateRunInput): SimulatedRun {
  requireSteps(recipe);
  if (recipe.override !== true) requireSense(recipe);
  const lastS = requireRising(events);
  if (untilS !== undefined) {
    requireNotNegative({ untilS });
    if (untilS < lastS) throw new OutOfDomain("outOfRange", { untilS, least: lastS });
  }
  const { rows, cues, endedAtS, state, refused } = runLane({ recipe, events, untilS: untilS ?? lastS, waitForMe });
  return {
    record: rows.map(({ step, round, plannedS, actualS, bathC, effectiveS, log2Ratio, late, how }) => {
      return { step, round, plannedS, actualS, bathC, effectiveS, log2Ratio, late, how };
    }),
    cues,
    endedAtS,
    state: state === "waiting" ? "running" : state,
    refused,
  };
}

function requireSteps(recipe: ProcessRecipe): void {
  for (const [index, { timeS, bathC, referenceC = 20, q10 = 2, drainS = 0, repeats = 1 }] of recipe.steps.entries()) {
    const at = `recipe/steps/${index}/`;
    requirePositive({ [`${at}timeS`]: timeS });
    if (bathC !== undefined && !Number.isFinite(bathC)) throw new OutOfDomain("notFinite", { [`${at}bathC`]: bathC });
    if (!Number.isFinite(referenceC)) throw new OutOfDomain("notFinite", { [`${at}referenceC`]: referenceC });
    requirePositive({ [`${at}q10`]: q10 });
    requireNotNegative({ [`${at}drainS`]: drainS });
    requirePositive({ [`${at}repeats`]: repeats });
  }
  const impossible = recipeNonsense({ recipe }).find(({ weight }) => weight === "impossible");
  if (impossible === undefined) return;
  const { code, facts, step } = impossible;
  if (code === "recipeEmpty") throw new OutOfDomain("tooFew", { steps: 0, least: 1 }, "recipe/steps");
  throw new OutOfDomain(code, facts, step === undefined ? "recipe/steps" : `recipe/steps/${step}`);
}

function requireSense(recipe: ProcessRecipe): void {
  for (const { code, step, facts } of recipeNonsense({ recipe })) {
    const at = step === undefined ? "recipe/steps" : `recipe/steps/${step}`;
    if (code === "temperatureOutOfRange") throw new OutOfDomain(code, facts, `${at}/bathC`);
    if (refusedCodes.has(code)) throw new OutOfDomain("recipeNonsense", { finding: code, ...facts }, at);
  }
}

/** The moment of the last event, 0 without one. */
function requireRising(events: SimulateRunInput["events"]): number {
  let lastS = 0;
  for (const [index, { atS }] of events.entries()) {
    const key = `events/${index}/atS`;
    requireNotNegative({ [key]: atS });
    if (atS < lastS) throw new OutOfDomain("eventsNotRising", { atS, beforeS: lastS }, key);
    lastS = atS;
  }
  return lastS;
}
