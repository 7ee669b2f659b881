import { requireFinite, requirePositive } from "../errors/index.ts";

export interface CellPotentialInput {
  /** Standard potential of what is reduced. */
  readonly cathodeV: number;
  /** Standard potential of what is oxidised. */
  readonly anodeV: number;
  readonly electrons: number;
}

export interface CellPotential {
  readonly volts: number;
  /** Below 0 the reaction is willing. */
  readonly energyKJMol: number;
}

/** C/mol, codata. */
const FARADAY = 96485.33212;

/**
 * Whether a reaction is willing at all: peroxide dissolves silver with 0.98 V to spare, so the question is how fast.
 *
 * Formula  E = E(cathode) − E(anode),  ΔG = −n F E
 * Units    V, kJ/mol; standard potentials of reduction, both
 * Holds    at standard strengths and 25 °C; says nothing of speed.
 *
 * @throws {OutOfDomain} notFinite, notPositive
 * @source general-chemistry: E and ΔG (from memory); codata: Faraday constant (from memory)
 * @example cellPotential({ cathodeV: 1.776, anodeV: 0.7996, electrons: 2 }).volts // 0.9764
 */
export function cellPotential({ cathodeV, anodeV, electrons }: CellPotentialInput): CellPotential {
  requireFinite({ cathodeV, anodeV });
  requirePositive({ electrons });
  const volts = cathodeV - anodeV;
  return { volts, energyKJMol: (-electrons * FARADAY * volts) / 1000 };
}
