import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireInteger, requireNotNegative, requireWithin } from "../errors/require.ts";
import { daysBetween, requireCalendarDate } from "./calendar.ts";

export interface SunPositionInput {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  /** Hour and its fraction in universal time, 0…24: not the hour of a local clock. */
  readonly hourUtc: number;
  readonly latitudeDeg: number;
  /** East is positive, west negative. */
  readonly longitudeEastDeg: number;
  readonly refraction?: boolean;
}

export interface SunPosition {
  readonly altitudeDeg: number;
  /** From north over east. */
  readonly azimuthDeg: number;
  readonly declinationDeg: number;
  readonly rightAscensionDeg: number;
}

/**
 * Where the sun stands at an hour and a place.
 *
 * Formula  n = JD − 2451545.0; L = 280.460 + 0.9856474 n; g = 357.528 + 0.9856003 n; λ = L + 1.915 sin g + 0.020 sin 2g;
 *          ε = 23.439 − 4·10⁻⁷ n; α = atan2(cos ε sin λ, cos λ); sin δ = sin ε sin λ;
 *          H = 15 · (18.697374558 + 24.06570982441908 n) + longitude − α;
 *          sin a = sin φ sin δ + cos φ cos δ cos H; azimuth = atan2(−sin H, tan δ cos φ − sin φ cos H);
 *          with refraction, if a > −1°: a + (1.02 / tan(a + 10.3 / (a + 5.11)°)) / 60.
 * Units    all angles in degrees, azimuth and right ascension from 0 to below 360; n in days; hours of universal time.
 * Holds    from 1950 to 2050; latitude φ −90…90, longitude −180…180.
 * Error    0.01°, without refraction up to 0.6° at the horizon.
 *
 * @throws {OutOfDomain} wrongType, outOfRange, negative, yearOutside1950to2050, latitude, longitude
 * @source almanac, C24 (1996) and C5 (2017): low-precision sun (second hand); none: sidereal time and refraction (from memory)
 * @example sunPosition({ year: 2026, month: 12, day: 21, hourUtc: 9.5, latitudeDeg: 52, longitudeEastDeg: 5 }).altitudeDeg // 9.534661
 */
export function sunPosition({
  year,
  month,
  day,
  hourUtc,
  latitudeDeg,
  longitudeEastDeg,
  refraction = false,
}: SunPositionInput): SunPosition {
  requireInteger({ year });
  requireWithin({ year }, { least: 1950, most: 2050, code: "yearOutside1950to2050" });
  requireCalendarDate({ year, month, day });
  requireNotNegative({ hourUtc });
  if (hourUtc > 24) throw new OutOfDomain("outOfRange", { hourUtc, least: 0, most: 24 });
  requireWithin({ latitudeDeg }, { least: -90, most: 90, code: "latitude" });
  requireWithin({ longitudeEastDeg }, { least: -180, most: 180, code: "longitude" });

  // 2451545.0 is noon of 1 January 2000.
  const days = daysBetween({ year: 2000, month: 1, day: 1 }, { year, month, day }) + hourUtc / 24 - 0.5;
  const meanLongitude = 280.46 + 0.9856474 * days;
  const anomaly = 357.528 + 0.9856003 * days;
  const longitude = meanLongitude + 1.915 * sin(anomaly) + 0.02 * sin(2 * anomaly);
  const obliquity = 23.439 - 4e-7 * days;
  const rightAscensionDeg = fullCircle(degrees(Math.atan2(cos(obliquity) * sin(longitude), cos(longitude))));
  const declinationDeg = degrees(Math.asin(sin(obliquity) * sin(longitude)));
  const hourAngle = 15 * (18.697374558 + 24.06570982441908 * days) + longitudeEastDeg - rightAscensionDeg;
  const sine = sin(latitudeDeg) * sin(declinationDeg) + cos(latitudeDeg) * cos(declinationDeg) * cos(hourAngle);
  // Rounding may lift the sine of a sun in the zenith a hair above 1.
  const airless = degrees(Math.asin(Math.min(1, Math.max(-1, sine))));
  const azimuthDeg = fullCircle(
    degrees(
      Math.atan2(
        -sin(hourAngle),
        Math.tan(radians(declinationDeg)) * cos(latitudeDeg) - sin(latitudeDeg) * cos(hourAngle),
      ),
    ),
  );
  const altitudeDeg = refraction && airless > -1 ? airless + liftDeg(airless) : airless;
  return { altitudeDeg, azimuthDeg, declinationDeg, rightAscensionDeg };
}

/** What the air lifts the sun by. */
function liftDeg(altitudeDeg: number): number {
  return 1.02 / Math.tan(radians(altitudeDeg + 10.3 / (altitudeDeg + 5.11))) / 60;
}

function fullCircle(angleDeg: number): number {
  return ((angleDeg % 360) + 360) % 360;
}

function radians(angleDeg: number): number {
  return (angleDeg * Math.PI) / 180;
}

function degrees(angleRad: number): number {
  return (angleRad * 180) / Math.PI;
}

function sin(angleDeg: number): number {
  return Math.sin(radians(angleDeg));
}

function cos(angleDeg: number): number {
  return Math.cos(radians(angleDeg));
}
