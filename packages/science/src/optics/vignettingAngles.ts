import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requirePositive } from "../errors/require.ts";

export interface VignettingAnglesInput {
  /** Clear diameter of the glass. */
  readonly glassMm: number;
  readonly holeMm: number;
  readonly stopDistanceMm: number;
}

export interface VignettingAngles {
  /** Up to here the whole hole is filled with light. */
  readonly fullDeg: number;
  /** From here on nothing passes both. */
  readonly noneDeg: number;
}

/**
 * Where a stop that stands away from the glass begins to darken the corners, and where it shuts them out.
 *
 * Formula  tan(full) = (g − h) / (2 d),  tan(none) = (g + h) / (2 d)
 * Units    g (clear glass), h (hole), d (between them) in mm; angles in degrees off the axis, on the side of the stop.
 * Holds    one thin lens of clear diameter g, hole h ≤ g; rays between glass and hole.
 * Error    a real barrel or hood may cut earlier.
 *
 * @throws {OutOfDomain} stopWiderThanGlass
 * @source none: similar triangles (by hand)
 * @example vignettingAngles({ glassMm: 60, holeMm: 20, stopDistanceMm: 40 }).noneDeg // 45
 */
export function vignettingAngles({ glassMm, holeMm, stopDistanceMm }: VignettingAnglesInput): VignettingAngles {
  requirePositive({ glassMm, holeMm, stopDistanceMm });
  if (holeMm > glassMm) throw new OutOfDomain("stopWiderThanGlass", { holeMm, glassMm });
  return {
    fullDeg: degrees(Math.atan2(glassMm - holeMm, 2 * stopDistanceMm)),
    noneDeg: degrees(Math.atan2(glassMm + holeMm, 2 * stopDistanceMm)),
  };
}

function degrees(radians: number): number {
  return (radians * 180) / Math.PI;
}
