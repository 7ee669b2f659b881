import { OutOfDomain, requirePositive } from "../errors/index.ts";
import { molarMass } from "./molarMass.ts";
import { dryAtoms } from "./readFormula.ts";

export interface HydrateMassInput {
  readonly massG: number;
  /** What the recipe names. */
  readonly from: string;
  /** What is in the jar. */
  readonly to: string;
}

/**
 * How much of another hydrate brings the same salt.
 *
 * Formula  m(to) = m(from) · M(to) / M(from)
 * Units    g
 * Holds    where both are one salt with different crystal water; asks that each is said as salt.nH2O.
 *
 * @throws {OutOfDomain} notFinite, notPositive, unreadable, notTheSameSalt
 * @source general-chemistry: molar masses of hydrates (from memory); iupac-weights: the weights (seen)
 * @example hydrateMass({ massG: 126.03653856, from: "Na2SO3", to: "Na2SO3.7H2O" }) // 252.14153856
 */
export function hydrateMass({ massG, from, to }: HydrateMassInput): number {
  requirePositive({ massG });
  if (dryAtoms("from", from) !== dryAtoms("to", to)) throw new OutOfDomain("notTheSameSalt", { from, to }, "to");
  return (massG * molarMass({ formula: to })) / molarMass({ formula: from });
}
