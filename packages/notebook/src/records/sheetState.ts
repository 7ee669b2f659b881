import type { Sheet, StepDate } from "./sheet.ts";

export type SheetState =
  | "blank"
  | "loaded"
  | "flashed"
  | "exposed"
  | "flashOwed"
  | "inProcess"
  | "drying"
  | "dry"
  | "measured"
  | "kept"
  | "discarded";

export type SheetDates = { readonly [D in StepDate]?: Sheet[D] } & { readonly flashPlanned?: Sheet["flashPlanned"] } & {
  readonly takenDownAt?: Sheet["takenDownAt"];
};

/**
 * How far a sheet has come, from the dates of its steps: the furthest step that has a date.
 *
 * Flash may come before loading, in the camera, or after the exposure; planned for after it and not yet given, the
 * sheet is `flashOwed`. Hung up to dry it is `drying` until it is taken down, and `dry` then. If one device kept a print and another discarded it, the later of the two stands.
 */
export function sheetState(sheet: SheetDates): SheetState {
  const { keptAt, discardedAt } = sheet;
  if (keptAt && discardedAt) return discardedAt.at > keptAt.at ? "discarded" : "kept";
  if (discardedAt) return "discarded";
  if (keptAt) return "kept";
  if (sheet.measuredAt) return "measured";
  if (sheet.dryingAt) return sheet.takenDownAt ? "dry" : "drying";
  if (sheet.inProcessAt) return "inProcess";
  if (sheet.exposedAt)
    return sheet.flashPlanned?.when === "afterExposure" && !sheet.flashedAt ? "flashOwed" : "exposed";
  if (sheet.flashedAt) return "flashed";
  return sheet.loadedAt ? "loaded" : "blank";
}
