import { requirePositive } from "../errors/index.ts";
import { massOf } from "./massOf.ts";

export interface SheetSilverInput {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Silver of the coating. */
  readonly coatGM2?: number;
}

export interface SheetSilver {
  readonly areaM2: number;
  readonly silverMg: number;
  readonly silverMmol: number;
  /** What dissolving all of it takes: half a peroxide and one acid to a silver. */
  readonly peroxideMmol: number;
  readonly peroxideMg: number;
  readonly acidMmol: number;
}

/**
 * The silver of a sheet, and the least peroxide and acid that could dissolve all of it.
 *
 * Formula  2 Ag + H2O2 + 2 H⁺ → 2 Ag⁺ + 2 H2O
 * Units    mm, g/m², m², mg, mmol
 * Holds    for the whole coating; a bleach meets 30 to 70 % of it. Says nothing of how long a bath lasts.
 * Error    the coating is known to a factor of 1.6 at best (0.5 to 1.6 g/m², some 3).
 *
 * @throws {OutOfDomain} notFinite, notPositive
 * @source coating-post: 1.5 g/m² (seen); general-chemistry: the equation (from memory)
 * @example sheetSilver({ widthMm: 100, heightMm: 100, coatGM2: 1.078682 }).silverMmol // 0.1
 */
export function sheetSilver({ widthMm, heightMm, coatGM2 = 1.5 }: SheetSilverInput): SheetSilver {
  requirePositive({ widthMm, heightMm, coatGM2 });
  const areaM2 = (widthMm * heightMm) / 1e6;
  const silverMg = areaM2 * coatGM2 * 1000;
  const silverMmol = silverMg / massOf("Ag");
  const peroxideMmol = silverMmol / 2;
  return {
    areaM2,
    silverMg,
    silverMmol,
    peroxideMmol,
    peroxideMg: peroxideMmol * massOf("H2O2"),
    acidMmol: silverMmol,
  };
}
