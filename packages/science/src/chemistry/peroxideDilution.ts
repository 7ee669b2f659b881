import { OutOfDomain, requirePositive } from "../errors/index.ts";
import { type PeroxideBasis, peroxideStrength } from "./peroxideStrength.ts";

export interface PeroxideDilutionInput {
  readonly stock: number;
  readonly stockBasis: PeroxideBasis;
  readonly target: number;
  readonly targetBasis: PeroxideBasis;
  readonly volumeMl: number;
}

export interface PeroxideDilution {
  readonly stockMl: number;
  readonly waterMl: number;
  /** What the bare ratio of the two figures would pour. */
  readonly naiveMl: number;
}

/**
 * How much peroxide to measure, and into how much water.
 *
 * Formula  V1 = V · wv(target) / wv(stock), water = V − V1
 * Units    mL; naiveMl = V · target / stock, figures as given
 * Holds    for a target no stronger than the stock, both at most 50 % w/w; volumes are taken as additive.
 *
 * @throws {OutOfDomain} notFinite, negative, notPositive, unknownWord, strengthOutOfRange, targetStrongerThanStock
 * @source general-chemistry: dilution, C1 V1 = C2 V2 (from memory)
 * @example peroxideDilution({ stock: 11, stockBasis: "percentWw", target: 3, targetBasis: "percentWv", volumeMl: 600 }) // { "stockMl": 157.524416, "waterMl": 442.475584, "naiveMl": 163.636364 }
 */
export function peroxideDilution(input: PeroxideDilutionInput): PeroxideDilution {
  const { stock, stockBasis, target, targetBasis, volumeMl } = input;
  requirePositive({ stock, target, volumeMl });
  const have = strengthAt("stock", stock, stockBasis);
  const want = strengthAt("target", target, targetBasis);
  // A hair of rounding between two bases is no stronger bath.
  if (want > have * (1 + 1e-12)) throw new OutOfDomain("targetStrongerThanStock", { target, stock });
  const stockMl = Math.min(volumeMl, (volumeMl * want) / have);
  return { stockMl, waterMl: volumeMl - stockMl, naiveMl: (volumeMl * target) / stock };
}

/** Strength in % w/v, a fault being told of the key it came under. */
function strengthAt(key: "stock" | "target", value: number, basis: PeroxideBasis): number {
  try {
    return peroxideStrength({ value, basis }).percentWv;
  } catch (fault) {
    if (!(fault instanceof OutOfDomain)) throw fault;
    const { value: _, ...facts } = fault.facts;
    if (fault.key === "basis") throw new OutOfDomain(fault.code, { ...facts }, `${key}Basis`);
    throw new OutOfDomain(fault.code, { [key]: value, ...facts });
  }
}
