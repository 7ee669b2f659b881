import { OutOfDomain, requirePositive } from "../errors/index.ts";
import { massOf } from "./massOf.ts";

export interface BleachCapacityInput {
  readonly percentWv: number;
  readonly volumeL: number;
  readonly coatGM2?: number;
  /** Share of the peroxide that dissolves silver; the rest turns to gas. */
  readonly efficiency?: number;
}

/**
 * What area a peroxide bath could bleach, if a share of its peroxide met silver.
 *
 * Formula  A = η · 2 · (10 wv V / 34.014) · 107.8682 / coat
 * Units    m²; percentWv g in 100 mL, volumeL in L, coatGM2 in g/m²
 * Holds    as an upper bound only: baths die of age and gas first. Never count a bath's life by this.
 * Error    the hundredth is an assumption, a factor of three either way.
 *
 * @throws {OutOfDomain} notFinite, notPositive, outOfRange
 * @source none: the hundredth (common practice); coating-post: 1.5 g/m² (seen)
 * @example bleachCapacity({ percentWv: 3.4014, volumeL: 1, coatGM2: 1.078682, efficiency: 1 }) // 200
 */
export function bleachCapacity(input: BleachCapacityInput): number {
  const { percentWv, volumeL, coatGM2 = 1.5, efficiency = 0.01 } = input;
  requirePositive({ percentWv, volumeL, coatGM2, efficiency });
  if (efficiency > 1) throw new OutOfDomain("outOfRange", { efficiency, above: 0, most: 1 });
  const peroxideMol = (10 * percentWv * volumeL) / massOf("H2O2");
  return (efficiency * 2 * peroxideMol * massOf("Ag")) / coatGM2;
}
