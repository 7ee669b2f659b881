import { requireSunUp } from "./requireSunUp.ts";
import { requireWord } from "./requireWord.ts";

export type AirMassRule = "kastenYoung" | "secant";

export interface AirMassInput {
  readonly altitudeDeg: number;
  readonly airMassRule?: AirMassRule;
}

/**
 * Through how many heights of air the sun shines.
 *
 * Formula  M = 1 / (sin a + 0.50572 · (a + 6.07995)^−1.6364) by default; 1 / sin a by the rule "secant".
 * Units    M has none; a, the altitude of the sun, in degrees.
 * Holds    for a above 0 and up to 90; at the horizon the default tends to 38, the secant to infinity.
 * Error    the secant is right to 1 % above 15° and twice too large at 2°.
 *
 * @throws {OutOfDomain} sunBelowHorizon, outOfRange, unknownWord
 * @source kasten-young-1989: the default (second hand); ies-1984: 1 / sin a (second hand)
 * @example airMass({ altitudeDeg: 30 }) // 1.9942929
 */
export function airMass({ altitudeDeg, airMassRule = "kastenYoung" }: AirMassInput): number {
  requireSunUp({ altitudeDeg });
  requireWord({ airMassRule }, ["kastenYoung", "secant"]);
  const sine = Math.sin((altitudeDeg * Math.PI) / 180);
  return airMassRule === "secant" ? 1 / sine : 1 / (sine + 0.50572 * (altitudeDeg + 6.07995) ** -1.6364);
}
