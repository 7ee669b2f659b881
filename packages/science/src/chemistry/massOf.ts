import { molarMass } from "./molarMass.ts";

/** Molar mass of a substance that this folder itself names, g/mol. Inner helper. */
export function massOf(formula: string): number {
  return molarMass({ formula });
}
