export { type LensSectionInput, lensSection } from "./lensSection.ts";
export { type SheetStrokesInput, sheetStrokes } from "./sheetStrokes.ts";
export { type Washer, type WashersInput, washers } from "./washers.ts";
