import type { Fault, Piece, Sheet, SheetState } from "../records/index.ts";
import { faultsOf } from "./faultsOf.ts";
import { pieceState } from "./pieceState.ts";

export interface PieceOf {
  readonly piece: Piece;
  /** As it is pencilled on the back: “W31b”. */
  readonly code: string;
  readonly state: SheetState;
  readonly faults: readonly Fault[];
}

/** What a sheet was cut into, in the order of the letters, each with its own state and the faults that lie on it. */
export function piecesOf({ sheet }: { readonly sheet: Sheet }): readonly PieceOf[] {
  const faults = faultsOf({ sheet });
  return (sheet.pieces ?? [])
    .toSorted((a, b) => (a.letter < b.letter ? -1 : 1))
    .map((piece) => ({
      piece,
      code: `${sheet.code ?? ""}${piece.letter}`,
      state: pieceState({ sheet, piece }),
      faults: faults.flatMap(({ fault, letter }) => (letter === piece.letter ? [fault] : [])),
    }));
}
