import type { LaneRow } from "@captray/science/process";
import type { RecordId, Run } from "../records/index.ts";
import { type LaneOfRun, runOf } from "./runOf.ts";

/** One stay in a bath as planned and as done, with what was put right afterwards. */
export interface StayDone {
  readonly laneId: RecordId;
  /** Its place in the recipe, from 0, and the how-manieth time. */
  readonly at: number;
  readonly round: number;
  readonly step: string;
  readonly does: string;
  /** As the recipe says at its reference temperature, and what that came to in the bath as it was. */
  readonly plannedS: number;
  readonly dueS: number;
  /** As the presses say; null while it runs. */
  readonly pressedS: number | null;
  /** What stands: put right, or as pressed. */
  readonly actualS: number | null;
  /** One standard deviation of what stands: nobody pressed is worse than a press. */
  readonly sdS: number;
  readonly bathC: number | null;
  readonly effectiveS: number | null;
  readonly log2Ratio: number | null;
  readonly late: boolean;
  readonly how: "tapped" | "assumed" | "edited" | "skipped" | null;
  /** The record of what was put right. */
  readonly editId: RecordId | undefined;
}

export interface LaneDone {
  readonly id: RecordId;
  readonly code: string;
  readonly sheetIds: readonly RecordId[];
  readonly pieces: LaneOfRun["pieces"];
  readonly kind: "negative" | "positive";
  /** Seconds of the run; null where it is still to come. */
  readonly startedS: number | null;
  readonly endedS: number | null;
  readonly stays: readonly StayDone[];
  readonly troubles: LaneOfRun["state"]["troubles"];
  /** Steps of the recipe that no stay came to, in a run that is over. */
  readonly leftUndone: readonly string[];
}

export type RunDoneOf =
  | { readonly kind: "done"; readonly isOver: boolean; readonly lanes: readonly LaneDone[] }
  | { readonly kind: "unreadable" };

/** Nobody pressed: 5 s or a drain, the larger (assumed). A press is good to a second (assumed). */
const assumedSdS = 5;
const tappedSdS = 1;

/**
 * A run afterwards: each lane's stays as planned and as done, with the times that were put right in the place of those pressed.
 *
 * A put-right time keeps the temperature of its bath: its effective time grows in the same proportion. What was pressed stays
 * beside it. A run that is not over is told as far as its last press.
 */
export function runDoneOf({ run }: { readonly run: Run }): RunDoneOf {
  const lastMs = Math.max(0, ...run.events.flatMap(({ event }) => event?.sinceStartMs ?? []));
  const overMs = run.startedAt && run.endedAt ? run.endedAt.at - run.startedAt.at : 0;
  const told = runOf({ run, sinceStartMs: Math.max(lastMs, overMs) });
  if (told.kind === "unreadable") return { kind: "unreadable" };
  const isOver = run.endedAt !== undefined || told.next === null;
  return { kind: "done", isOver, lanes: told.lanes.map((lane) => laneDone(run, lane, isOver)) };
}

function laneDone(run: Run, lane: LaneOfRun, isOver: boolean): LaneDone {
  const { id, code, sheetIds, pieces, recipe, state } = lane;
  const visited = new Set(state.rows.map(({ at }) => at));
  return {
    id,
    code,
    sheetIds,
    pieces,
    kind: recipe.kind,
    startedS: state.startedAtS,
    endedS: state.endedAtS,
    stays: state.rows.map((row) => stayDone(run, lane, row)),
    troubles: state.troubles,
    leftUndone: isOver ? recipe.steps.flatMap(({ step }, at) => (visited.has(at) ? [] : [step])) : [],
  };
}

function stayDone(run: Run, { id, recipe }: LaneOfRun, row: LaneRow): StayDone {
  const { at, round, step, plannedS, dueS, actualS, bathC, effectiveS, log2Ratio, late, how } = row;
  const edit = run.edits.findLast((one) => one.laneId === id && one.at === at && one.round === round);
  const rightS = edit?.actualS;
  const drainS = recipe.steps[at]?.drainS ?? 0;
  const common = {
    laneId: id,
    at,
    round,
    step,
    does: recipe.steps[at]?.does ?? "other",
    plannedS,
    dueS,
    pressedS: actualS,
    bathC,
    late,
  };
  if (rightS === undefined) {
    const sdS = how === "assumed" ? Math.max(assumedSdS, drainS) : how === "tapped" ? tappedSdS : 0;
    return { ...common, actualS, sdS, effectiveS, log2Ratio, how, editId: undefined };
  }
  // The warmth of the bath is in what was due: as many times slower or faster as due is longer or shorter than planned.
  const effective = dueS > 0 ? (rightS * plannedS) / dueS : rightS;
  return {
    ...common,
    actualS: rightS,
    sdS: tappedSdS,
    effectiveS: effective,
    log2Ratio: effective > 0 && plannedS > 0 ? Math.log2(effective / plannedS) : null,
    how: rightS === 0 ? "skipped" : "edited",
    editId: edit?.id,
  };
}
