import { requireFinite, requirePositive } from "../errors/require.ts";
import { requireBath } from "./requireBath.ts";
import { requireQ10 } from "./requireQ10.ts";

export interface DevelopmentTimeInput {
  /** The time at the reference temperature. */
  readonly timeS: number;
  readonly bathC: number;
  readonly referenceC?: number;
  /** How many times faster the bath works when it is 10 °C warmer. */
  readonly q10?: number;
}

/**
 * How long to develop in a bath that is warmer or colder than the recipe says.
 *
 * Formula  t = t₀ Q₁₀^((T₀ − T) / 10).
 * Units    t, t₀ in s; T, T₀ in °C; Q₁₀ has none.
 * Holds    from 14 to 28 °C: below, hydroquinone is nearly idle; above, gelatin softens and fog grows.
 * Error    Q₁₀ is 1.3 for metol alone, about 2 for the usual mixture, up to 2.8 rich in hydroquinone: 4 °C off costs 11 to 51 %.
 *
 * @throws {OutOfDomain} notPositive, temperatureOutOfRange, outOfRange
 * @source q10-page: a factor of two in 10 °C, 1.5 to 4 seen (seen)
 * @example developmentTime({ timeS: 90, bathC: 24 }) // 68.2072348, in s
 */
export function developmentTime({ timeS, bathC, referenceC = 20, q10 = 2 }: DevelopmentTimeInput): number {
  requirePositive({ timeS });
  requireBath({ bathC });
  requireFinite({ referenceC });
  requireQ10({ q10 });
  return timeS * q10 ** ((referenceC - bathC) / 10);
}
