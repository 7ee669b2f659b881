import { requireNotNegative } from "../errors/require.ts";
import { requireFraction } from "./requireFraction.ts";

export interface FlareExposureInput {
  readonly meanExposureLxS: number;
  readonly fraction: number;
}

/**
 * The even veil of stray light over the whole sheet, from lens and camera walls.
 *
 * Formula  H_flare = φ · H̄.
 * Units    H_flare and the mean image exposure of the frame H̄ in lx·s; φ has none.
 * Holds    for 0 ≤ φ < 1; a coated lens 0.01 to 0.03, an old uncoated one 0.03 to 0.10.
 * Error    a bright window in the frame can double φ.
 *
 * @throws {OutOfDomain} negative, outOfRange
 * @source none: fractions of the mean exposure (common practice)
 * @example flareExposure({ meanExposureLxS: 16, fraction: 0.02 }) // 0.32, in lx·s
 */
export function flareExposure({ meanExposureLxS, fraction }: FlareExposureInput): number {
  requireNotNegative({ meanExposureLxS });
  requireFraction({ fraction });
  return fraction * meanExposureLxS;
}
