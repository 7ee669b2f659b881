import { laneRecipeOf, processRecipeOf } from "@captray/notebook/answers";
import type { RecordSet } from "@captray/notebook/journal";
import type { Json, Moment, Recipe } from "@captray/notebook/records";
import type { ReadyDraft } from "./readyDraft.ts";
import { handS, type ReadyView } from "./readyView.ts";

/** What is set for a run to begin: everything as it was that evening, and nothing pressed yet. */
export function newRun({
  id,
  newId,
  view,
  recipe,
  draft,
  now,
}: {
  readonly id: string;
  readonly newId: () => string;
  readonly view: ReadyView;
  readonly recipe: Recipe;
  readonly draft: ReadyDraft;
  readonly now: Moment;
}): RecordSet {
  const { lanes, timetable, baths } = view;
  const plan = timetable?.kind === "plan" ? timetable : undefined;
  const bathIds = [...new Set(baths.flatMap(({ chosenId }) => (chosenId === "none" ? [] : [chosenId])))];
  const processRecipe = processRecipeOf({ recipe, bathC: draft.bathC });
  const recipeThen = plain({ name: recipe.name, result: recipe.result, steps: recipe.steps });
  const set: Record<string, Json> = {
    recipeId: recipe.id,
    recipe: plain(processRecipe),
    recipeThen,
    bathIds,
    startedAt: { ...now },
    waitForMe: draft.waitForMe,
    handS,
    ...(plan && {
      timetable: plain({
        spacing: plan.spacing,
        startsS: plan.startsS,
        endS: plan.endS,
        stays: plan.stays,
        says: plan.says,
      }),
    }),
    ...(recipe.patches && { patches: [...recipe.patches] }),
  };
  for (const [place, lane] of lanes.entries()) {
    const at = `lanes.${newId()}`;
    set[`${at}.code`] = lane.code;
    set[`${at}.plannedStartS`] = plan?.startsS[place] ?? 0;
    const own = plan && laneRecipeOf({ recipe: processRecipe, plan, lane: place });
    if (own !== undefined) {
      set[`${at}.recipe`] = plain(own);
      set[`${at}.recipeThen`] = recipeThen;
    }
    if (lane.sheetIds.length > 0) set[`${at}.sheetIds`] = [...lane.sheetIds];
    if (lane.pieces.length > 0) set[`${at}.pieces`] = lane.pieces.map((piece) => ({ ...piece }));
  }
  return { id, kind: "run", set };
}

/** Plain data, without what is not there. */
function plain(value: unknown): Json {
  return JSON.parse(JSON.stringify(value)) as Json;
}
