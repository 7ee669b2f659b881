import { glassOf, type LensGlass, type PaperSensitivity, paperResponse } from "./paperResponse.ts";
import { sourceSpectrum } from "./sourceSpectrum.ts";
import { observer, sumOfProducts } from "./spectralGrid.ts";

export interface ActinicStopsInput {
  /** "illuminantA", "filament:2700", "daylight:6500" or "whiteLed:4000". */
  readonly source: string;
  readonly paper?: PaperSensitivity;
  readonly lens?: LensGlass;
  /** The light in which paper and meter agree. */
  readonly reference?: string;
}

/**
 * How many stops more a paper sees of a light than the meter does, compared with daylight.
 *
 * Formula  A = log2( (Σ S τ σ / Σ S V) / (Σ R τ σ / Σ R V) ), with S the light, R the reference, τ the glass, σ the paper,
 *          V the eye (ȳ of the 1931 observer), summed from 350 to 780 nm in steps of 10 nm. The cap time goes with 2^−A.
 * Units    A in stops; S and R relative energy, τ, σ and V relative, all by wavelength in nm.
 * Holds    for a meter that sees as the eye does; light below 350 nm is left out, which matters to a pinhole only.
 *          Beyond ±4 stops it is the tail of a model: take it as a bound.
 * Error    see `actinicSd`: 0.15 stop for filament and daylight, up to 0.9 for a white LED, whose blue lies where the paper
 *          is falling off. The edges of σ are assumptions of ±10 nm.
 *
 * @throws {OutOfDomain} unknownWord, cctOutOfRange
 * @source cie-15: illuminants and V (second hand); iso-6728: standard lens (seen); jin-2013: shape of the LED (second hand); none: paper edges (from memory)
 * @example actinicStops({ source: "illuminantA", paper: "bromide" }) // -1.6704108, in stops
 */
export function actinicStops({
  source,
  paper = "chlorobromide",
  lens = "standard",
  reference = "daylight:5500",
}: ActinicStopsInput): number {
  const light = sourceSpectrum(source, "source");
  const response = paperResponse(paper);
  const glass = glassOf(lens);
  const known = sourceSpectrum(reference, "reference");
  const seenByPaper = sumOfProducts(light, glass, response) / sumOfProducts(known, glass, response);
  const seenByMeter = sumOfProducts(light, observer.y) / sumOfProducts(known, observer.y);
  return Math.log2(seenByPaper / seenByMeter);
}
