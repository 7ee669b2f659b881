import { list, number, object, orNull, text, truth, whole, word } from "../declare/fields.ts";
import { intervalOf, uncertain } from "../declare/intervalOf.ts";

/** The answer of `effects`. */
export const effectsOutput = object({
  areas: list(
    object({
      area: text("Name of the area."),
      difference: uncertain("", "Density after, less density before."),
      degreesOfFreedom: orNull(whole("", "Of the scatter; null: it is known.")),
      pNoChange: number("", "Of two one-sided tests against the margin."),
      pDifferent: number("", "Of the test against no difference."),
      pDifferentHolm: number("", "The same, made strict for as many areas."),
      interval: intervalOf(),
      interval95: intervalOf("95 in a hundred."),
      verdict: word(["noChangeSeen", "changed", "changedButLess", "cannotTellYet"], "What can be said."),
      pairsNeeded: orNull(whole("", "Pairs it takes to show that nothing changed; null where it can be told.")),
    }),
    "The areas, in the order given.",
  ),
  noChangeAnywhere: truth("Whether every area is shown to have stayed the same."),
});
