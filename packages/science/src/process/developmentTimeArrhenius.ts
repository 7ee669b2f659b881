import { requirePositive } from "../errors/require.ts";
import { gasConstant } from "./gasConstant.ts";
import { requireBath } from "./requireBath.ts";
import { requireKelvin, zeroC } from "./requireKelvin.ts";

export interface DevelopmentTimeArrheniusInput {
  /** The time at the reference temperature. */
  readonly timeS: number;
  readonly bathC: number;
  readonly referenceC?: number;
  readonly activationJMol: number;
}

/**
 * How long to develop in a bath that is warmer or colder than the recipe says, by the energy of activation.
 *
 * Formula  t = t₀ exp[(E / R)(1/T − 1/T₀)].
 * Units    t, t₀ in s; temperatures given in °C, reckoned in K; E in J/mol; R = 8.314462618 J/(mol K).
 * Holds    from 14 to 28 °C.
 * Error    against a constant factor for 10 °C it differs by at most 1.6 % within 4 °C of the reference.
 *
 * @throws {OutOfDomain} notPositive, temperatureOutOfRange
 * @source arrhenius: k ∝ exp(−E / RT) (from memory); codata: R (from memory)
 * @example developmentTimeArrhenius({ timeS: 90, bathC: 24, activationJMol: 51216.2 }) // 67.8265, in s
 */
export function developmentTimeArrhenius(input: DevelopmentTimeArrheniusInput): number {
  const { timeS, bathC, referenceC = 20, activationJMol } = input;
  requirePositive({ timeS });
  requireBath({ bathC });
  requireKelvin({ referenceC });
  requirePositive({ activationJMol });
  return timeS * Math.exp((activationJMol / gasConstant) * (1 / (bathC + zeroC) - 1 / (referenceC + zeroC)));
}
