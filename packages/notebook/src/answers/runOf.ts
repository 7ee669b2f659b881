import {
  type BathReading,
  type LaneClash,
  type LaneEvent,
  type LaneMove,
  type LanePress,
  type LaneState,
  type ProcessRecipe,
  recipeNonsense,
  runLanes,
} from "@captray/science/process";
import type { Json, RecipeStep, Run } from "../records/index.ts";
import { processRecipeFrom } from "./processRecipeFrom.ts";

type RecordedLane = Run["lanes"][number];

/** One lane of a run: who goes in it, by which recipe, and how far it is. */
export interface LaneOfRun {
  readonly id: RecordedLane["id"];
  readonly code: string;
  readonly sheetIds: readonly RecordedLane["id"][];
  readonly pieces: readonly { readonly sheetId: RecordedLane["id"]; readonly letter: string }[];
  readonly recipe: ProcessRecipe;
  /** The steps of the recipe's record as they were that evening, in the same order; empty where they were not kept. */
  readonly steps: readonly RecipeStep[];
  readonly plannedStartS: number | undefined;
  readonly state: LaneState;
}

/** The program was gone; the run went on by the clock of the wall. */
export interface RunGap {
  readonly fromS: number;
  readonly toS: number;
  /** What is taken to have happened meanwhile, each at the end of its time. */
  readonly passed: readonly {
    readonly laneId: string;
    readonly code: string;
    readonly out: string;
    readonly into: string | null;
    readonly atS: number;
  }[];
}

export interface RunGoingOn {
  readonly kind: "run";
  readonly nowS: number;
  readonly lanes: readonly LaneOfRun[];
  /** The one next move, which a press belongs to; null once every lane is through. */
  readonly next: LaneMove | null;
  readonly moves: readonly LaneMove[];
  readonly clashes: readonly LaneClash[];
  readonly notYetWhite: readonly string[];
  readonly leaveWashTogether: readonly (readonly string[])[];
  readonly gaps: readonly RunGap[];
}

export type RunOf =
  | RunGoingOn
  /** What is kept of its recipe cannot be run; the presses are all there. */
  | { readonly kind: "unreadable"; readonly laneId: string | undefined };

export interface RunOfInput {
  readonly run: Run;
  /** The clock of the run. */
  readonly sinceStartMs: number;
}

/**
 * The state of a run at a moment, from its record alone: whoever asks, and however often the program was gone, it is the same.
 *
 * Events count in the order in which they were written; one that bears an earlier second than the one before it, from a clock that was
 * put back, counts as said at that one's.
 */
export function runOf({ run, sinceStartMs }: RunOfInput): RunOf {
  const lanes: (Omit<LaneOfRun, "state"> & {
    readonly events: readonly LaneEvent[];
    readonly readings: readonly BathReading[];
  })[] = [];
  for (const lane of run.lanes) {
    const recipe = processRecipeFrom(lane.recipe ?? run.recipe);
    const broken = recipe === undefined || recipeNonsense({ recipe }).some(({ weight }) => weight === "impossible");
    if (broken) return { kind: "unreadable", laneId: lane.id };
    const steps = stepsFrom(lane.recipe === undefined ? run.recipeThen : lane.recipeThen);
    lanes.push({
      id: lane.id,
      code: lane.code ?? "",
      sheetIds: lane.sheetIds ?? [],
      pieces: lane.pieces ?? [],
      recipe,
      steps,
      plannedStartS: lane.plannedStartS,
      events: eventsOf(run, lane.id),
      readings: readingsOf(run, steps, recipe),
    });
  }
  const nowS = Math.max(sinceStartMs / 1000, ...lanes.map(({ events }) => events.at(-1)?.atS ?? 0));
  const { lanes: states, ...all } = runLanes({
    lanes,
    nowS,
    waitForMe: run.waitForMe,
    ...(run.handS !== undefined && { handS: run.handS }),
  });
  const whole = lanes.map(({ events: _, readings: __, ...lane }, index): LaneOfRun => {
    return { ...lane, state: (states[index] as (typeof states)[number]).lane };
  });
  return { kind: "run", nowS, lanes: whole, ...all, gaps: gapsOf(run, whole) };
}

/** What was said to a lane, or to all of them, on a clock that never falls. */
function eventsOf(run: Run, laneId: string): readonly LaneEvent[] {
  let atS = 0;
  const events: LaneEvent[] = [];
  for (const { event } of run.events) {
    if (event === undefined) continue;
    atS = Math.max(atS, event.sinceStartMs / 1000);
    if (event.laneId !== undefined && event.laneId !== laneId) continue;
    // Said to every lane, a start is meant for none.
    if (event.laneId === undefined && event.press === "start") continue;
    events.push({ atS, press: event.press satisfies LanePress, note: event.note });
  }
  return events;
}

/** A thermometer read in a bath counts for every step that is done in it and whose time follows the temperature. */
function readingsOf(run: Run, steps: readonly RecipeStep[], recipe: ProcessRecipe): readonly BathReading[] {
  return run.readings.flatMap(({ reading }) => {
    if (reading === undefined) return [];
    const { bath, bathC, sinceStartMs } = reading;
    return recipe.steps.flatMap(({ bathC: follows }, step): BathReading[] => {
      if (follows === undefined || steps[step]?.bath !== bath) return [];
      return [{ atS: sinceStartMs / 1000, step, bathC, airC: run.airC, timeConstantS: run.bathTimeConstantS }];
    });
  });
}

function stepsFrom(kept: Json | undefined): readonly RecipeStep[] {
  if (typeof kept !== "object" || kept === null || Array.isArray(kept)) return [];
  const { steps } = kept as { readonly steps?: Json };
  return Array.isArray(steps) ? (steps as unknown as readonly RecipeStep[]) : [];
}

function gapsOf(run: Run, lanes: readonly LaneOfRun[]): readonly RunGap[] {
  const gaps: RunGap[] = [];
  let goneS: number | undefined;
  let atS = 0;
  for (const { event } of run.events) {
    if (event === undefined) continue;
    atS = Math.max(atS, event.sinceStartMs / 1000);
    if (event.press === "killed") goneS ??= atS;
    if (event.press !== "restored" || goneS === undefined) continue;
    const [fromS, toS] = [goneS, atS];
    goneS = undefined;
    const passed = lanes.flatMap(({ id, code, state }) =>
      state.rows.flatMap(({ step, startS, actualS, how }, index) => {
        const endS = startS + (actualS ?? 0);
        if (how !== "assumed" || !(endS > fromS && endS <= toS)) return [];
        const into = state.rows.slice(index + 1).find((row) => row.how !== "skipped")?.step ?? null;
        return [{ laneId: id, code, out: step, into, atS: endS }];
      }),
    );
    gaps.push({ fromS, toS, passed: passed.sort((a, b) => a.atS - b.atS) });
  }
  return gaps;
}
