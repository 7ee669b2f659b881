import { requireWithin } from "../errors/index.ts";
import { PEROXIDE_DENSITIES } from "./peroxideTable.ts";

export interface PeroxideDensityInput {
  readonly percentWw: number;
}

/**
 * How dense peroxide in water is.
 *
 * Formula  straight lines between the rows of the table
 * Units    g/mL at 18 °C; percentWw grams in 100 g of solution
 * Error    4 in 10 000; at room temperature another 1 in 1000.
 * Holds    from 0 to 50 % w/w; stronger peroxide is refused, it has no place in a darkroom.
 *
 * @throws {OutOfDomain} notFinite, strengthOutOfRange
 * @source handbook-densities: table of aqueous hydrogen peroxide (from memory); peroxide-density-program: agrees to 4 in 10 000 (seen)
 * @example peroxideDensity({ percentWw: 35 }) // 1.1327
 */
export function peroxideDensity({ percentWw }: PeroxideDensityInput): number {
  requireWithin({ percentWw }, { least: 0, most: 50, code: "strengthOutOfRange" });
  const next = PEROXIDE_DENSITIES.findIndex(([percent]) => percent >= percentWw);
  const [high, highDensity] = PEROXIDE_DENSITIES[Math.max(next, 1)] ?? [0, 0];
  const [low, lowDensity] = PEROXIDE_DENSITIES[Math.max(next, 1) - 1] ?? [0, 0];
  return lowDensity + ((highDensity - lowDensity) * (percentWw - low)) / (high - low);
}
