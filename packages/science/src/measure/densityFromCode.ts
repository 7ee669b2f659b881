import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requirePositive, requireWithin } from "../errors/require.ts";
import { linearOf, type ToneCurve } from "./toneCurve.ts";

export interface DensityFromCodeInput {
  readonly code: number;
  /** The highest code: 255 or 65535. */
  readonly maxCode: number;
  readonly curve: ToneCurve;
  /** Linear light of a known black and of the paper's white, as shares of the highest code's. */
  readonly black?: number;
  readonly white?: number;
  /** Density of what `white` was read on. */
  readonly whiteDensity?: number;
}

/**
 * Scan density from the code of a pixel.
 *
 * Formula  D = D_white − log10((lin(code / maxCode) − black) / (white − black)).
 * Units    codes as the file has them; black and white as linear light, 0 to 1; densities.
 * Holds    for a scanner or camera whose codes follow the curve named. A flatbed lights from one or two sides through glass:
 *          this is a scan density, no ISO 5-4 reading.
 * Error    ± 0.02 at best where the curve is known; an assumed curve may be off by some tenths in the blacks.
 *
 * @throws {OutOfDomain} codeOutOfRange, atOrBelowBlack, notPositive, notFinite
 * @source iso-5: reflection density (scope seen); srgb: transfer curve (seen)
 * @example densityFromCode({ code: 118, maxCode: 255, curve: "srgb" }) // 0.7419275
 */
export function densityFromCode({
  code,
  maxCode,
  curve,
  black = 0,
  white = 1,
  whiteDensity = 0,
}: DensityFromCodeInput): number {
  requirePositive({ maxCode });
  requireFinite({ black, white, whiteDensity });
  requireWithin({ code }, { least: 0, most: maxCode, code: "codeOutOfRange" });
  const share = (linearOf(curve, code / maxCode) - black) / (white - black);
  if (!(share > 0) || !Number.isFinite(share)) throw new OutOfDomain("atOrBelowBlack", { code, black, white });
  return whiteDensity - Math.log10(share);
}
