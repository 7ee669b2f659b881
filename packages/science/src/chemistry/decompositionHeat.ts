import { requireNotNegative, requirePositive } from "../errors/index.ts";
import { massOf } from "./massOf.ts";
import { requireDecomposedShare } from "./requireDecomposedShare.ts";

export interface DecompositionHeatInput {
  readonly percentWv: number;
  readonly decomposedShare: number;
  readonly heatKJMol?: number;
}

/** Heat to warm a litre of dilute bath by 1 K, kJ. */
const WATER_KJ_L_K = 4.18;

/**
 * How much warmer a peroxide bath gets when a share of it decomposes at once.
 *
 * Formula  ΔT = (10 wv / 34.014) · share · ΔH / 4.18
 * Units    K; percentWv g in 100 mL, kJ/mol
 * Holds    without loss to tray and air, and while nothing boils: 35 % boils.
 *
 * @throws {OutOfDomain} notFinite, negative, notPositive, shareOutOfRange
 * @source peroxide-heat: 98.2 kJ/mol (seen); general-chemistry: heat of water (from memory)
 * @example decompositionHeat({ percentWv: 3.4014, decomposedShare: 1, heatKJMol: 41.8 }) // 10
 */
export function decompositionHeat({ percentWv, decomposedShare, heatKJMol = 98.2 }: DecompositionHeatInput): number {
  requireNotNegative({ percentWv });
  requirePositive({ heatKJMol });
  requireDecomposedShare(decomposedShare);
  return (((10 * percentWv) / massOf("H2O2")) * decomposedShare * heatKJMol) / WATER_KJ_L_K;
}
