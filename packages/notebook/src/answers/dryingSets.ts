import type { RecordSet } from "../journal/notebook.ts";
import type { Hangs, Json, Moment, Piece, Sheet } from "../records/index.ts";
import { pieceSets } from "./pieceSets.ts";
import { stepSets } from "./stepSets.ts";

/** What is done with something that dries: put in its place, taken down dry, hung up again, or what came of it. */
export type DryingAct =
  | { readonly act: "hang"; readonly hangs: Hangs }
  | { readonly act: "takeDown" | "hangAgain" }
  | { readonly act: "measuredAt" | "keptAt" | "discardedAt" };

/** What is set when it is done with a sheet, or with the piece of that letter. */
export function dryingSets({
  sheet,
  letter,
  done,
  now,
}: {
  readonly sheet: Sheet;
  readonly letter?: string | undefined;
  readonly done: DryingAct;
  readonly now: Moment;
}): readonly RecordSet[] {
  const set = (fields: Readonly<Record<string, Json>>): readonly RecordSet[] => [
    { id: sheet.id, kind: "sheet", set: fields },
  ];
  switch (done.act) {
    case "hang": {
      if (letter === undefined) return set({ hangs: { ...done.hangs } });
      const pieces = (sheet.pieces ?? []).map(
        (piece): Piece => (piece.letter === letter ? { ...piece, hangs: { ...done.hangs } } : piece),
      );
      return set({ pieces: pieces as unknown as Json });
    }
    case "takeDown":
    case "hangAgain": {
      const at = done.act === "takeDown" ? now : null;
      if (letter === undefined) return set({ takenDownAt: at && { ...at } });
      return pieceSets({ sheet, letter, step: "takenDownAt", at });
    }
    default:
      return letter === undefined
        ? stepSets({ sheet, step: done.act, at: now, now })
        : pieceSets({ sheet, letter, step: done.act, at: now });
  }
}
