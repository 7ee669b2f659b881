import { OutOfDomain } from "../errors/index.ts";
import type { StrengthBasis } from "./mixTypes.ts";
import { molarMass } from "./molarMass.ts";
import { peroxideStrength } from "./peroxideStrength.ts";
import { substanceOf } from "./substanceOf.ts";

export interface Stuff {
  /** "peroxide", or the name or formula that was given. */
  readonly what: string;
  readonly formula: string;
}

const WV: Partial<Record<StrengthBasis, number>> = { percentWv: 10, gramsPerL: 1 };

/** A stated strength in g/L. Inner helper of the mixing. */
export function gramsPerLOf({ what, formula }: Stuff, value: number, basis: StrengthBasis): number {
  if (what === "peroxide") return peroxideGramsPerL(value, basis);
  if (basis === "percentWw") throw new OutOfDomain("densityUnknown", { basis, what: named(what) }, "basis");
  if (basis === "volumes") {
    throw new OutOfDomain("unknownWord", { basis, choices: ["percentWv", "gramsPerL", "molar"] }, "basis");
  }
  const gramsPerL = basis === "molar" ? value * molarMass({ formula }) : value * (WV[basis] ?? 1);
  // Pure acetic acid holds 1050 g in a litre; nothing is stronger.
  const mostGPerL = substanceOf(formula) === "acetic" ? 1050 : 3000;
  if (gramsPerL > mostGPerL) {
    throw new OutOfDomain(
      "strengthOutOfRange",
      { value, least: 0, most: (value * mostGPerL) / gramsPerL, what: named(what) },
      "value",
    );
  }
  return gramsPerL;
}

/** As a sentence calls it. */
function named(what: string): string {
  return what === "acetic" || what === "citric" ? `${what} acid` : what;
}

function peroxideGramsPerL(value: number, basis: StrengthBasis): number {
  if (basis !== "gramsPerL") return 10 * peroxideStrength({ value, basis }).percentWv;
  const most = 10 * peroxideStrength({ value: 50, basis: "percentWw" }).percentWv;
  if (value > most) throw new OutOfDomain("strengthOutOfRange", { value, least: 0, most });
  return value;
}
