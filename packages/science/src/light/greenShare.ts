import { glassOf, green, greenOfOrthochromatic, type LensGlass, paperResponse } from "./paperResponse.ts";
import { sourceSpectrum } from "./sourceSpectrum.ts";
import { sumOfProducts } from "./spectralGrid.ts";
import type { SourceInput } from "./spectrum.ts";

export interface GreenShareInput extends SourceInput {
  readonly lens?: LensGlass;
}

/**
 * How much of what an orthochromatic paper sees of a light is green.
 *
 * Formula  Σ S τ · 0.30 · green / Σ S τ · (bromide + 0.30 · green).
 * Units    a share from 0 to 1; summed from 350 to 780 nm in steps of 10 nm.
 * Holds    for orthochromatic papers as a class.
 * Error    a fifth of itself: an encyclopedia gives 0.25 to 0.30 in daylight and 0.50 to 0.60 under lamps.
 *
 * @throws {OutOfDomain} unknownWord, cctOutOfRange
 * @source ortho-encyclopedia: shares in daylight and under lamps (seen); none: the height 0.30 chosen for them (by hand)
 * @example greenShare({ source: "illuminantA" }) // 0.51278746
 */
export function greenShare({ source, lens = "standard" }: GreenShareInput): number {
  const light = sourceSpectrum(source, "source");
  const glass = glassOf(lens);
  return (
    (greenOfOrthochromatic * sumOfProducts(light, glass, green)) /
    sumOfProducts(light, glass, paperResponse("orthochromatic"))
  );
}
