export { type BathDrawingInput, bathDrawing } from "./bathDrawing.ts";
export { type BathLabelInput, bathLabel } from "./bathLabel.ts";
