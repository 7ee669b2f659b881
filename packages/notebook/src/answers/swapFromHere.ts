import type { RecordSet } from "../journal/notebook.ts";
import type { Json, Moment, Sheet, StepDate } from "../records/index.ts";
import { stepDates } from "../records/index.ts";

type SheetField = Exclude<keyof Sheet, "id" | "kind" | "openings" | "mishaps">;

/** What goes with each step besides its date. What a sheet is (code, box, kind, recipe, label, notes) goes with none. */
const alongWith: Readonly<Partial<Record<StepDate, readonly SheetField[]>>> = {
  loadedAt: ["holderSide"],
  inProcessAt: ["pieces"],
  // Which is which is read from what hangs there: what was seen on a print goes with it.
  dryingAt: ["hangs", "takenDownAt", "faults"],
  exposedAt: ["sceneId", "testId", "cameraId", "lensId", "stopId", "handId", "planned", "takenOutAt"],
};
const flashFields = ["flashPlanned", "flashedAt", "flashGivenS"] as const satisfies readonly SheetField[];

/**
 * “These two were swapped from here on”: everything from one step on that was written down for one sheet is the other's.
 *
 * Holder side, openings, mishaps, the ledger of the exposure, pieces, faults, the rating and the dates of all later steps change places; code,
 * box, kind, recipe, label and notes stay. Flash goes as a whole, unless it came before the swap: planned for before the loading
 * it stays, planned for after the exposure it goes. Swapped twice, both sheets are as they were. Openings and mishaps keep
 * their names, so that the log shows where they were.
 */
export function swapFromHere({
  a,
  b,
  from,
  now,
}: {
  readonly a: Sheet;
  readonly b: Sheet;
  readonly from: StepDate;
  readonly now: Moment;
}): readonly RecordSet[] {
  if (a.id === b.id) return [];
  const fields = fieldsFrom(from, a, b);
  const withOpenings = stepDates.indexOf(from) <= stepDates.indexOf("exposedAt");
  const sets = [setOn(a, b, fields, withOpenings, now), setOn(b, a, fields, withOpenings, now)];
  return sets.filter(({ set }) => Object.keys(set).length > 0);
}

function fieldsFrom(from: StepDate, a: Sheet, b: Sheet): readonly SheetField[] {
  const later = stepDates.slice(stepDates.indexOf(from));
  const fields = later.filter((step) => step !== "flashedAt").flatMap((step) => [step, ...(alongWith[step] ?? [])]);
  // What decides is the same for either sheet after the swap as before it: else twice would not be nothing.
  const planned = [a.flashPlanned?.when, b.flashPlanned?.when];
  const flash =
    from === "flashedAt" ||
    (from === "loadedAt" && !planned.includes("beforeLoading")) ||
    (from === "exposedAt" && planned.includes("afterExposure"));
  return [...fields, "rating", ...(flash ? flashFields : [])];
}

function setOn(to: Sheet, other: Sheet, fields: readonly SheetField[], withOpenings: boolean, now: Moment): RecordSet {
  const set: Record<string, Json> = {};
  for (const field of fields) {
    const [mine, theirs] = [to[field] ?? null, other[field] ?? null];
    if (JSON.stringify(mine) !== JSON.stringify(theirs)) set[field] = theirs as Json;
  }
  if (withOpenings) {
    for (const { id, opening } of other.openings) {
      if (opening === undefined) continue;
      set[`openings.${id}.opening`] = opening as unknown as Json;
      set[`openings.${id}.removedAt`] = null;
    }
    for (const { id } of to.openings) set[`openings.${id}.removedAt`] = { ...now };
    for (const { id, what, notedAt } of other.mishaps) {
      if (what === undefined) continue;
      set[`mishaps.${id}.what`] = what;
      if (notedAt) set[`mishaps.${id}.notedAt`] = { ...notedAt };
      set[`mishaps.${id}.removedAt`] = null;
    }
    for (const { id } of to.mishaps) set[`mishaps.${id}.removedAt`] = { ...now };
  }
  return { id: to.id, kind: "sheet", set };
}
