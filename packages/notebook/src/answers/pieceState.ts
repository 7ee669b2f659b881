import { type Piece, type Sheet, type SheetState, sheetState } from "../records/index.ts";

/** How far a piece has come: the exposure is the sheet's, what follows is its own. */
export function pieceState({ sheet, piece }: { readonly sheet: Sheet; readonly piece: Piece }): SheetState {
  const { loadedAt, flashedAt, exposedAt, flashPlanned } = sheet;
  return sheetState({
    ...(loadedAt && { loadedAt }),
    ...(flashedAt && { flashedAt }),
    ...(exposedAt && { exposedAt }),
    ...(flashPlanned && { flashPlanned }),
    ...piece,
  });
}
