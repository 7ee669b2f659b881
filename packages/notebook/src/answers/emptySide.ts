import type { RecordSet } from "../journal/notebook.ts";
import type { SheetCard } from "../journal/sheetCard.ts";
import type { Moment, PaperBox, RecordId } from "../records/index.ts";
import { stepSets } from "./stepSets.ts";

/** Where a sheet went, or turns out to be. */
export type Emptying =
  /** Into the box for exposed sheets, now or some time ago. */
  | { readonly to: "exposedBox" }
  | { readonly to: "trays" }
  /** Not exposed: back into the box it came from. */
  | { readonly to: "paperBox" }
  /** It was another side all along. */
  | { readonly to: "otherSide"; readonly holderId: RecordId; readonly sideId: RecordId };

/** What is set so that a side is empty again: the sheet in it is said to be elsewhere. Nothing of the sheet is lost. */
export function emptySide({
  sheet,
  how,
  now,
  paperBox,
}: {
  readonly sheet: SheetCard;
  readonly how: Emptying;
  readonly now: Moment;
  readonly paperBox?: PaperBox | undefined;
}): readonly RecordSet[] {
  const { id, dates } = sheet;
  switch (how.to) {
    case "exposedBox":
      return [{ id, kind: "sheet", set: { takenOutAt: { ...now } } }];
    case "trays":
      return stepSets({ sheet: { id, ...dates }, step: "inProcessAt", at: now, now });
    case "paperBox": {
      const [first, ...rest] = stepSets({ sheet: { id, ...dates }, step: "loadedAt", at: null, now, paperBox });
      return [{ id, kind: "sheet", set: { ...first?.set, holderSide: null } }, ...rest];
    }
    case "otherSide":
      return [{ id, kind: "sheet", set: { holderSide: { holderId: how.holderId, sideId: how.sideId } } }];
  }
}
