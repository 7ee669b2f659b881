import { requireNotNegative, requirePositive } from "../errors/require.ts";

export interface ScreenIlluminanceInput {
  readonly luminanceCdM2: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly distanceMm: number;
}

/**
 * How much light an evenly lit screen throws on a sheet that faces it.
 *
 * Formula  E = π L r² / (r² + d²), r² = w h / π: a disc of the area of the screen.
 * Units    E in lx; L in cd/m²; w, h and the distance d in mm.
 * Holds    in front of its middle, for a screen that shines evenly to all sides; from the side it is less.
 * Error    disc for rectangle: for a phone 4 % too much at one long side, 0.5 % at half a metre; real screens are dimmer to the side.
 *
 * @throws {OutOfDomain} negative, notPositive
 * @source photometry: illuminance on the axis of an even disc, π L sin² of its half angle (from memory)
 * @example screenIlluminance({ luminanceCdM2: 0.05, widthMm: 70, heightMm: 150, distanceMm: 500 }) // 0.002072295, in lx
 */
export function screenIlluminance(input: ScreenIlluminanceInput): number {
  const { luminanceCdM2, widthMm, heightMm, distanceMm } = input;
  requireNotNegative({ luminanceCdM2 });
  requirePositive({ widthMm, heightMm, distanceMm });
  const radiusSquared = (widthMm * heightMm) / Math.PI;
  return (Math.PI * luminanceCdM2 * radiusSquared) / (radiusSquared + distanceMm ** 2);
}
