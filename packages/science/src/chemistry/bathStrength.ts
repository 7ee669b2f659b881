import { requireNotNegative, requirePositive } from "../errors/index.ts";

export interface BathStrengthInput {
  readonly ageH: number;
  /** Hours in which an open tray loses half its strength unused. */
  readonly halfLifeH: number;
  /** Paper that went through. */
  readonly areaM2: number;
  readonly volumeL: number;
  /** Paper to a litre that halves the strength. */
  readonly halfAreaM2L: number;
}

export interface BathStrength {
  readonly halvings: number;
  readonly strength: number;
  /** How many times longer it now takes. */
  readonly timeFactor: number;
}

/**
 * How strong a bath still is, by its age and the paper that went through it.
 *
 * Formula  n = t / t½ + (A / V) / a½,  strength = 2^−n,  time factor = 2^n
 * Units    h, m², L, m²/L; strength is a share of that when fresh
 * Holds    as an assumed model, to be corrected by strips: worn at n = 1, to be replaced at 1.5.
 * Error    each half is known to a factor of two (0.7 in its logarithm) until strips have told.
 *
 * @throws {OutOfDomain} notFinite, notPositive, negative
 * @source none: an assumed model (common practice)
 * @example bathStrength({ ageH: 2, halfLifeH: 4, areaM2: 0.25, volumeL: 1, halfAreaM2L: 0.5 }).strength // 0.5
 */
export function bathStrength(input: BathStrengthInput): BathStrength {
  const { ageH, halfLifeH, areaM2, volumeL, halfAreaM2L } = input;
  requireNotNegative({ ageH, areaM2 });
  requirePositive({ halfLifeH, volumeL, halfAreaM2L });
  const halvings = ageH / halfLifeH + areaM2 / volumeL / halfAreaM2L;
  return { halvings, strength: 2 ** -halvings, timeFactor: 2 ** halvings };
}
