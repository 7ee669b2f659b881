import type { Kit } from "@captray/notebook/answers";
import type { RecordSet } from "@captray/notebook/journal";
import type { Recipe, Result } from "@captray/notebook/records";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { becomesSets, recipeChangedSets, recipeTakenSets } from "./recipeSets.ts";
import type { WantedAnswer } from "./wantedTexts.ts";

export interface MadeHowActs {
  readonly result: Result | undefined;
  /** Those of this result. */
  readonly recipes: readonly Recipe[];
  readonly onBecomes: (result: Result) => void;
  readonly onRecipe: (recipeId: string) => void;
  readonly onRounds: (rounds: number) => void;
  readonly onFilter: (name: string) => void;
  readonly onWanted: (answer: WantedAnswer) => void;
}

/** Binds the making of a print to the notebook. */
export function useMadeHow({ kit }: { readonly kit: Kit }): MadeHowActs {
  const notebook = useNotebook();
  const indexes = useShelf("exposureIndex");
  const recipes = useShelf("recipe");
  const { scene, recipe, exposureIndex, paperBox } = kit;
  const result = scene.result ?? exposureIndex?.result;
  const known = { scene, paperBoxId: paperBox?.id, indexes, recipes, newId: () => notebook.newId() };
  const write = (sets: readonly RecordSet[], note: string) => {
    notebook.change(sets, note).kept.catch(() => undefined);
  };
  return {
    result,
    recipes: recipes.filter((one) => one.result === result),
    onBecomes: (next) => {
      if (next !== result)
        write(becomesSets(known, next), next === "negative" ? "To be a negative" : "To be a positive");
    },
    onRecipe: (recipeId) => {
      const taken = recipes.find(({ id }) => id === recipeId);
      if (taken !== undefined) write(recipeTakenSets(known, taken), "Recipe chosen");
    },
    onRounds: (bleachRounds) => {
      if (result !== undefined) write(recipeChangedSets(known, recipe, { bleachRounds }, result), "Rounds of bleach");
    },
    onFilter: (name) =>
      write([{ id: scene.id, kind: "scene", set: { contrastFilter: name === "" ? null : name } }], "Filter chosen"),
    onWanted: (answer) => {
      if (answer.kind === "waits" || result === undefined) return;
      const wanted =
        answer.kind === "starting"
          ? null
          : { highlightDensity: answer.highlightDensity, shadowDensity: answer.shadowDensity };
      write(recipeChangedSets(known, recipe, { wanted }, result), "Wanted tones");
    },
  };
}
