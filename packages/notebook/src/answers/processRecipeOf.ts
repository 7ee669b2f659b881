import type { ProcessRecipe, ProcessStep } from "@captray/science/process";
import type { BathRole, RecipeStep, Result } from "../records/index.ts";
import { roundsOf } from "./roundsOf.ts";

/** As much of a recipe as its process is made of: a record, or one that is being written. */
export interface RecipeAsked {
  readonly result?: Result | undefined;
  readonly steps?: readonly RecipeStep[] | undefined;
  readonly bleachRounds?: number | undefined;
}

export interface ProcessRecipeOfInput {
  readonly recipe: RecipeAsked;
  /** What the thermometer says that evening, by bath; without it a bath has what the recipe asks for. */
  readonly bathC?: Readonly<Partial<Record<BathRole, number>>>;
}

/** What works faster in a warmer bath, so that its time follows. Water, stop and light take the time that is written. */
const followsTemperature: ReadonlySet<RecipeStep["does"]> = new Set(["develop", "firstDevelop", "redevelop"]);

/** A recipe of the notebook in the words of the engine; one that does not say what it gives is taken for a negative. */
export function processRecipeOf({ recipe, bathC = {} }: ProcessRecipeOfInput): ProcessRecipe {
  const { result = "negative", steps = [], bleachRounds } = recipe;
  const bleaching = new Set(steps.flatMap(({ does, group }) => (does === "bleach" && group ? [group.id] : [])));
  return {
    kind: result,
    steps: steps.map((step) => ({ ...processStep(step, bathC), ...processGroup(step.group) })),
  };

  function processGroup(group: RecipeStep["group"]): Partial<Pick<ProcessStep, "group">> {
    if (group === undefined) return {};
    const { min, max, usual } = roundsOf({ group, isBleach: bleaching.has(group.id), bleachRounds });
    const { id, until } = group;
    return until === undefined ? { group: { id, min: usual, max: usual } } : { group: { id, min, max, until } };
  }
}

function processStep(step: RecipeStep, bathC: NonNullable<ProcessRecipeOfInput["bathC"]>): ProcessStep {
  const { id, does, name, timeS, tempC, drainS, light, mustLeaveOnTime, mayWait, bath } = step;
  const measuredC = bath && bathC[bath];
  return {
    step: name,
    id,
    does,
    timeS: timeS.aim,
    ...(tempC && followsTemperature.has(does) && { bathC: measuredC ?? tempC.aim, referenceC: tempC.aim }),
    drainS,
    light,
    mustLeaveOnTime,
    ...(mayWait && { mayWaitUpToS: Math.max(0, timeS.max - timeS.aim) }),
  };
}
