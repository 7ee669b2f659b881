import { pieceSets, stepSets } from "@captray/notebook/answers";
import type { RecordSet } from "@captray/notebook/journal";
import type { Moment, Run, Sheet } from "@captray/notebook/records";
import type { LaneInHand } from "./runTypes.ts";

/** A second or less is the same touch, rounded. */
const sameMs = 1000;

/**
 * What is set so that the sheets and pieces of a run say what the run knows: in process from the first bath on, drying from the
 * moment they came out; taken back, those dates go. A date somebody else gave stays.
 */
export function sheetsFollow({
  run,
  lanes,
  sheetOf,
  offsetMin,
}: {
  readonly run: Run;
  readonly lanes: readonly LaneInHand[];
  readonly sheetOf: (id: string) => Sheet | undefined;
  readonly offsetMin: number;
}): readonly RecordSet[] {
  const beganMs = run.startedAt?.at ?? 0;
  const momentOf = (atS: number | null): Moment | null =>
    atS === null ? null : { at: Math.round(beganMs + atS * 1000), offsetMin };
  const sets: RecordSet[] = [];
  for (const lane of run.lanes) {
    const state = lanes.find(({ id }) => id === lane.id)?.state;
    if (state === undefined) continue;
    const dates = { inProcessAt: momentOf(state.startedAtS), dryingAt: momentOf(state.endedAtS) };
    for (const step of ["inProcessAt", "dryingAt"] as const) {
      const at = dates[step];
      for (const id of lane.sheetIds ?? []) {
        const sheet = sheetOf(id);
        if (sheet === undefined || !moves(sheet[step], at, beganMs)) continue;
        sets.push(...stepSets({ sheet, step, at, now: at ?? { at: beganMs, offsetMin } }));
      }
      for (const { sheetId, letter } of lane.pieces ?? []) {
        const sheet = withSets(sheetOf(sheetId), sets);
        const piece = sheet?.pieces?.find((one) => one.letter === letter);
        if (sheet === undefined || piece === undefined || !moves(piece[step], at, beganMs)) continue;
        sets.push(...pieceSets({ sheet, letter, step, at }));
      }
    }
  }
  return merged(sets);
}

/** Whether a date is to be set: another touch, or one that was taken back; a date from before the run is not the run's to clear. */
function moves(held: Moment | undefined, at: Moment | null, beganMs: number): boolean {
  if (at === null) return held !== undefined && held.at >= beganMs;
  return held === undefined || Math.abs(held.at - at.at) > sameMs;
}

/** A sheet as it will be once these are set: pieces are one field, and each set builds on the one before. */
function withSets(sheet: Sheet | undefined, sets: readonly RecordSet[]): Sheet | undefined {
  if (sheet === undefined) return undefined;
  let held: Record<string, unknown> = { ...sheet };
  for (const { id, set } of sets) {
    if (id !== sheet.id) continue;
    held = { ...held, ...set };
    for (const [name, value] of Object.entries(set)) if (value === null) delete held[name];
  }
  return held as unknown as Sheet;
}

function merged(sets: readonly RecordSet[]): readonly RecordSet[] {
  const byId = new Map<string, RecordSet>();
  for (const one of sets) {
    const held = byId.get(one.id);
    byId.set(one.id, held === undefined ? one : { ...held, set: { ...held.set, ...one.set } });
  }
  return [...byId.values()];
}
