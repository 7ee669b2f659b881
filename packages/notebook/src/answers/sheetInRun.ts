import type { Run } from "../records/index.ts";

/** Whether a sheet may go into a run: one that is still in another one may not. */
export type SheetInRun =
  | { readonly kind: "free" }
  | { readonly kind: "inAnotherRun"; readonly run: Run; readonly laneId: string; readonly code: string };

/**
 * The run a sheet, or a piece of it, is going through now.
 *
 * A run that was ended or left holds nobody; a piece goes its own way, so that another piece of the same sheet is free.
 */
export function sheetInRun({
  runs,
  sheetId,
  letter,
  besides,
}: {
  readonly runs: readonly Run[];
  readonly sheetId: string;
  /** The piece asked about; without it the sheet as a whole. */
  readonly letter?: string | undefined;
  /** The run that is being made. */
  readonly besides?: string | undefined;
}): SheetInRun {
  for (const run of runs) {
    if (run.id === besides || run.endedAt !== undefined) continue;
    for (const lane of run.lanes) {
      const isWhole = (lane.sheetIds ?? []).some((id) => id === sheetId);
      const pieces = (lane.pieces ?? []).filter((piece) => piece.sheetId === sheetId);
      const isHeld =
        letter === undefined
          ? isWhole || pieces.length > 0
          : isWhole || pieces.some((piece) => piece.letter === letter);
      if (isHeld) return { kind: "inAnotherRun", run, laneId: lane.id, code: lane.code ?? "" };
    }
  }
  return { kind: "free" };
}
