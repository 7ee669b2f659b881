import {
  type RecipeCautions,
  type RecipeFindingSaid,
  type RecipeTotal,
  recipeCautionsOf,
  recipeDosesOf,
  recipeFindingsOf,
  recipeTotalOf,
} from "@captray/notebook/answers";
import type { FieldSet, Recipe } from "@captray/notebook/records";
import { type RecipeFrame, recipeFromFrame } from "@captray/notebook/starters/recipes";
import { useMemo, useState } from "react";
import { createMirror } from "../../../devices/mirror.ts";
import { momentNow } from "../../../devices/momentNow.ts";
import { goTo } from "../../../kit/goTo.ts";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useSettings } from "../../../kit/notebook/useSettings.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { keptDraft, leftDraft } from "./keptDraft.ts";
import { type RecipeRead, readRecipe } from "./readRecipe.ts";
import { recipeDraft } from "./recipeDraft.ts";
import { copiedRecipe, recipeSet } from "./recipeSet.ts";
import { recipeState } from "./recipeState.ts";
import type { RecipeDraft, RecipeEvent, TemperatureUnit } from "./recipeTypes.ts";

export interface RecipePageView {
  readonly recipe: Recipe;
  readonly from: Recipe | undefined;
  readonly draft: RecipeDraft;
  readonly unit: TemperatureUnit;
  readonly read: RecipeRead;
  readonly findings: readonly RecipeFindingSaid[];
  readonly cautions: RecipeCautions;
  readonly total: RecipeTotal;
  /** Against the recipe it was copied from. */
  readonly dose: number | undefined;
  readonly isChanged: boolean;
  /** An index was found with it, and the first development would be another: the names of the boxes. */
  readonly foundWith: readonly string[];
  readonly on: (event: RecipeEvent) => void;
  readonly keep: () => void;
  readonly keepAsCopy: () => void;
  readonly letGo: () => void;
  readonly copy: () => void;
  readonly putAway: () => void;
  readonly layOut: (frame: RecipeFrame) => void;
}

const mirror = createMirror();

/** Binds the page of a recipe to the notebook; what is written on it waits on this machine until it is kept. */
export function useRecipePage(recipe: Recipe): RecipePageView {
  const notebook = useNotebook();
  const { temperatureUnit: unit } = useSettings();
  const recipes = useShelf("recipe");
  const indexes = useShelf("exposureIndex");
  const boxes = useShelf("paperBox");
  const place = `recipe-draft-${notebook.id}-${recipe.id}`;
  const stored = useMemo(() => recipeDraft(recipe, unit), [recipe, unit]);
  const [written, setWritten] = useState(() => keptDraft(mirror.read(place), unit));
  const draft = written ?? stored;
  const found = recipe.copiedFromId && notebook.peek(recipe.copiedFromId);
  const from = found && found.kind === "recipe" ? found : undefined;
  const read = useMemo(() => readRecipe(draft, unit), [draft, unit]);
  const { steps, bleachRounds } = read;
  const { knowingly } = draft;
  const result = draft.result === "" ? undefined : draft.result;
  const isChanged = written !== undefined && JSON.stringify(written) !== JSON.stringify(stored);
  const strength = recipeDosesOf({ steps, from: recipe }).first ?? recipe.firstDevelopmentDose;
  const moves = isChanged && strength !== undefined && strength !== (recipe.firstDevelopmentDose ?? 1);
  const foundWith = indexes
    .filter((index) => moves && index.recipeId === recipe.id && index.found.how === "ownSheets")
    .map((index) => boxes.find(({ id }) => id === index.paperBoxId)?.name || "a box");

  const forget = () => {
    mirror.drop(place);
    setWritten(undefined);
  };
  const write = (id: string, set: FieldSet, note: string) => {
    if (Object.keys(set).length > 0) notebook.change([{ id, kind: "recipe", set }], note).kept.catch(() => undefined);
  };
  const names = recipes.map(({ name }) => name);
  const writeCopy = (set: FieldSet) => {
    const id = notebook.newId();
    write(id, { ...set, createdAt: { ...momentNow() } }, "Recipe copied");
    goTo({ path: `/shelf/recipe/${id}` });
  };

  return {
    recipe,
    from,
    draft,
    unit,
    read,
    findings: useMemo(
      () => recipeFindingsOf({ recipe: { result, steps, bleachRounds, knowingly } }),
      [result, steps, bleachRounds, knowingly],
    ),
    cautions: useMemo(() => recipeCautionsOf({ steps, today: new Date().toISOString().slice(0, 10) }), [steps]),
    total: useMemo(() => recipeTotalOf({ steps, bleachRounds }), [steps, bleachRounds]),
    dose: from && recipeDosesOf({ steps, from }).first,
    isChanged,
    foundWith,
    on: (event) => {
      const next = recipeState(draft, event);
      mirror.write(place, leftDraft(next, unit));
      setWritten(next);
    },
    keep: () => {
      write(recipe.id, recipeSet({ recipe, draft, from, unit }), "Recipe changed");
      forget();
    },
    keepAsCopy: () => {
      const copied = copiedRecipe(recipe, names);
      const changed = recipeSet({ recipe, draft, from: recipe, unit });
      forget();
      writeCopy({ ...copied, ...changed });
    },
    letGo: forget,
    copy: () => writeCopy(copiedRecipe(recipe, names)),
    putAway: () => {
      write(recipe.id, { removedAt: { ...momentNow() } }, "Recipe put away");
      goTo({ path: "/shelf/recipes" });
    },
    layOut: (frame) => {
      const { steps: laid, bleachRounds: rounds, assumed } = recipeFromFrame({ frame }) as Partial<Recipe>;
      const made = { ...recipe, steps: laid, bleachRounds: recipe.bleachRounds ?? rounds, assumed } as Partial<Recipe>;
      const next = recipeDraft(made, unit);
      const laidOut = { ...next, name: draft.name, result: frame.result, notes: draft.notes || frame.notes };
      mirror.write(place, leftDraft(laidOut, unit));
      setWritten(laidOut);
    },
  };
}
