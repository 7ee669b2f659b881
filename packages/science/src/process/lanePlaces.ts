import type { LanePlace } from "./laneTypes.ts";
import type { ProcessRecipe, ProcessStep } from "./processTypes.ts";

/** Where a sheet stands in the recipe: the step, the rounds in its bath, the rounds of its group. Inner helper of the engine. */
export interface Place {
  readonly at: number;
  /** Rounds in this bath, from 1. */
  readonly own: number;
  /** Rounds of the group it stands in, from 1. */
  readonly ofGroup: number;
}

/** What was said of the rounds: still dark, or clear; nothing where nobody has said. */
export type Said = "another" | "clear" | undefined;

export const firstPlace: Place = { at: 0, own: 1, ofGroup: 1 };

/** The step at a place that is known to be in the recipe. */
export function stepAt({ steps }: ProcessRecipe, { at }: Place): ProcessStep {
  return steps[at] as ProcessStep;
}

export function named(recipe: ProcessRecipe, place: Place): LanePlace {
  const { step, light = "safelight" } = stepAt(recipe, place);
  return { at: place.at, step, round: roundOf(recipe, place), light };
}

/** Rounds are counted through: those of the bath within those of the group. */
export function roundOf(recipe: ProcessRecipe, place: Place): number {
  const { repeats = 1 } = stepAt(recipe, place);
  return (place.ofGroup - 1) * repeats + place.own;
}

/** The last bath of a round, after which the next round begins or the steps behind it. */
function endsRound({ steps }: ProcessRecipe, { at }: Place): boolean {
  const group = steps[at]?.group;
  return group !== undefined && steps[at + 1]?.group?.id !== group.id;
}

/** Whether the eye decides at the end of this stay: the rounds of its group end when no dark silver is seen. */
export function eyeDecides(recipe: ProcessRecipe, place: Place): boolean {
  const { group, repeats = 1 } = stepAt(recipe, place);
  return group?.until !== undefined && place.own >= repeats && endsRound(recipe, place) && place.ofGroup >= group.min;
}

/** The most rounds the recipe knows are done. */
export function mostRoundsDone(recipe: ProcessRecipe, place: Place): boolean {
  const { group } = stepAt(recipe, place);
  return group !== undefined && place.ofGroup >= group.max;
}

/** Where the sheet goes from here; nothing behind the last step. Unsaid, the rounds go on up to the most. */
export function following(recipe: ProcessRecipe, place: Place, said: Said): Place | undefined {
  const { group, repeats = 1 } = stepAt(recipe, place);
  if (place.own < repeats) return { ...place, own: place.own + 1 };
  if (group !== undefined && endsRound(recipe, place)) {
    const more = said === "another" || (said !== "clear" && place.ofGroup < group.max);
    if (more) {
      const first = recipe.steps.findIndex((step) => step.group?.id === group.id);
      return { at: first, own: 1, ofGroup: place.ofGroup + 1 };
    }
  }
  if (place.at + 1 >= recipe.steps.length) return undefined;
  const inGroup = group !== undefined && recipe.steps[place.at + 1]?.group?.id === group.id;
  return { at: place.at + 1, own: 1, ofGroup: inGroup ? place.ofGroup : 1 };
}
