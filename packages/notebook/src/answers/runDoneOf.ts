import type { RecordId, Run } from "../records/index.ts";
import { type Deviation, type DeviationsOf, type DeviationsOfInput, deviationsOf } from "./deviationsOf.ts";
import { type LaneOfRun, runOf } from "./runOf.ts";

/** One stay in a bath as planned and as done, with what was pressed beside what was put right. */
export interface StayDone extends Deviation {
  readonly laneId: RecordId;
  /** As the presses say. */
  readonly pressedS: number;
  /** The record of what was put right. */
  readonly editId: RecordId | undefined;
}

export interface LaneDone extends Pick<DeviationsOf, "development" | "rounds" | "troubles"> {
  readonly id: RecordId;
  readonly code: string;
  readonly sheetIds: readonly RecordId[];
  readonly pieces: LaneOfRun["pieces"];
  readonly kind: "negative" | "positive";
  /** Seconds of the run; null where it is still to come. */
  readonly startedS: number | null;
  readonly endedS: number | null;
  readonly stays: readonly StayDone[];
  /** The step it is still in, in a run that goes on. */
  readonly isIn: string | null;
  /** Steps of the recipe that no stay came to, in a run that is over. */
  readonly leftUndone: readonly string[];
}

export type RunDoneOf =
  | { readonly kind: "done"; readonly isOver: boolean; readonly lanes: readonly LaneDone[] }
  | { readonly kind: "unreadable" };

/**
 * A run afterwards: each lane's stays as planned and as done, with the times that were put right in the place of those pressed.
 *
 * A run that is not over is told as far as its last press.
 */
export function runDoneOf({
  run,
  kitFor,
}: {
  readonly run: Run;
  /** What is known of the paper of a lane, for the cost of a slip in the first developer. */
  readonly kitFor?: ((lane: Run["lanes"][number]) => DeviationsOfInput["kit"]) | undefined;
}): RunDoneOf {
  const lastMs = Math.max(0, ...run.events.flatMap(({ event }) => event?.sinceStartMs ?? []));
  const overMs = run.startedAt && run.endedAt ? run.endedAt.at - run.startedAt.at : 0;
  const sinceStartMs = Math.max(lastMs, overMs);
  const told = runOf({ run, sinceStartMs });
  if (told.kind === "unreadable") return { kind: "unreadable" };
  const isOver = run.endedAt !== undefined || told.next === null;
  const lanes = run.lanes.flatMap((lane) => {
    const all = deviationsOf({ run, laneId: lane.id, sinceStartMs, kit: kitFor?.(lane) });
    return all === undefined ? [] : [laneDone(run, all, isOver)];
  });
  return { kind: "done", isOver, lanes };
}

function laneDone(run: Run, { lane, rows, development, rounds, troubles }: DeviationsOf, isOver: boolean): LaneDone {
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
    stays: rows.map((row) => {
      const same = (one: { readonly at?: number | undefined; readonly round?: number | undefined }) =>
        one.at === row.at && one.round === row.round;
      return {
        ...row,
        laneId: id,
        pressedS: state.rows.find(same)?.actualS ?? 0,
        editId: run.edits.findLast((one) => one.laneId === id && same(one))?.id,
      };
    }),
    isIn: isOver ? null : (state.stay?.step ?? null),
    leftUndone: isOver ? recipe.steps.flatMap(({ step }, at) => (visited.has(at) ? [] : [step])) : [],
    development,
    rounds,
    troubles,
  };
}
