import { requireFinite, requirePositive, requireWithin } from "../errors/require.ts";

export interface PictureLuminanceInput {
  /** As the picture's own data say: what was used, not what was set. */
  readonly fNumber: number;
  readonly timeS: number;
  readonly iso: number;
  readonly relativeLuminance: number;
  /** From one comparison with a meter, see `pictureOffset`. */
  readonly offsetStops?: number;
  readonly exposureConstant?: number;
}

/**
 * How bright an area is, from a phone's photograph of it.
 *
 * Formula  L = (10 / (q · S)) · (N² / t) · (Y / 0.18) · 2^o.
 * Units    L in cd/m²; t in s; o in stops; N, S, Y (0.18 is code 118) and the exposure constant q have none.
 * Holds    for one plain exposure in sRGB, Y above 0 and up to 1; not for pictures merged of several or with digital gain.
 * Error    sd 0.7 stop uncalibrated; 0.2 stop at codes 90 to 170 once o is known, 0.15 more for each stop from there.
 *
 * @throws {OutOfDomain} notPositive, outOfRange, notFinite
 * @source iso-12232: S = 10 / H for the code of 0.18 (second hand); srgb: 0.18 is code 118 (seen)
 * @example pictureLuminance({ fNumber: 1.8, timeS: 0.01, iso: 50, relativeLuminance: 0.18 }) // 99.692308, in cd/m²
 */
export function pictureLuminance({
  fNumber,
  timeS,
  iso,
  relativeLuminance,
  offsetStops = 0,
  exposureConstant = 0.65,
}: PictureLuminanceInput): number {
  requirePositive({ fNumber, timeS, iso, relativeLuminance });
  requireWithin({ relativeLuminance }, { least: 0, most: 1 });
  requireFinite({ offsetStops });
  requirePositive({ exposureConstant });
  return (10 / (exposureConstant * iso)) * (fNumber ** 2 / timeS) * (relativeLuminance / 0.18) * 2 ** offsetStops;
}
