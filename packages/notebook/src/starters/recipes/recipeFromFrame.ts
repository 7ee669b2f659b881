import type { FieldSet } from "../../records/index.ts";
import type { RecipeFrame } from "./recipeFrames.ts";

/** What a recipe made from a frame says of itself; nothing of it is confirmed yet. */
export function recipeFromFrame({ frame }: { readonly frame: RecipeFrame }): FieldSet {
  return {
    name: frame.name,
    result: frame.result,
    frame: frame.frame,
    steps: frame.steps,
    firstDevelopmentDose: 1,
    ...(frame.result === "positive" && { secondDevelopmentDose: 1 }),
    ...(frame.bleachRounds !== undefined && { bleachRounds: frame.bleachRounds }),
    notes: frame.notes,
    assumed: ["steps", ...(frame.bleachRounds === undefined ? [] : ["bleachRounds"])],
  } as FieldSet;
}
