import { glassOf, type LensGlass, variableContrastParts } from "./paperResponse.ts";
import { sourceSpectrum } from "./sourceSpectrum.ts";
import { sumOfProducts } from "./spectralGrid.ts";
import type { SourceInput } from "./spectrum.ts";

export interface ContrastSpreadInput extends SourceInput {
  readonly lens?: LensGlass;
}

/**
 * How far a light parts the emulsions of a variable-contrast paper: 0 is the hardest it can print, larger is softer.
 *
 * Formula  log10(H₃ / H₁)  with  Hᵢ = Σ S τ σᵢ,  σᵢ = bromide + gᵢ · green,  g = 0.003, 0.03, 0.30.
 * Units    log10 units of exposure; summed from 350 to 780 nm in steps of 10 nm.
 * Holds    for papers of three emulsions; of two, the first and the last.
 * Error    the g are assumptions: compare lights with it, do not read a grade from it.
 *
 * @throws {OutOfDomain} unknownWord, cctOutOfRange
 * @source cie-15: illuminants (second hand); iso-6728: standard lens (seen); none: emulsions (from memory)
 * @example contrastSpread({ source: "daylight:5500" }) // 0.13818418, in log10 units
 */
export function contrastSpread({ source, lens = "standard" }: ContrastSpreadInput): number {
  const light = sourceSpectrum(source, "source");
  const glass = glassOf(lens);
  const [hard, , soft] = variableContrastParts;
  return Math.log10(sumOfProducts(light, glass, soft) / sumOfProducts(light, glass, hard));
}
