import type { Result } from "../records/fields.ts";
import type { RecordId } from "../records/recordId.ts";
import type { Sheet, StepDate } from "../records/sheet.ts";
import type { SheetState } from "../records/sheetState.ts";

/** What a list needs to know of a sheet without reading it. */
export interface SheetCard {
  readonly id: RecordId;
  readonly code: string;
  readonly state: SheetState;
  readonly dates: { readonly [D in StepDate]?: Sheet[D] };
  readonly rating?: number;
  readonly result?: Result;
  /** The planned time, and the time given by all openings together. */
  readonly plannedS?: number;
  readonly givenS?: number;
  readonly mishaps: readonly string[];
  /** It lies in its holder no longer, though it has not gone into the trays. */
  readonly takenOut?: true;
  /** Flash planned for before the loading and not given yet, in seconds. */
  readonly flashFirstS?: number;
  readonly links: {
    readonly paperBoxId?: RecordId;
    readonly sceneId?: RecordId;
    readonly lensId?: RecordId;
    readonly cameraId?: RecordId;
    readonly holderId?: RecordId;
    readonly sideId?: RecordId;
  };
  /** Lower-case words of the sheet and of what it links to. */
  readonly searchText: string;
}
