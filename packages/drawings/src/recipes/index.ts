export { type DrawnPatch, type PatchesDrawingInput, type PatchTreatment, patchesDrawing } from "./patchesDrawing.ts";
export { type RecipeStripInput, recipeStrip, type StripStep } from "./recipeStrip.ts";
