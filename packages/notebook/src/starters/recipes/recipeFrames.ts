import type { Recipe, RecipeStep } from "../../records/index.ts";
import mixed from "./directPositiveMixed.json" with { type: "json" };
import twoTrays from "./directPositiveTwoTrays.json" with { type: "json" };
import fibre from "./paperNegativeFibre.json" with { type: "json" };
import rc from "./paperNegativeRc.json" with { type: "json" };

/** A recipe to start from: not one to follow. */
export interface RecipeFrame {
  readonly frame: string;
  readonly name: string;
  readonly result: NonNullable<Recipe["result"]>;
  /** What its figures rest on. */
  readonly ground: string;
  /** For whom it is, in one sentence. */
  readonly says: string;
  readonly notes: string;
  readonly bleachRounds?: number;
  readonly steps: readonly RecipeStep[];
}

// A file says its words as any text; the test parses each by the schema of a recipe.
const frames = [rc, fibre, twoTrays, mixed] as unknown as readonly RecipeFrame[];

/** Ranges of common practice for a paper negative and a direct positive, to be tested first. */
export function recipeFrames(): readonly RecipeFrame[] {
  return frames;
}
