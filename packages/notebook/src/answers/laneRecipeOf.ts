import type { ProcessRecipe } from "@captray/science/process";
import type { TimetablePlan } from "./timetableTypes.ts";

/**
 * The recipe one lane goes by: its stays as much longer as the timetable lets it wait; nothing where it waits nowhere.
 *
 * So the clock of the lane itself says when its tray is free, and two sheets never come to one tray.
 */
export function laneRecipeOf({
  recipe,
  plan,
  lane,
}: {
  readonly recipe: ProcessRecipe;
  readonly plan: TimetablePlan;
  readonly lane: number;
}): ProcessRecipe | undefined {
  const stays = plan.stays.filter((stay) => stay.lane === lane);
  const waits = stays.filter(({ at, waitsS }) => waitsS > 0 && stays.filter((other) => other.at === at).length === 1);
  if (waits.length === 0) return undefined;
  const steps = recipe.steps.map((step, at) => {
    const wait = waits.find((stay) => stay.at === at);
    return wait === undefined ? step : { ...step, timeS: step.timeS + wait.waitsS };
  });
  return { ...recipe, steps };
}
