import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requirePositive } from "../errors/require.ts";
import { linearOf, type ToneCurve } from "./toneCurve.ts";

/** How codes stand for light: a named curve, a gamma, or the points of a profile's curve at even steps of code. */
export type CodeTone =
  | { readonly curve: ToneCurve }
  | { readonly gamma: number }
  | { readonly points: readonly number[] };

export interface LinearTableInput {
  readonly tone: CodeTone;
  readonly maxCode: number;
}

/**
 * The light each code of a picture stands for.
 *
 * Method   the curve named, code^gamma, or a profile's points joined by straight lines, at every code from 0 to the highest.
 * Units    shares of the light of the highest code, 0 to 1.
 * Holds    for codes of 8 or 16 bits.
 * Error    none of its own.
 *
 * @throws {OutOfDomain} notPositive, tooFew, outOfRange, notFinite
 * @source srgb: transfer curve (seen)
 * @example [...linearTable({ tone: { gamma: 2 }, maxCode: 4 })] // [0, 0.0625, 0.25, 0.5625, 1]
 */
export function linearTable({ tone, maxCode }: LinearTableInput): Float64Array {
  requirePositive({ maxCode });
  if (maxCode > 65535) throw new OutOfDomain("outOfRange", { maxCode, least: 1, most: 65535 });
  const table = new Float64Array(maxCode + 1);
  if ("curve" in tone) for (let code = 0; code <= maxCode; code++) table[code] = linearOf(tone.curve, code / maxCode);
  else if ("gamma" in tone) {
    requirePositive({ gamma: tone.gamma });
    for (let code = 0; code <= maxCode; code++) table[code] = (code / maxCode) ** tone.gamma;
  } else {
    const { points } = tone;
    if (points.length < 2) throw new OutOfDomain("tooFew", { points: points.length, least: 2 });
    for (let code = 0; code <= maxCode; code++) {
      const at = (code / maxCode) * (points.length - 1);
      const k = Math.min(points.length - 2, Math.floor(at));
      table[code] = (points[k] ?? 0) + ((points[k + 1] ?? 0) - (points[k] ?? 0)) * (at - k);
    }
  }
  return table;
}
