import { requireNotNegative, requirePositive } from "../errors/index.ts";
import { requireAtMost } from "./requireAtMost.ts";

export interface FixerSilverInput {
  /** All paper that went through. */
  readonly areaM2: number;
  /** Share of its silver that was not developed. */
  readonly undevelopedShare: number;
  readonly volumeL: number;
  readonly coatGM2?: number;
}

/**
 * How much silver a fixer holds by now.
 *
 * Formula  c = A · coat · (share not developed) / V
 * Units    g/L; m², g/m², L
 * Holds    where the bath keeps its volume. Two practice pages: up to 2 g/L in a first of two baths, 0.5 g/L in a single one.
 *
 * @throws {OutOfDomain} notFinite, notPositive, negative, outOfRange
 * @source none: what goes in stays in (by hand); coating-post: 1.5 g/m² (seen)
 * @example fixerSilver({ areaM2: 1, undevelopedShare: 0.6, volumeL: 2 }) // 0.45
 */
export function fixerSilver({ areaM2, undevelopedShare, volumeL, coatGM2 = 1.5 }: FixerSilverInput): number {
  requireNotNegative({ areaM2 });
  requireAtMost(1, { undevelopedShare });
  requirePositive({ volumeL, coatGM2 });
  return (areaM2 * coatGM2 * undevelopedShare) / volumeL;
}
