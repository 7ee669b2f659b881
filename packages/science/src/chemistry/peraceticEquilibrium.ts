import { requireNotNegative, requirePositive } from "../errors/index.ts";
import { massOf } from "./massOf.ts";

export interface PeraceticEquilibriumInput {
  readonly aceticMolar: number;
  readonly peroxideMolar: number;
  /** Equilibrium constant. */
  readonly constant?: number;
  readonly waterMolar?: number;
}

export interface PeraceticEquilibrium {
  readonly molar: number;
  readonly mgPerL: number;
}

/**
 * Where vinegar and peroxide tend to when they stand together: the peracetic acid that stings.
 *
 * Formula  x w = K (a − x)(p − x), water w being in plenty
 * Units    mol/L; mg/L of peracetic acid (76.05 g/mol)
 * Holds    after weeks at room temperature; in an evening a dilute mix makes a small part of it.
 * Error    the constant is known to about a factor of 1.5.
 *
 * @throws {OutOfDomain} notFinite, negative, notPositive
 * @source peracetic-article: slow equilibrium (second hand); general-chemistry: constant about 2.5 (from memory)
 * @example peraceticEquilibrium({ aceticMolar: 2, peroxideMolar: 2, constant: 1, waterMolar: 3 }).molar // 0.62771868
 */
export function peraceticEquilibrium(input: PeraceticEquilibriumInput): PeraceticEquilibrium {
  const { aceticMolar, peroxideMolar, constant = 2.5, waterMolar = 55 } = input;
  requireNotNegative({ aceticMolar, peroxideMolar });
  requirePositive({ constant, waterMolar });
  // K x² − (K (a + p) + w) x + K a p = 0, its smaller root in the form that keeps its digits.
  const half = (constant * (aceticMolar + peroxideMolar) + waterMolar) / 2;
  const product = constant * aceticMolar * peroxideMolar;
  const molar = product / (half + Math.sqrt(half * half - constant * product));
  return { molar, mgPerL: molar * massOf("C2H4O3") * 1000 };
}
