import type { Run } from "../records/index.ts";

export interface RunOfSheet {
  readonly run: Run;
  readonly laneId: string;
  /** The piece that went through it; without one the whole sheet did. */
  readonly letter: string | undefined;
}

/** The runs a sheet went through, whole or in pieces, the earliest first. */
export function runsOfSheet({
  runs,
  sheetId,
}: {
  readonly runs: readonly Run[];
  readonly sheetId: string;
}): readonly RunOfSheet[] {
  return runs
    .flatMap((run) =>
      run.lanes.flatMap((lane): RunOfSheet[] => {
        const whole = (lane.sheetIds ?? []).includes(sheetId as never);
        const letters = (lane.pieces ?? []).flatMap((piece) => (piece.sheetId === sheetId ? [piece.letter] : []));
        const ofPieces = letters.map((letter) => ({ run, laneId: lane.id, letter }));
        return whole ? [{ run, laneId: lane.id, letter: undefined }, ...ofPieces] : ofPieces;
      }),
    )
    .sort((a, b) => (a.run.startedAt?.at ?? 0) - (b.run.startedAt?.at ?? 0));
}
