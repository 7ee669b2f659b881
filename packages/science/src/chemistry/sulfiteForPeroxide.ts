import { requireNotNegative } from "../errors/index.ts";
import { massOf } from "./massOf.ts";

export interface SulfiteForPeroxideInput {
  /** Peroxide bath that a sheet brings along. */
  readonly carryMl: number;
  readonly percentWv: number;
}

/**
 * Sulfite that carried peroxide uses up in the clearing bath.
 *
 * Formula  SO3²⁻ + H2O2 → SO4²⁻ + H2O:  g = v · wv / 100 · 126.04 / 34.01
 * Units    mL; percentWv g in 100 mL; g of the anhydrous salt (Na2SO3)
 * Holds    for dilute baths; strong ones react hot.
 *
 * @throws {OutOfDomain} notFinite, negative
 * @source general-chemistry: the equation, one to one (from memory)
 * @example sulfiteForPeroxide({ carryMl: 0, percentWv: 3 }) // 0
 */
export function sulfiteForPeroxide({ carryMl, percentWv }: SulfiteForPeroxideInput): number {
  requireNotNegative({ carryMl, percentWv });
  return (((carryMl * percentWv) / 100) * massOf("Na2SO3")) / massOf("H2O2");
}
