import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite } from "../errors/require.ts";

export interface FlatFieldInput {
  /** Linear codes of one place: of the print, of the capped lens, and of an even card framed the same. */
  readonly sample: number;
  readonly dark: number;
  readonly flat: number;
  readonly flatDensity: number;
}

/**
 * Density from a photograph of a print and one of a plain card in its place: uneven light falls out.
 *
 * Formula  D = D_card − log10((sample − dark) / (flat − dark)).
 * Units    linear codes, as a raw file has them; densities.
 * Holds    two lamps at 45°, the card matt like the print, nothing moved between the two.
 * Error    ± 0.03 and more unless checked on a grey scale: the lens adds a veil.
 *
 * @throws {OutOfDomain} atOrBelowBlack, notFinite
 * @source none: common practice of reproduction (flat field and dark frame)
 * @example flatField({ sample: 8200, dark: 512, flat: 52000, flatDensity: 0.05 }) // 0.8758926
 */
export function flatField({ sample, dark, flat, flatDensity }: FlatFieldInput): number {
  requireFinite({ sample, dark, flat, flatDensity });
  if (flat <= dark) throw new OutOfDomain("atOrBelowBlack", { flat, dark });
  if (sample <= dark) throw new OutOfDomain("atOrBelowBlack", { sample, dark });
  return flatDensity - Math.log10((sample - dark) / (flat - dark));
}
