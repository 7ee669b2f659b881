export type { ProcessRecipe, ProcessStep, StepDoes, StepGroup, StepLight } from "./processTypes.ts";
export {
  type RecipeFinding,
  type RecipeFindingCode,
  type RecipeNonsenseInput,
  recipeNonsense,
} from "./recipeNonsense.ts";
