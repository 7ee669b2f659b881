import { kinds, list, number, object, optional, orNull, text, word } from "../declare/fields.ts";

/** The answer of `mix`. */
export const mixOutput = object({
  pours: list(
    object({
      what: text("Water, the stock, or what is in the jar."),
      amountMl: optional(number("mL", "Volume to measure.")),
      amountG: optional(number("g", "Mass to weigh.")),
    }),
    "What to measure, in the order of working; each has amountMl or amountG.",
  ),
  steps: list(text("One step."), "What the hands do, in order."),
  strengths: orNull(
    object(
      {
        percentWw: orNull(number("% w/w", "Grams in 100 g; null where no density is known.")),
        percentWv: number("% w/v", "Grams in 100 mL."),
        gramsPerL: number("g/L", "Grams in a litre."),
        molar: number("mol/L", "Moles in a litre."),
        volumes: orNull(number("L/L", "Litres of oxygen from a litre; null but for peroxide.")),
      },
      { description: "Strength of the mixed bath; null for a ratio." },
    ),
  ),
  classes: list(text("Class and category."), "Hazard classes of the stock."),
  cautions: list(
    object({ id: text("Its name."), text: text("What it says.") }),
    "Cautions for the act, of each family the strongest, help last.",
  ),
  naiveMl: orNull(number("mL", "Peroxide: what the bare ratio of the two figures would pour.")),
  warnings: list(
    kinds("kind", [
      object({
        kind: word(["basisAssumed"], "A bare per cent was taken for grams in 100 mL."),
        key: word(["have", "want"], "Of the stock or of the bath."),
      }),
      object({
        kind: word(["gelatinAtRisk"], "Above 6 % w/v peroxide lifts the gelatin."),
        percentWv: number("% w/v", "Strength of the bath."),
      }),
      object({ kind: word(["volumesNotAdditive"], "Above 20 % volumes no longer simply add.") }),
      object({
        kind: word(["lastHour"], "Peroxide with acid has a last hour, not a last day."),
        hours: number("h", "From mixing, at most."),
      }),
      object({
        kind: word(
          ["tooSmallToMeasure"],
          "Less than a measure of the darkroom shows: make more, or a weaker stock first.",
        ),
        what: text("Which pour."),
      }),
    ]),
    "What to look out for.",
  ),
});
