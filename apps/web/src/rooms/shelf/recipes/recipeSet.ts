import { recipeDosesOf } from "@captray/notebook/answers";
import type { FieldSet, Json, Recipe } from "@captray/notebook/records";
import { changedOnly } from "../form/fromTexts.ts";
import { readRecipe } from "./readRecipe.ts";
import { recipeDraft } from "./recipeDraft.ts";
import type { RecipeDraft, TemperatureUnit } from "./recipeTypes.ts";

export interface RecipeSetInput {
  readonly recipe: Recipe;
  readonly draft: RecipeDraft;
  /** The recipe it was copied from. */
  readonly from: Recipe | undefined;
  readonly unit: TemperatureUnit;
}

/** What keeping a draft writes: only what differs from the record. A copy says how strong its developments are against the one it came from. */
export function recipeSet({ recipe, draft, from, unit }: RecipeSetInput): FieldSet {
  const now = written(draft, recipe, from, unit);
  return changedOnly({ was: written(recipeDraft(recipe, unit), recipe, from, unit), now });
}

function written(draft: RecipeDraft, recipe: Recipe, from: Recipe | undefined, unit: TemperatureUnit): FieldSet {
  const { steps, bleachRounds } = readRecipe(draft, unit);
  const doses = from === undefined ? {} : recipeDosesOf({ steps, from });
  const assumed = (recipe.assumed ?? []).filter((path) => path !== "steps" || draft.untested);
  const list = (some: readonly unknown[]): Json => (some.length === 0 ? null : (some as Json));
  return {
    name: draft.name.trim() || "recipe",
    result: draft.result === "" ? null : draft.result,
    steps: list(steps),
    bleachRounds: bleachRounds ?? recipe.bleachRounds ?? null,
    patches: list(draft.patches),
    knowingly: list(draft.knowingly),
    notes: draft.notes.trim() === "" ? null : draft.notes,
    firstDevelopmentDose: doses.first ?? recipe.firstDevelopmentDose ?? null,
    secondDevelopmentDose: doses.second ?? recipe.secondDevelopmentDose ?? null,
    assumed: list(assumed),
  };
}

/** A copy to be changed: it goes back to the one it was copied from, and is the recipe of no index yet. */
export function copiedRecipe(recipe: Recipe, names: readonly string[]): FieldSet {
  const { id, kind: _, createdAt: __, removedAt: ___, name, copiedFromId: ____, ...fields } = recipe;
  return { ...fields, name: freshName(name || "recipe", names), copiedFromId: id } as FieldSet;
}

/** A name that no other recipe has: its number counted up, or a 2 behind it. */
export function freshName(name: string, names: readonly string[]): string {
  if (!names.includes(name)) return name;
  const [, stem = name, number] = /^(.*?)\s*(\d+)?$/.exec(name) ?? [];
  for (let next = Number(number ?? 1) + 1; ; next++) {
    const made = `${stem} ${next}`.slice(0, 120);
    if (!names.includes(made)) return made;
  }
}
