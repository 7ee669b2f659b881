import { gasConstant } from "./gasConstant.ts";
import { requireKelvin, zeroC } from "./requireKelvin.ts";
import { requireQ10 } from "./requireQ10.ts";

export interface ActivationEnergyInput {
  readonly q10: number;
  /** The colder of the two temperatures; the other is 10 °C warmer. */
  readonly fromC: number;
}

/**
 * The energy of activation behind a factor for 10 °C.
 *
 * Formula  E = R ln Q₁₀ T₁ T₂ / 10  with  T₂ = T₁ + 10 K.
 * Units    E in J/mol; T₁ given in °C, reckoned in K; Q₁₀ has none.
 * Holds    between these two temperatures; the factor of the next 10 °C is a little smaller.
 *
 * @throws {OutOfDomain} outOfRange, temperatureOutOfRange
 * @source arrhenius: of two rates at two temperatures (from memory); codata: R (from memory)
 * @example activationEnergy({ q10: 2, fromC: 20 }) // 51216.2, in J/mol
 */
export function activationEnergy({ q10, fromC }: ActivationEnergyInput): number {
  requireQ10({ q10 });
  requireKelvin({ fromC });
  const colderK = fromC + zeroC;
  return (gasConstant * Math.log(q10) * colderK * (colderK + 10)) / 10;
}
