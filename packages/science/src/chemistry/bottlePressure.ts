import { requireNotNegative, requirePositive } from "../errors/index.ts";
import { oxygenLitres } from "./oxygenLitres.ts";
import { requireDecomposedShare } from "./requireDecomposedShare.ts";

export interface BottlePressureInput {
  readonly percentWv: number;
  readonly liquidMl: number;
  /** Air above the liquid. */
  readonly headMl: number;
  readonly decomposedShare: number;
}

/**
 * Pressure in a stoppered bottle of bleach when a share of its peroxide has turned to oxygen.
 *
 * Formula  p = volumes · share · V(liquid) / V(head)
 * Units    atm over the outside; percentWv g in 100 mL, mL
 * Holds    at 0 °C and for gas that all leaves the liquid; at room temperature 7 % more. Bottles burst at less than this.
 *
 * @throws {OutOfDomain} notFinite, negative, notPositive, shareOutOfRange
 * @source general-chemistry: gas law (from memory); codata: molar volume (from memory)
 * @example bottlePressure({ percentWv: 3, liquidMl: 900, headMl: 100, decomposedShare: 0 }) // 0
 */
export function bottlePressure({ percentWv, liquidMl, headMl, decomposedShare }: BottlePressureInput): number {
  requireNotNegative({ percentWv });
  requirePositive({ liquidMl, headMl });
  requireDecomposedShare(decomposedShare);
  return (oxygenLitres(percentWv) * decomposedShare * liquidMl) / headMl;
}
