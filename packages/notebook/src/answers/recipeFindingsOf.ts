import { furtherMessageOf } from "@captray/science/errors";
import { type RecipeFinding, recipeNonsense } from "@captray/science/process";
import type { Recipe } from "../records/index.ts";
import { processRecipeOf, type RecipeAsked } from "./processRecipeOf.ts";

export interface RecipeFindingsInput {
  readonly recipe: RecipeAsked & Pick<Recipe, "knowingly">;
}

export interface RecipeFindingSaid {
  readonly code: RecipeFinding["code"];
  readonly weight: RecipeFinding["weight"];
  /** The step it is about, or the recipe as a whole. */
  readonly stepId?: string;
  readonly message: string;
  readonly hint: string;
  /** A knowing person went on. */
  readonly known: boolean;
}

/** What is wrong with a recipe, in words, each at its step; and which of it somebody goes on with knowingly. */
export function recipeFindingsOf({ recipe }: RecipeFindingsInput): readonly RecipeFindingSaid[] {
  const { steps = [], knowingly = [] } = recipe;
  return recipeNonsense({ recipe: processRecipeOf({ recipe }) }).map(({ code, weight, step, facts }) => {
    const stepId = step === undefined ? undefined : steps[step]?.id;
    return {
      code,
      weight,
      ...(stepId !== undefined && { stepId }),
      ...furtherMessageOf({ code, facts, key: "" }),
      known: knowingly.some((one) => one.code === code && one.stepId === stepId),
    };
  });
}
