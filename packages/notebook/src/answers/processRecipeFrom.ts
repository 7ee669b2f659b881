import type { ProcessRecipe } from "@captray/science/process";
import * as z from "zod/mini";
import { type Json, stepDoes, stepLights } from "../records/index.ts";

const step = z.object({
  step: z.string(),
  id: z.optional(z.string()),
  does: z.enum(stepDoes),
  timeS: z.number(),
  repeats: z.optional(z.number()),
  group: z.optional(
    z.object({
      id: z.string(),
      min: z.number(),
      max: z.number(),
      until: z.optional(z.literal("noDarkSilver")),
    }),
  ),
  bathC: z.optional(z.number()),
  referenceC: z.optional(z.number()),
  q10: z.optional(z.number()),
  drainS: z.optional(z.number()),
  light: z.optional(z.enum(stepLights)),
  mustLeaveOnTime: z.optional(z.boolean()),
  mayWaitUpToS: z.optional(z.number()),
});

const recipe = z.object({ kind: z.enum(["negative", "positive"]), steps: z.array(step) });

/** The recipe a run was frozen with, read back; nothing where what is kept is none. What a later version added is passed over. */
export function processRecipeFrom(kept: Json | undefined): ProcessRecipe | undefined {
  const read = recipe.safeParse(kept);
  return read.success ? (read.data as ProcessRecipe) : undefined;
}
