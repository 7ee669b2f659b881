import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite } from "../errors/require.ts";

export interface LightnessInput {
  readonly density: number;
}

/**
 * How light a tone looks beside a perfect white: 100 white, 0 black, 50 half way to the eye.
 *
 * Formula  Y = 10^(−D); L* = 116 Y^(1/3) − 16 for Y > (6/29)³, else (29/3)³ Y.
 * Units    D density against the perfect diffuser; L* has none.
 * Holds    neutral tones looked at in one even light, the eye used to it.
 * Error    none of its own; 0.01 in D is 0.35 in L* at D 0.75.
 *
 * @throws {OutOfDomain} outOfRange, notFinite
 * @source cie-15: L* (second hand)
 * @example lightness({ density: 0.75 }) // 49.2315937
 */
export function lightness({ density }: LightnessInput): number {
  requireFinite({ density });
  const luminance = 10 ** -density;
  if (!Number.isFinite(luminance)) throw new OutOfDomain("outOfRange", { density, least: -308 });
  return luminance > (6 / 29) ** 3 ? 116 * Math.cbrt(luminance) - 16 : (29 / 3) ** 3 * luminance;
}
