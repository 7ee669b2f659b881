/** What the tests and the snapshots of this folder draw: recipe 4 of the boatyard, and its sheet with patches. */
import type { DrawnPatch, PatchesDrawingInput } from "./patchesDrawing.ts";
import type { RecipeStripInput, StripStep } from "./recipeStrip.ts";

const phone = { widthPx: 358, letterPx: 15 } as const;

function step(name: string, timeS: number, white: boolean, round = false): StripStep {
  return { name, timeS, white, visits: round ? 3 : 1, ...(round && { roundId: "r1" }) };
}

export const positiveSteps: readonly StripStep[] = [
  step("first developer", 120, false),
  step("stop", 30, false),
  step("rinse", 60, false),
  step("acid", 60, false, true),
  step("peroxide", 60, false, true),
  step("rinse", 60, false, true),
  step("clear", 60, true),
  step("rinse", 45, true),
  step("re-exposure", 30, true),
  step("second developer", 120, true),
  step("wash", 180, true),
];

const negativeSteps: readonly StripStep[] = [
  step("developer", 150, false),
  step("stop", 45, false),
  step("fix", 120, false),
  step("wash", 2700, true),
];

export const stripCases: Readonly<Record<string, RecipeStripInput>> = {
  "recipe-positive-phone": { ...phone, steps: positiveSteps },
  "recipe-negative-fibre": { ...phone, steps: negativeSteps },
  "recipe-positive-large-letters": { widthPx: 358, letterPx: 30, steps: positiveSteps },
  "recipe-forty-steps": {
    ...phone,
    steps: Array.from({ length: 40 }, (_, place) => step(`bath ${place + 1}`, 30, place > 20)),
  },
};

const five: readonly DrawnPatch[] = [
  { letter: "a", treatment: "masked", says: "a, black: masked from all light" },
  { letter: "b", treatment: "lit", says: "b, fogged: white light before the first bath" },
  { letter: "c", treatment: "cutAfterBleach", says: "c, bleached only: cut off after the bleach and fixed" },
  { letter: "d", treatment: "cutBeforeAll", says: "d, base through all baths: fixed out first" },
  { letter: "e", treatment: "cutAndFixed", says: "e, base: fixed out, no baths" },
];

export const patchCases: Readonly<Record<string, PatchesDrawingInput>> = {
  "patches-five-phone": { ...phone, patches: five, sheet: { widthMm: 130, heightMm: 180 } },
  "patches-two-desk": { widthPx: 560, letterPx: 15, patches: five.slice(0, 2) },
  "patches-large-letters": { widthPx: 358, letterPx: 30, patches: five, sheet: { widthMm: 102, heightMm: 127 } },
};
