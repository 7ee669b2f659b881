import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireNotNegative, requirePositive } from "../errors/require.ts";
import { codeValueOf, slopeOf, type ToneCurve } from "./toneCurve.ts";

export interface QuantisationInput {
  readonly density: number;
  readonly bits: 8 | 16;
  readonly curve: ToneCurve;
}

export interface Quantisation {
  readonly stepDensity: number;
  readonly rmsDensity: number;
}

/**
 * What one code is worth in density, and the error of a tone that falls anywhere between two codes.
 *
 * Formula  step = (dR/dv) / (ln 10 · N · R), rms = step / √12, with R = 10^(−D), N = 2^bits − 1 and R(v) the tone curve.
 * Units    densities.
 * Holds    for one pixel without grain. With grain of half a code or more a patch's mean is finer than this.
 * Error    none of its own; a flat dark patch in a clean 8-bit file keeps a bias up to half a step.
 *
 * @throws {OutOfDomain} negative, notPositive, outOfRange, notFinite
 * @source uniform-quantisation: error of rounding, step ÷ √12 (from memory); srgb: transfer curve (seen)
 * @example quantisation({ density: 1, bits: 8, curve: "srgb" }) // {"stepDensity": 0.010112757, "rmsDensity": 0.0029193015}
 */
export function quantisation({ density, bits, curve }: QuantisationInput): Quantisation {
  requireNotNegative({ density });
  requirePositive({ bits });
  if (bits !== 8 && bits !== 16) throw new OutOfDomain("outOfRange", { bits, least: 8, most: 16 });
  const share = 10 ** -density;
  const stepDensity = slopeOf(curve, codeValueOf(curve, share)) / (Math.LN10 * (2 ** bits - 1) * share);
  return { stepDensity, rmsDensity: stepDensity / Math.sqrt(12) };
}
