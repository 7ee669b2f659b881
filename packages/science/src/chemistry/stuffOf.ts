import type { Stuff } from "./gramsPerLOf.ts";
import { dryAtoms } from "./readFormula.ts";

const NAMED: Readonly<Record<string, Stuff>> = {
  peroxide: { what: "peroxide", formula: "H2O2" },
  acetic: { what: "acetic", formula: "C2H4O2" },
  citric: { what: "citric", formula: "C6H8O7" },
};

/** "peroxide", "acetic", "citric" or a formula; peroxide by its formula is peroxide. Inner helper of the mixing. */
export function stuffOf(what: string): Stuff {
  if (Object.hasOwn(NAMED, what)) return NAMED[what] as Stuff;
  const atoms = dryAtoms("what", what);
  const named = Object.values(NAMED).find(({ formula }) => dryAtoms("what", formula) === atoms);
  return named?.what === "peroxide" ? named : { what, formula: what };
}
