import * as Astronomy from "astronomy-engine";
import fc from "fast-check";
import { getPosition } from "suncalc";
import { expect, test } from "vitest";
import rows from "../../fixtures/light/sun-positions.json";
import { sunPosition } from "./sunPosition.ts";

const fixed = { seed: 20261125 };
const instants = fc.date({ min: new Date("1950-01-02"), max: new Date("2050-12-30"), noInvalidDate: true });
const latitudes = fc.double({ min: -66, max: 66, noNaN: true });
const longitudes = fc.double({ min: -180, max: 180, noNaN: true });

function inputOf(date: Date) {
  return {
    year: date.getUTCFullYear(),
    month: date.getUTCMonth() + 1,
    day: date.getUTCDate(),
    hourUtc: (date.getTime() % 86_400_000) / 3_600_000 + (date.getTime() < 0 && date.getTime() % 86_400_000 ? 24 : 0),
  };
}

/** Degrees between two directions in the sky. */
function apartDeg(a: readonly [number, number], b: readonly [number, number]): number {
  const [x, y] = [a, b].map(([altitude, azimuth]) => {
    const [alt = 0, az = 0] = [altitude, azimuth].map((angle) => (angle * Math.PI) / 180);
    return [Math.cos(alt) * Math.cos(az), Math.cos(alt) * Math.sin(az), Math.sin(alt)] as const;
  });
  const chord = Math.hypot(...[0, 1, 2].map((index) => (x?.[index] ?? 0) - (y?.[index] ?? 0)));
  return (2 * Math.asin(chord / 2) * 180) / Math.PI;
}

test("five places and hours, worked from the low-precision formulas [almanac; by hand]", () => {
  for (const row of rows) {
    const sun = sunPosition(row);
    expect(Math.abs(sun.altitudeDeg - row.altitudeDeg)).toBeLessThan(1e-4);
    expect(Math.abs(sun.azimuthDeg - row.azimuthDeg)).toBeLessThan(1e-4);
    expect(Math.abs(sun.declinationDeg - row.declinationDeg)).toBeLessThan(1e-4);
  }
});

test("the same five within 0.01° of a full theory of the sun's motion [peer: astronomy-engine 2.1.19, kept figures]", () => {
  for (const row of rows) {
    const sun = sunPosition(row);
    expect(Math.abs(sun.altitudeDeg - row.peerAltitudeDeg)).toBeLessThan(0.01);
    expect(Math.abs(sun.azimuthDeg - row.peerAzimuthDeg)).toBeLessThan(0.01);
  }
});

test("any hour from 1950 to 2050 between the polar circles, within 0.015° [peer: astronomy-engine]", () => {
  fc.assert(
    fc.property(instants, latitudes, longitudes, (date, latitudeDeg, longitudeEastDeg) => {
      const observer = new Astronomy.Observer(latitudeDeg, longitudeEastDeg, 0);
      const place = Astronomy.Equator(Astronomy.Body.Sun, date, observer, true, true);
      const peer = Astronomy.Horizon(date, observer, place.ra, place.dec);
      const sun = sunPosition({ ...inputOf(date), latitudeDeg, longitudeEastDeg });
      // 0.01° is what the almanac promises; the peer also counts parallax, 0.0024°, which is no part of the formula.
      expect(apartDeg([sun.altitudeDeg, sun.azimuthDeg], [peer.altitude, peer.azimuth])).toBeLessThan(0.015);
      const apart = Math.abs(sun.rightAscensionDeg - place.ra * 15);
      expect(Math.min(apart, 360 - apart)).toBeLessThan(0.015);
      expect(Math.abs(sun.declinationDeg - place.dec)).toBeLessThan(0.015);
    }),
    { ...fixed, numRuns: 300 },
  );
});

test("with refraction within 0.02° of another short formula, the sun being up [peer: suncalc 2.0.2]", () => {
  fc.assert(
    fc.property(instants, latitudes, longitudes, (date, latitudeDeg, longitudeEastDeg) => {
      const peer = getPosition(date, latitudeDeg, longitudeEastDeg);
      fc.pre(peer.altitude > 1);
      const sun = sunPosition({ ...inputOf(date), latitudeDeg, longitudeEastDeg, refraction: true });
      expect(apartDeg([sun.altitudeDeg, sun.azimuthDeg], [peer.altitude, peer.azimuth])).toBeLessThan(0.02);
    }),
    { ...fixed, numRuns: 300 },
  );
});

test("at the equinoxes and solstices of 2026 the declination is what the seasons are named for [peer: astronomy-engine]", () => {
  const seasons = Astronomy.Seasons(2026);
  const declination = (time: Astronomy.AstroTime) =>
    sunPosition({ ...inputOf(time.date), latitudeDeg: 0, longitudeEastDeg: 0 }).declinationDeg;
  expect(declination(seasons.mar_equinox)).toBeCloseTo(0, 1);
  expect(declination(seasons.jun_solstice)).toBeCloseTo(23.44, 1);
  expect(declination(seasons.sep_equinox)).toBeCloseTo(0, 1);
  expect(declination(seasons.dec_solstice)).toBeCloseTo(-23.44, 1);
});

test("east is positive: an hour later the sun stands there 15° further west [by hand]", () => {
  const noon = { year: 2026, month: 12, day: 21, latitudeDeg: 52 };
  const here = sunPosition({ ...noon, hourUtc: 12, longitudeEastDeg: 0 });
  const west = sunPosition({ ...noon, hourUtc: 13, longitudeEastDeg: -15 });
  expect(west.altitudeDeg).toBeCloseTo(here.altitudeDeg, 1);
  expect(west.azimuthDeg).toBeCloseTo(here.azimuthDeg, 1);
});

test("the air lifts the sun by half a degree at the horizon and not at all in the zenith [common practice]", () => {
  const rising = { year: 2026, month: 3, day: 20, hourUtc: 6.13, latitudeDeg: 0, longitudeEastDeg: 0 };
  const lift = (input: typeof rising) =>
    sunPosition({ ...input, refraction: true }).altitudeDeg - sunPosition(input).altitudeDeg;
  expect(Math.abs(sunPosition(rising).altitudeDeg)).toBeLessThan(0.5);
  expect(lift(rising)).toBeGreaterThan(0.3);
  expect(lift(rising)).toBeLessThan(0.6);
  expect(Math.abs(lift({ ...rising, hourUtc: 12.1 }))).toBeLessThan(0.001);
  expect(lift({ ...rising, hourUtc: 0 })).toBe(0);
});

test("azimuth and right ascension run from 0 to below 360, also at the poles [property]", () => {
  fc.assert(
    fc.property(instants, fc.constantFrom(-90, -50, 0, 50, 90), longitudes, (date, latitudeDeg, longitudeEastDeg) => {
      const sun = sunPosition({ ...inputOf(date), latitudeDeg, longitudeEastDeg });
      for (const angle of [sun.azimuthDeg, sun.rightAscensionDeg]) {
        expect(angle).toBeGreaterThanOrEqual(0);
        expect(angle).toBeLessThan(360);
      }
      expect(Math.abs(sun.altitudeDeg)).toBeLessThanOrEqual(90);
    }),
    fixed,
  );
});

test("places off the globe, years off the formula and dates off the calendar are refused", () => {
  const refused = (more: object, code: string, key: string) =>
    expect(() =>
      sunPosition({ year: 2026, month: 1, day: 1, hourUtc: 12, latitudeDeg: 52, longitudeEastDeg: 5, ...more }),
    ).toThrow(expect.objectContaining({ code, key }));
  refused({ latitudeDeg: 90.1 }, "latitude", "latitudeDeg");
  refused({ latitudeDeg: -90.1 }, "latitude", "latitudeDeg");
  refused({ longitudeEastDeg: 181 }, "longitude", "longitudeEastDeg");
  refused({ year: 1949 }, "yearOutside1950to2050", "year");
  refused({ year: 2051 }, "yearOutside1950to2050", "year");
  refused({ year: 2026.5 }, "wrongType", "year");
  refused({ month: 2, day: 29 }, "outOfRange", "day");
  refused({ hourUtc: 24.1 }, "outOfRange", "hourUtc");
  refused({ hourUtc: -1 }, "negative", "hourUtc");
  refused({ hourUtc: Number.NaN }, "notFinite", "hourUtc");
});
