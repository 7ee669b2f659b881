export { faultSign } from "./faultSign.ts";
export { type DrawnFault, faultWords } from "./faultWords.ts";
export { placeWords } from "./placeWords.ts";
export { type FaultOnSheet, type PieceOnSheet, type SheetDrawingInput, sheetDrawing } from "./sheetDrawing.ts";
