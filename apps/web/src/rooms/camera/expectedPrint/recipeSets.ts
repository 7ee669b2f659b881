import type { RecordSet } from "@captray/notebook/journal";
import type { ExposureIndex, FieldSet, Recipe, Result, Scene } from "@captray/notebook/records";

/** What a paper is given where nobody knows: an index for each result, and rounds of bleach. */
const guessedIndex = { negative: 2, positive: 0.7 };
const guessedSdStops = 0.7;
export const startRounds = 2;

interface Known {
  readonly scene: Scene;
  readonly paperBoxId: string | undefined;
  readonly indexes: readonly ExposureIndex[];
  readonly recipes: readonly Recipe[];
  readonly newId: () => string;
}

/** The scene becomes a negative or a positive: with the index and recipe of that result, guessed where there is none. */
export function becomesSets({ scene, paperBoxId, indexes, recipes, newId }: Known, result: Result): RecordSet[] {
  const recipe = recipes.findLast((one) => one.result === result);
  const known = indexFor(indexes, { paperBoxId, result, recipeId: recipe?.id });
  const indexId = known?.id ?? newId();
  const fresh: RecordSet[] =
    known === undefined
      ? [
          {
            id: indexId,
            kind: "exposureIndex",
            set: {
              result,
              value: { value: guessedIndex[result], sdStops: guessedSdStops },
              found: { how: "guessed" },
              ...(paperBoxId !== undefined && { paperBoxId }),
              ...(recipe !== undefined && { recipeId: recipe.id }),
            },
          },
        ]
      : [];
  const set = { result, exposureIndexId: indexId, recipeId: recipe?.id ?? null, chosenTimeS: null };
  return [...fresh, { id: scene.id, kind: "scene", set }];
}

/** The scene is made by another recipe; the index found with it comes along. */
export function recipeTakenSets({ scene, paperBoxId, indexes }: Known, recipe: Recipe): RecordSet[] {
  const { result } = recipe;
  const index = result && indexFor(indexes, { paperBoxId, result, recipeId: recipe.id });
  const set: FieldSet = { recipeId: recipe.id, ...(index?.recipeId === recipe.id && { exposureIndexId: index.id }) };
  return [{ id: scene.id, kind: "scene", set }];
}

/** Changes the recipe of the scene, or makes one with starting values where it has none yet. */
export function recipeChangedSets(
  { scene, recipes, newId }: Known,
  recipe: Recipe | undefined,
  set: FieldSet,
  result: Result,
): RecordSet[] {
  if (recipe !== undefined) return [{ id: recipe.id, kind: "recipe", set }];
  const id = newId();
  const start: FieldSet = {
    name: `recipe ${recipes.length + 1}`,
    result,
    firstDevelopmentDose: 1,
    secondDevelopmentDose: 1,
    ...(result === "positive" && { bleachRounds: startRounds }),
    assumed: ["firstDevelopmentDose", "secondDevelopmentDose", "bleachRounds"],
  };
  return [
    { id, kind: "recipe", set: { ...start, ...set } },
    { id: scene.id, kind: "scene", set: { recipeId: id } },
  ];
}

/** An index of this box and result, found with this recipe where there is one. */
function indexFor(
  indexes: readonly ExposureIndex[],
  asked: { readonly paperBoxId: string | undefined; readonly result: Result; readonly recipeId: string | undefined },
): ExposureIndex | undefined {
  const fitting = indexes.filter((one) => one.result === asked.result && one.paperBoxId === asked.paperBoxId);
  return fitting.findLast((one) => one.recipeId === asked.recipeId) ?? fitting.at(-1);
}
