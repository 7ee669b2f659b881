import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireNotNegative, requirePositive, requireWithin } from "../errors/require.ts";

export interface RemoveVeilInput {
  readonly apparent: number;
  /** Share of the whole page's light that lies over every part of it. */
  readonly share: number;
  readonly meanReflectance: number;
}

/**
 * The reflectance of a patch below an even veil of stray light.
 *
 * Formula  R = (apparent − f R̄) / (1 − f).
 * Units    reflectances, 0 to 1; f is a share.
 * Holds    lenses and glass plates; the veil, not the paper, often sets the blackest black a scan can show.
 * Error    f ± 0.003 is ± 0.07 in D at D 1.8.
 *
 * @throws {OutOfDomain} atOrBelowBlack, outOfRange, negative, notPositive, notFinite
 * @source none: conservation of light, R' = (1 − f) R + f R̄
 * @example removeVeil({ apparent: 0.0148, share: 0.01, meanReflectance: 0.5 }) // 0.00989898990
 */
export function removeVeil({ apparent, share, meanReflectance }: RemoveVeilInput): number {
  requirePositive({ apparent });
  requireNotNegative({ share, meanReflectance });
  requireWithin({ meanReflectance }, { least: 0, most: 1 });
  if (share >= 1) throw new OutOfDomain("outOfRange", { share, least: 0, below: 1 });
  const reflectance = (apparent - share * meanReflectance) / (1 - share);
  if (reflectance <= 0) throw new OutOfDomain("atOrBelowBlack", { apparent, share, meanReflectance });
  return reflectance;
}
