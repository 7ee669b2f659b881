export { type FillDemoInput, fillDemo } from "./demo/fillDemo.ts";
export { type RecipeFrame, recipeFrames } from "./recipes/recipeFrames.ts";
export { recipeFromFrame } from "./recipes/recipeFromFrame.ts";
export { sheetFormats } from "./sheetFormats.ts";
