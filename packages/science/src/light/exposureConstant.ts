import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requirePositive, requireWithin } from "../errors/require.ts";

export interface ExposureConstantInput {
  readonly transmission?: number;
  readonly vignetting?: number;
  readonly offAxisDeg?: number;
}

/**
 * The share q that links the luminance of a subject with the light on the paper behind the lens.
 *
 * Formula  q = (π / 4) · T · V · cos⁴ θ.
 * Units    q, T (transmission) and V (vignetting) have none; θ, off the axis, in degrees.
 * Holds    for T and V up to 1 and θ from 0 to below 90. The usual figures give 0.652, in round terms 0.65: a meter's K
 *          already supposes T = 0.90, so only what differs from that is charged to a lens.
 * Error    an uncoated lens of four glasses has T near 0.68: 0.4 stop.
 *
 * @throws {OutOfDomain} notPositive, transmissionOutOfRange, outOfRange, offAxisAngle
 * @source iso-12232: q and its usual figures, 2006 edition as documented by colour-hdri (second hand)
 * @example exposureConstant({}) // 0.65157483
 */
export function exposureConstant({
  transmission = 0.9,
  vignetting = 0.98,
  offAxisDeg = 10,
}: ExposureConstantInput): number {
  requirePositive({ transmission });
  requireWithin({ transmission }, { least: 0, most: 1, code: "transmissionOutOfRange" });
  requirePositive({ vignetting });
  requireWithin({ vignetting }, { least: 0, most: 1 });
  requireFinite({ offAxisDeg });
  if (offAxisDeg < 0 || offAxisDeg >= 90) throw new OutOfDomain("offAxisAngle", { offAxisDeg });
  return (Math.PI / 4) * transmission * vignetting * Math.cos((offAxisDeg * Math.PI) / 180) ** 4;
}
