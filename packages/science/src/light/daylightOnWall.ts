import { requireFinite } from "../errors/require.ts";
import { type DaylightInput, daylight, type Sky } from "./daylight.ts";
import { requireShare } from "./requireShare.ts";

export interface DaylightOnWallInput extends DaylightInput {
  /** Between the sun and the way the wall faces, both on the compass: 0 faces the sun, 180 turns its back. */
  readonly azimuthFromSunDeg: number;
  readonly groundReflectance?: number;
}

export interface DaylightOnWall {
  readonly directLx: number;
  readonly skyLx: number;
  readonly groundLx: number;
  readonly totalLx: number;
}

/**
 * How much light sun, sky and ground give on something upright: a hull, a door, a face.
 *
 * Formula  direct · max(0, cos a · cos z)  +  half-sky  +  ρ · horizontal / 2.  Half-sky in klx, a in radians:
 *          clear (4.0 a^1.3 + 12.0 sin^0.3 a · cos^1.3 a) · (2 + cos z) / (3 − cos z);
 *          partly cloudy (12.0 a + 30.2 sin^0.8 a · cos a) · (1 + cos z) / (3 − cos z); overcast 8.5 sin a.
 * Units    the answer in lx; a, the altitude of the sun, and z, the turn from it, in degrees; ρ has none.
 * Holds    for a above 0 and up to 90, an open horizon, even ground of reflectance ρ (0.2 is bare; snow 0.8).
 * Error    sd 0.5 stop under a clear sky, 1 stop under clouds.
 *
 * @throws {OutOfDomain} sunBelowHorizon, outOfRange, wrongType, unknownWord, notFinite, negative
 * @source ies-1984: half-sky terms (second hand); none: half of what the ground throws back (by hand)
 * @example daylightOnWall({ altitudeDeg: 30, dayOfYear: 172, azimuthFromSunDeg: 180 }).totalLx // 7682.8004
 */
export function daylightOnWall({
  altitudeDeg,
  dayOfYear,
  sky = "clear",
  airMassRule = "kastenYoung",
  azimuthFromSunDeg,
  groundReflectance = 0.2,
}: DaylightOnWallInput): DaylightOnWall {
  const ground = daylight({ altitudeDeg, dayOfYear, sky, airMassRule });
  requireFinite({ azimuthFromSunDeg });
  requireShare({ groundReflectance });
  const altitude = (altitudeDeg * Math.PI) / 180;
  const towards = Math.cos((azimuthFromSunDeg * Math.PI) / 180);
  const directLx = ground.directNormalLx * Math.max(0, Math.cos(altitude) * towards);
  const skyLx = 1000 * halfSkyKlx(sky, altitude, towards);
  const groundLx = (groundReflectance * ground.horizontalLx) / 2;
  return { directLx, skyLx, groundLx, totalLx: directLx + skyLx + groundLx };
}

/** Positions: kind of sky, altitude in radians, cosine of the turn from the sun. */
function halfSkyKlx(sky: Sky, altitude: number, towards: number): number {
  const sine = Math.sin(altitude);
  // At 90° rounding may leave the cosine a hair below 0, and powers of that are no numbers.
  const cosine = Math.max(0, Math.cos(altitude));
  switch (sky) {
    case "clear":
      return ((4 * altitude ** 1.3 + 12 * sine ** 0.3 * cosine ** 1.3) * (2 + towards)) / (3 - towards);
    case "partlyCloudy":
      return ((12 * altitude + 30.2 * sine ** 0.8 * cosine) * (1 + towards)) / (3 - towards);
    case "overcast":
      return 8.5 * sine;
  }
}
