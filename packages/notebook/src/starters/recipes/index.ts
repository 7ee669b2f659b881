export { type RecipeFrame, recipeFrames } from "./recipeFrames.ts";
export { recipeFromFrame } from "./recipeFromFrame.ts";
