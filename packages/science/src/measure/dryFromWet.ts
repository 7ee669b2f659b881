import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite } from "../errors/require.ts";

export interface DryFromWetInput {
  readonly wetDensity: number;
  /** Wet densities, rising, at which the person's own pairs of prints say the shift. */
  readonly knots: readonly number[];
  readonly shifts: readonly number[];
}

/**
 * The density a wet print will have when dry, by a person's own pairs.
 *
 * Formula  D_dry = D_wet + δ(D_wet), δ straight between the knots and level beyond them.
 * Units    densities.
 * Holds    for the paper the pairs were made on: fibre darkens as it dries, plastic-coated paper hardly.
 * Error    that of the pairs; ± 0.02 at best.
 *
 * @throws {OutOfDomain} tooFew, listsDiffer, notRising, notFinite
 * @source none: common practice (a person's own pairs, joined by straight lines)
 * @example dryFromWet({ wetDensity: 0.3, knots: [0.1, 0.5], shifts: [0.04, 0.02] }) // 0.33
 */
export function dryFromWet({ wetDensity, knots, shifts }: DryFromWetInput): number {
  requireFinite({ wetDensity });
  if (knots.length !== shifts.length) {
    throw new OutOfDomain("listsDiffer", { knots: knots.length, shifts: shifts.length }, "shifts");
  }
  if (knots.length === 0) throw new OutOfDomain("tooFew", { knots: 0, least: 1 });
  for (const [i, knot] of knots.entries()) {
    requireFinite({ knots: knot, shifts: shifts[i] ?? Number.NaN });
    if (i > 0 && knot <= (knots[i - 1] ?? 0)) throw new OutOfDomain("notRising", { knots: knot });
  }
  const after = knots.findIndex((knot) => knot > wetDensity);
  if (after === 0) return wetDensity + (shifts[0] ?? 0);
  if (after < 0) return wetDensity + (shifts.at(-1) ?? 0);
  const [from = 0, to = 1] = [knots[after - 1], knots[after]];
  const [low = 0, high = 0] = [shifts[after - 1], shifts[after]];
  return wetDensity + low + ((high - low) * (wetDensity - from)) / (to - from);
}
