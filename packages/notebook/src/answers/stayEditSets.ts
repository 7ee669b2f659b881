import type { RecordSet } from "../journal/notebook.ts";
import type { Moment, Run } from "../records/index.ts";
import type { StayDone } from "./runDoneOf.ts";

/** What is set so that a stay lasted so long, whatever was pressed; null goes back to what was pressed. The log keeps both. */
export function stayEditSets({
  run,
  stay,
  actualS,
  now,
  newId,
}: {
  readonly run: Run;
  readonly stay: Pick<StayDone, "laneId" | "at" | "round" | "editId">;
  readonly actualS: number | null;
  readonly now: Moment;
  /** A new id for the first time a stay is put right. */
  readonly newId: () => string;
}): readonly RecordSet[] {
  const { laneId, at, round, editId } = stay;
  if (actualS === null) {
    if (editId === undefined) return [];
    return [{ id: run.id, kind: "run", set: { [`edits.${editId}.removedAt`]: { ...now } } }];
  }
  if (!Number.isFinite(actualS) || actualS < 0) return [];
  const rounded = Number(actualS.toFixed(1));
  if (editId !== undefined) {
    const set = { [`edits.${editId}.actualS`]: rounded, [`edits.${editId}.editedAt`]: { ...now } };
    return [{ id: run.id, kind: "run", set }];
  }
  const id = newId();
  const set = {
    [`edits.${id}.laneId`]: laneId,
    [`edits.${id}.at`]: at,
    [`edits.${id}.round`]: round,
    [`edits.${id}.actualS`]: rounded,
    [`edits.${id}.editedAt`]: { ...now },
  };
  return [{ id: run.id, kind: "run", set }];
}
