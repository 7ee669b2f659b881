import { requireFinite, requirePositive } from "../errors/require.ts";
import { gaussLegendre } from "../numbers/gaussLegendre.ts";
import { requireQ10 } from "./requireQ10.ts";

export interface DriftEffectiveTimeInput {
  readonly timeS: number;
  readonly startC: number;
  readonly airC: number;
  /** How long the bath takes to come to 37 % of the difference: 20 to 60 min for a litre in a plastic tray. */
  readonly timeConstantS: number;
  readonly referenceC?: number;
  readonly q10?: number;
}

/** Beyond so many time constants the bath has the temperature of the air to the last digit. */
const settled = 40;
const nodes = gaussLegendre(16);

/**
 * What a time in a bath that cools or warms while it works is worth at the reference temperature.
 *
 * Formula  t* = ∫ Q₁₀^((T(t) − T₀) / 10) dt  with  T(t) = T_air + (T_start − T_air) e^(−t / τ).
 * Units    t, t*, τ in s; temperatures in °C; Q₁₀ has none.
 * Holds    for a bath that only the air and the table change; a water jacket or a hand in it is not in the model.
 * Error    τ is 20 to 60 min for half a litre to a litre in a plastic tray (assumed): 3 min at 8 °C above the air differ by 1.5 to 4 %.
 *
 * @throws {OutOfDomain} notPositive, outOfRange
 * @source none: Newton's law of cooling under the factor for 10 °C (by hand)
 * @example driftEffectiveTime({ timeS: 180, startC: 20, airC: 12, timeConstantS: 1800 }) // 175.256, in s
 */
export function driftEffectiveTime(input: DriftEffectiveTimeInput): number {
  const { timeS, startC, airC, timeConstantS, referenceC = 20, q10 = 2 } = input;
  requirePositive({ timeS });
  requireFinite({ startC, airC });
  requirePositive({ timeConstantS });
  requireFinite({ referenceC });
  requireQ10({ q10 });
  const rate = (bathC: number) => q10 ** ((bathC - referenceC) / 10);
  const spans = Math.min(timeS / timeConstantS, settled);
  const panels = Math.max(1, Math.ceil(spans * 4));
  let sum = 0;
  for (let panel = 0; panel < panels; panel += 1) {
    for (const [index, at] of nodes.at.entries()) {
      const passed = ((panel + at) * spans) / panels;
      sum += (nodes.weight[index] ?? 0) * rate(airC + (startC - airC) * Math.exp(-passed));
    }
  }
  const driftingS = spans * timeConstantS;
  return (sum / panels) * driftingS + Math.max(0, timeS - driftingS) * rate(airC);
}
