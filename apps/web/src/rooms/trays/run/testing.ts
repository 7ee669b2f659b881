/** What the tests of this folder run: a positive in two bleach trays and a negative, lanes at a moment. */
import { processRecipeOf } from "@captray/notebook/answers";
import type { RecipeStep } from "@captray/notebook/records";
import { type LaneEvent, type LanePress, type ProcessRecipe, runLane, runLanes } from "@captray/science/process";
import type { LaneInHand, RunView } from "./runTypes.ts";
import { runView } from "./runView.ts";

function step(
  id: string,
  does: RecipeStep["does"],
  name: string,
  aimS: number,
  more: Partial<RecipeStep> = {},
): RecipeStep {
  return {
    id,
    does,
    name,
    timeS: { min: aimS / 2, aim: aimS, max: aimS * 2 },
    drainS: 10,
    light: "safelight",
    mustLeaveOnTime: false,
    mayWait: false,
    cautions: [],
    ...more,
  };
}

const round = { group: { id: "r1", min: 1, max: 4, until: "noDarkSilver" as const } };

export const positive: readonly RecipeStep[] = [
  step("1", "firstDevelop", "first developer", 120, {
    bath: "firstDeveloper",
    mustLeaveOnTime: true,
    agitation: "rock every 15 s",
  }),
  step("2", "stop", "stop", 30, { bath: "stop" }),
  step("3", "rinse", "rinse", 60, { bath: "water" }),
  step("4", "bleach", "acid", 60, { bath: "acid", ...round }),
  step("5", "bleach", "peroxide", 90, { bath: "peroxide", agitation: "rock every 15 s", ...round }),
  step("6", "rinse", "rinse", 60, { bath: "water", ...round }),
  step("7", "clear", "clear", 60, { bath: "clear", light: "whiteAllowed" }),
  step("8", "reexpose", "re-exposure", 30, { light: "whiteRequired", drainS: 0 }),
  step("9", "redevelop", "second developer", 120, { bath: "secondDeveloper", light: "whiteAllowed" }),
  step("10", "wash", "wash", 240, { bath: "water", light: "whiteAllowed" }),
];

export const negative: readonly RecipeStep[] = [
  step("1", "develop", "developer", 90, { bath: "developer", mustLeaveOnTime: true }),
  step("2", "stop", "stop", 30, { bath: "stop" }),
  step("3", "fix", "fix", 60, { bath: "fix" }),
  step("4", "wash", "wash", 240, { bath: "water", light: "whiteAllowed", drainS: 0 }),
];

/** A lane after these presses, each at its second of the run. */
export function laneAt(
  steps: readonly RecipeStep[],
  codes: readonly string[],
  presses: readonly (readonly [number, LanePress])[],
  untilS: number,
  { plannedStartS = 0, waitForMe = false } = {},
): AskedLane {
  const kind = steps.some(({ does }) => does === "redevelop") ? "positive" : "negative";
  const recipe = processRecipeOf({ recipe: { result: kind, steps } });
  const events: LaneEvent[] = presses.map(([atS, press]) => ({ atS, press }));
  return {
    id: codes.join(),
    codes,
    steps,
    plannedStartS,
    state: runLane({ recipe, events, untilS, startS: null, waitForMe }),
    asked: { id: codes.join(), recipe, events, plannedStartS },
  };
}

export type AskedLane = LaneInHand & {
  readonly asked: {
    readonly id: string;
    readonly recipe: ProcessRecipe;
    readonly events: readonly LaneEvent[];
    readonly plannedStartS: number;
  };
};

/** The page of these lanes, in the order the engine has the hands move them. */
export function viewOf(lanes: readonly AskedLane[], nowS: number, recipeName = "recipe 4"): RunView {
  const { moves, clashes } = runLanes({ lanes: lanes.map(({ asked }) => asked), nowS });
  const [one] = clashes;
  const clash = one && { atS: one.atS, firstId: one.first.laneId, loserId: one.loser.laneId, step: one.loser.step };
  return runView({ recipeName, lanes, order: moves.map(({ laneId }) => laneId), clash, nowS });
}
