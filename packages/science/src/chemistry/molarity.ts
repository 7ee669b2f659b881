import { requireNotNegative } from "../errors/index.ts";
import { molarMass } from "./molarMass.ts";

export interface MolarityInput {
  readonly gramsPerL: number;
  readonly formula: string;
}

/**
 * Moles in a litre, from grams in a litre.
 *
 * Formula  c = g / M
 * Units    mol/L; gramsPerL grams to make one litre of solution
 *
 * @throws {OutOfDomain} negative, notFinite, unreadable
 * @source general-chemistry: amount of substance (from memory)
 * @example molarity({ gramsPerL: 10, formula: "C6H8O7" }) // 0.05204999
 */
export function molarity({ gramsPerL, formula }: MolarityInput): number {
  requireNotNegative({ gramsPerL });
  return gramsPerL / molarMass({ formula });
}
