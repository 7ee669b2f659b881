import { requireNotNegative, requirePositive } from "../errors/index.ts";
import { massOf } from "./massOf.ts";
import { requireAtMost } from "./requireAtMost.ts";

export interface ReturnedHalideShareInput {
  readonly areaM2: number;
  /** Liquid that a square metre of wet paper brings along. */
  readonly carryMlM2: number;
  /** Bath that is there for one sheet. */
  readonly bathMlPerSheet: number;
  readonly coatGM2?: number;
  /** Bromide of the liquid that is carried in. */
  readonly bromideMolar?: number;
  readonly waterChlorideMgL?: number;
  /** Share of the bath's chloride that comes to this sheet. */
  readonly bathShare?: number;
}

export interface ReturnedHalideShare {
  readonly silverMmol: number;
  readonly halideMmol: number;
  readonly share: number;
}

/**
 * How much of a sheet's silver may come back as halide in the bleach, and so as grey in the whites.
 *
 * Formula  share = min(1, (A v c(Br) + V b · chloride / 35.45) / (A coat / 107.8682))
 * Units    m², mL/m², mL, g/m², mol/L, mg/L; amounts in mmol
 * Holds    as an upper bound: every halide that is brought is taken to meet silver.
 * Error    a factor of two, as carry-over and coating are.
 *
 * @throws {OutOfDomain} notFinite, notPositive, negative, outOfRange
 * @source general-chemistry: silver halides fall out (from memory); coating-post: 1.5 g/m² (seen)
 * @example returnedHalideShare({ areaM2: 0.01, carryMlM2: 100, bathMlPerSheet: 0, coatGM2: 1.078682, bromideMolar: 0.02 }).share // 0.2
 */
export function returnedHalideShare(input: ReturnedHalideShareInput): ReturnedHalideShare {
  const { areaM2, carryMlM2, bathMlPerSheet, coatGM2 = 1.5 } = input;
  const { bromideMolar = 0, waterChlorideMgL = 0, bathShare = 0 } = input;
  requirePositive({ areaM2, coatGM2 });
  requireNotNegative({ carryMlM2, bathMlPerSheet, bromideMolar, waterChlorideMgL });
  requireAtMost(1, { bathShare });
  const silverMmol = (areaM2 * coatGM2 * 1000) / massOf("Ag");
  const chlorideMmol = ((bathMlPerSheet / 1000) * waterChlorideMgL * bathShare) / massOf("Cl");
  const halideMmol = areaM2 * carryMlM2 * bromideMolar + chlorideMmol;
  return { silverMmol, halideMmol, share: Math.min(1, halideMmol / silverMmol) };
}
