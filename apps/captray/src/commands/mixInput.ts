import { list, number, object, optional, positive, preset, text, word } from "../declare/fields.ts";

const basisWords = ["percentWw", "percentWv", "gramsPerL", "molar", "volumes"] as const;

function stated(description: string) {
  return object(
    {
      value: positive("", "The figure."),
      basis: optional(
        word(
          basisWords,
          "What it means: grams in 100 g, grams in 100 mL, grams in a litre, moles in a litre; for peroxide also volumes. Left out: percentWv up to 6, else asked.",
        ),
      ),
    },
    { description },
  );
}

const volumeMl = positive("mL", "Volume to make.");

/** The input of `mix`. */
export const mixInput = object(
  {
    ratio: optional(
      object(
        { text: text('Like "1+7", one part of stock with seven parts of water.'), volumeMl },
        {
          description: "Dilute a stock one plus so many.",
        },
      ),
    ),
    strength: optional(
      object(
        {
          what: text('"peroxide", "acetic", "citric" or a formula.'),
          have: stated("Strength of the stock."),
          want: stated("Strength of the bath."),
          volumeMl,
        },
        { description: "Dilute a stock of one strength to another." },
      ),
    ),
    weigh: optional(
      object(
        {
          formula: text('What the recipe names, like "Na2SO3".'),
          gramsPerL: number("g/L", "Grams to make a litre.", { above: 0 }),
          volumeMl,
          have: optional(text('What is in the jar, like "Na2SO3.7H2O". Default: formula.')),
        },
        { description: "Weigh a solid, as the hydrate that is in the jar." },
      ),
    ),
    with: preset(
      [],
      list(
        word(
          [
            "peroxide",
            "acetic",
            "citric",
            "hypochlorite",
            "sulfite",
            "fixer",
            "ammonia",
            "silver",
            "acetone",
            "alcohol",
          ],
          "One of them.",
        ),
        "What else is in the bath or in the room.",
      ),
    ),
    act: preset("mix", word(["mix", "store", "run", "discard", "finish"], "What is being done.")),
  },
  { ways: { choices: [{ lead: "ratio" }, { lead: "strength" }, { lead: "weigh" }] } },
);
