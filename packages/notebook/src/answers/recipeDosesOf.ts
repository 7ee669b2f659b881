import type { Recipe, RecipeStep } from "../records/index.ts";

export interface RecipeDosesInput {
  readonly steps: readonly RecipeStep[];
  /** The recipe it was copied from. */
  readonly from: Pick<Recipe, "steps" | "firstDevelopmentDose" | "secondDevelopmentDose">;
}

export interface RecipeDoses {
  /** Against the recipe that both go back to; absent where either has no such step. */
  readonly first?: number;
  readonly second?: number;
}

/** A bath works twice as fast when it is 10 °C warmer: common practice, no source. */
const perTenC = 2;

/** How strong the developments of a changed copy are against those it was copied from: by time, and by what warmth adds to it. */
export function recipeDosesOf({ steps, from }: RecipeDosesInput): RecipeDoses {
  const dose = (does: readonly RecipeStep["does"][], of: number | undefined): number | undefined => {
    const now = strength(steps, does);
    const was = strength(from.steps ?? [], does);
    return now > 0 && was > 0 ? Number((((of ?? 1) * now) / was).toPrecision(4)) : undefined;
  };
  const first = dose(["firstDevelop", "develop"], from.firstDevelopmentDose);
  const second = dose(["redevelop"], from.secondDevelopmentDose);
  return { ...(first !== undefined && { first }), ...(second !== undefined && { second }) };
}

/** Seconds at 20 °C that do as much. */
function strength(steps: readonly RecipeStep[], does: readonly RecipeStep["does"][]): number {
  return steps
    .filter((step) => does.includes(step.does))
    .reduce((sum, { timeS, tempC }) => sum + timeS.aim * perTenC ** (((tempC?.aim ?? 20) - 20) / 10), 0);
}
