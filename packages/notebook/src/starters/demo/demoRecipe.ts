import type { FieldSet } from "../../records/index.ts";
import { recipeFrames } from "../recipes/recipeFrames.ts";
import { recipeFromFrame } from "../recipes/recipeFromFrame.ts";

export interface DemoRecipeInput {
  readonly frame: string;
  /** First development as this winter found it, within the range of the frame. */
  readonly developS: number;
  readonly mostRounds?: number;
}

/** A recipe that was made from a frame and tried since: what was a guess there is taken for known here. */
export function demoRecipe({ frame: name, developS, mostRounds }: DemoRecipeInput): FieldSet {
  const frame = recipeFrames().find((one) => one.frame === name);
  if (frame === undefined) throw new Error(`The demo's recipe asks for a frame “${name}”.`);
  const { assumed: _, ...made } = recipeFromFrame({ frame });
  const steps = frame.steps.map((step) => ({
    ...step,
    ...(/develop$/i.test(step.does) && step.does !== "redevelop" && { timeS: { ...step.timeS, aim: developS } }),
    ...(step.group && mostRounds !== undefined && { group: { ...step.group, max: mostRounds } }),
  }));
  return { ...made, steps } as FieldSet;
}
