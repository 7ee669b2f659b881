import { requirePositive } from "../errors/require.ts";

export interface PictureOffsetInput {
  readonly meterCdM2: number;
  readonly pictureCdM2: number;
}

/**
 * What to add to a phone's luminances, from one patch that a meter has read in the same light.
 *
 * Formula  o = log2(L of the meter / L of the picture).
 * Units    o in stops; both L in cd/m².
 * Holds    for the phone set the same way, the patch at codes 100 to 160.
 * Error    the sd of one comparison / √n for the mean of n.
 *
 * @throws {OutOfDomain} notPositive
 * @source none: a ratio in stops (by hand)
 * @example pictureOffset({ meterCdM2: 250, pictureCdM2: 190 }) // 0.39592868, in stops
 */
export function pictureOffset({ meterCdM2, pictureCdM2 }: PictureOffsetInput): number {
  requirePositive({ meterCdM2, pictureCdM2 });
  return Math.log2(meterCdM2 / pictureCdM2);
}
