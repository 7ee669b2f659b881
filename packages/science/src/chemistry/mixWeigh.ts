import { OutOfDomain, requirePositive } from "../errors/index.ts";
import { amountWords } from "./amountWords.ts";
import { hydrateMass } from "./hydrateMass.ts";
import { keyed } from "./keyed.ts";
import type { Mixed, MixWeigh } from "./mixTypes.ts";
import { molarMass } from "./molarMass.ts";
import { dryAtoms } from "./readFormula.ts";
import { substanceOf } from "./substanceOf.ts";

/** Liquids that are never weighed as the pure thing, and what is asked instead. */
const NEVER_PURE = ["H2O2", "C2H4O2", "H2SO4"] as const;

/** Share of the water that solids are dissolved in; the rest tops up. */
const FIRST_WATER = 0.75;

/** Weighs a solid, as the hydrate that is in the jar. Inner helper of `mix`. */
export function mixWeigh({ formula, gramsPerL, volumeMl, have = formula }: MixWeigh): Mixed {
  const atoms = keyed("weigh", {}, () => dryAtoms("formula", formula));
  keyed("weigh", {}, () => requirePositive({ gramsPerL, volumeMl }));
  if (NEVER_PURE.some((each) => dryAtoms("formula", each) === atoms)) {
    throw new OutOfDomain(
      "mixRefused",
      {
        first: formula,
        reason: `${formula} is a liquid that is dangerous pure, and not weighed out of a jar.`,
        way: "Say the strength of the bottle and of the bath instead: strength, with have and want.",
      },
      "weigh/formula",
    );
  }
  const massG = (gramsPerL * volumeMl) / 1000;
  const amountG = keyed("weigh", { from: "formula", to: "have" }, () =>
    hydrateMass({ massG, from: formula, to: have }),
  );
  const substance = substanceOf(formula);
  const percentWv = gramsPerL / 10;
  return {
    pours: [
      { what: "water", amountMl: volumeMl },
      { what: have, amountG },
    ],
    steps: [
      `Begin with three quarters of the water, ${amountWords(volumeMl * FIRST_WATER, "mL")}.`,
      `Weigh ${amountWords(amountG, "g")} of ${have}, strew it in and stir until it is wholly dissolved.`,
      `Top up with water to ${amountWords(volumeMl, "mL")}.`,
      "Label it: what, strength, date.",
    ],
    strengths: {
      percentWw: null,
      percentWv,
      gramsPerL,
      molar: gramsPerL / molarMass({ formula }),
      volumes: null,
    },
    classes: substance === "citric" ? ["Eye Irrit. 2", "STOT SE 3"] : [],
    naiveMl: null,
    warnings: [],
    held: substance === undefined ? null : { substance, stockW: 100, bathW: percentWv },
    form: "powder",
  };
}
