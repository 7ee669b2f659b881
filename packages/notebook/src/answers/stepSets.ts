import type { RecordSet } from "../journal/notebook.ts";
import type { Json, Moment, PaperBox, Sheet, StepDate } from "../records/index.ts";

/** What stepping needs to know of a sheet: the sheet itself will do. */
export type SteppedSheet = Pick<Sheet, "id"> & { readonly [D in StepDate]?: Moment | undefined } & {
  readonly openings?: Sheet["openings"];
  readonly takenOutAt?: Moment | undefined;
};

/**
 * What is set so that a step of a sheet's way has this date, or none (`at: null`), with all that goes with it.
 *
 * Loaded takes one sheet off the box's count, loading taken back lays it back. Kept and discarded shut each other out.
 * Without a date for the flash there are no seconds of it, and without one for the exposure no openings; the log keeps them.
 */
export function stepSets({
  sheet,
  step,
  at,
  now,
  paperBox,
  flashGivenS,
}: {
  readonly sheet: SteppedSheet;
  readonly step: StepDate;
  readonly at: Moment | null;
  readonly now: Moment;
  /** The box the sheet came from. */
  readonly paperBox?: PaperBox | undefined;
  /** With `flashedAt`: what was given. */
  readonly flashGivenS?: number | undefined;
}): readonly RecordSet[] {
  const set: Record<string, Json> = { [step]: at && { ...at } };
  const sets: RecordSet[] = [{ id: sheet.id, kind: "sheet", set }];
  switch (step) {
    case "loadedAt": {
      if (at && sheet.takenOutAt) set.takenOutAt = null;
      const left = paperBox?.sheetsLeft;
      const by = (sheet.loadedAt ? 1 : 0) - (at ? 1 : 0);
      if (paperBox && left !== undefined && by !== 0 && left + by >= 0) {
        sets.push({ id: paperBox.id, kind: "paperBox", set: { sheetsLeft: left + by } });
      }
      break;
    }
    case "flashedAt":
      if (at === null) set.flashGivenS = null;
      else if (flashGivenS !== undefined) set.flashGivenS = flashGivenS;
      break;
    case "exposedAt":
      if (at === null) for (const { id } of sheet.openings ?? []) set[`openings.${id}.removedAt`] = { ...now };
      break;
    case "keptAt":
      if (at && sheet.discardedAt) set.discardedAt = null;
      break;
    case "discardedAt":
      if (at && sheet.keptAt) set.keptAt = null;
      break;
    default:
  }
  return sets;
}
