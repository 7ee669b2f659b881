import { controlKind } from "../declare/campaignKeys.ts";
import { list, number, object, word } from "../declare/fields.ts";
import { intervalOf } from "../declare/intervalOf.ts";

const cause = word(["underexposed", "firstDevelopment", "bleach", "stain"], "A cause.");

const found = object({
  share: number("", "Of the density over the base."),
  interval: intervalOf(),
  gain: number("", "What curing this alone would take off the density."),
});

const sdLnShare = object(
  {
    underexposed: number("", "Too little light."),
    firstDevelopment: number("", "Missed by the first development."),
    bleach: number("", "Kept by the bleach."),
    stain: number("", "Stain."),
  },
  { description: "Doubt of the natural logarithm of each share." },
);

/** The answer of `causes`. */
export const causesOutput = object({
  density: number("", "Density at the tone asked about."),
  base: number("", "Of the bare paper."),
  excess: number("", "Over the base."),
  layerDensity: number("", "Of the silver and stain that make it."),
  causes: object(
    { underexposed: found, firstDevelopment: found, bleach: found, stain: found },
    { description: "Shares, which add up to the excess, and gains, which do not." },
  ),
  undecided: list(list(cause, "Two causes."), "What the prints do not tell apart yet, the larger shares first."),
  patches: list(
    object({ kind: controlKind, sdLnShare }),
    "What each control patch, on a repeat of that sheet, is expected to leave of the doubt.",
  ),
  now: object({ sdLnShare }, { description: "The doubt as it is." }),
});
