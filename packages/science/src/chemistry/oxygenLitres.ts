import { massOf } from "./massOf.ts";

/** Litres of gas in a mole at 0 °C and 101.325 kPa, codata. */
export const MOLAR_VOLUME_L = 22.41396954;

/** Litres of oxygen from one litre of peroxide of this strength (its "volumes"). Inner helper. */
export function oxygenLitres(percentWv: number): number {
  return (((10 * percentWv) / massOf("H2O2")) * MOLAR_VOLUME_L) / 2;
}
