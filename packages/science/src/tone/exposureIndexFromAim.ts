import { requireFinite, requirePositive } from "../errors/require.ts";

export interface ExposureIndexFromAimInput {
  /** The exposure that prints the aimed-at density. */
  readonly aimLxS: number;
  /** How far above mid the aim is placed. */
  readonly placeStops?: number;
  readonly meterK?: number;
  readonly exposureConstant?: number;
}

/**
 * The exposure index at which a tone placed so many stops above mid receives the exposure aimed at.
 *
 * Formula  EI = q · K · 2^k / H_aim, for a negative and for a direct positive alike.
 * Units    H_aim in lx·s under the light of the scene; k in stops; K in cd·s/m²; q and EI have none
 * Holds    where H_aim was found under the light of the scene.
 * Error    within about a stop of the truth until a sheet has been measured: a prior of 0.7 stop (sd).
 *
 * @throws {OutOfDomain} notPositive, notFinite
 * @source iso-12232: camera equation (second hand); iso-2720: meter constant (second hand); none: their combination (by hand)
 * @example exposureIndexFromAim({ aimLxS: 2.5 }) // 3.25
 */
export function exposureIndexFromAim({
  aimLxS,
  placeStops = 0,
  meterK = 12.5,
  exposureConstant = 0.65,
}: ExposureIndexFromAimInput): number {
  requirePositive({ aimLxS });
  requireFinite({ placeStops });
  requirePositive({ meterK, exposureConstant });
  return (exposureConstant * meterK * 2 ** placeStops) / aimLxS;
}
