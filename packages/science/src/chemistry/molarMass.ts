import { ATOMIC_WEIGHTS } from "./atomicWeights.ts";
import { readFormula } from "./readFormula.ts";

export interface MolarMassInput {
  /** Like "Na2SO3.7H2O" or "(NH4)2S2O3". */
  readonly formula: string;
}

/**
 * What one mole of a substance weighs, crystal water with it.
 *
 * Formula  M = Σ n · A over the atoms; a dot parts the crystal water.
 * Units    g/mol
 * Holds    for the elements of the darkroom.
 * Error    natural spread of the atomic weights, below 0.02 %.
 *
 * @throws {OutOfDomain} unreadable
 * @source iupac-weights: conventional atomic weights (seen)
 * @example molarMass({ formula: "C6H8O7.H2O" }) // 210.138
 */
export function molarMass({ formula }: MolarMassInput): number {
  const atoms = readFormula("formula", formula);
  return [...atoms].reduce((sum, [element, count]) => sum + count * (ATOMIC_WEIGHTS.get(element) ?? 0), 0);
}
