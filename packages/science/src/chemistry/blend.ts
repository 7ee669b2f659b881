import { OutOfDomain, requireNotNegative, requirePositive } from "../errors/index.ts";

export interface BlendInput {
  readonly firstStrength: number;
  readonly secondStrength: number;
  readonly targetStrength: number;
  readonly totalMl: number;
}

export interface Blend {
  readonly firstMl: number;
  readonly secondMl: number;
}

/**
 * How much of two strengths makes a third: the cross rule.
 *
 * Formula  V1 / V = (C − C2) / (C1 − C2)
 * Units    mL; the three strengths in one unit per volume (% w/v, g/L or mol/L), never % w/w
 * Holds    for a target between the two; volumes are taken as additive (0.5 % below strengths of 20 %).
 *
 * @throws {OutOfDomain} notFinite, negative, notPositive, targetOutsideStrengths
 * @source general-chemistry: dilution, C1 V1 = C2 V2 (from memory)
 * @example blend({ firstStrength: 5, secondStrength: 0, targetStrength: 1.5, totalMl: 1000 }) // { "firstMl": 300, "secondMl": 700 }
 */
export function blend({ firstStrength, secondStrength, targetStrength, totalMl }: BlendInput): Blend {
  requireNotNegative({ firstStrength, secondStrength, targetStrength });
  requirePositive({ totalMl });
  const least = Math.min(firstStrength, secondStrength);
  const most = Math.max(firstStrength, secondStrength);
  if (least === most || targetStrength < least || targetStrength > most) {
    throw new OutOfDomain("targetOutsideStrengths", { targetStrength, least, most });
  }
  const share = (targetStrength - secondStrength) / (firstStrength - secondStrength);
  return { firstMl: totalMl * share, secondMl: totalMl * (1 - share) };
}
