import fc from "fast-check";
import { expect, test } from "vitest";
import { rows } from "../../fixtures/light/daylight.json";
import type { AirMassRule } from "./airMass.ts";
import { daylight, type Sky } from "./daylight.ts";
import { daylightOnWall } from "./daylightOnWall.ts";

const fixed = { seed: 20261125 };
const altitude = fc.double({ min: 0.01, max: 90, noNaN: true });
const turn = fc.double({ min: 0, max: 180, noNaN: true });
const sky = fc.constantFrom<Sky>("clear", "partlyCloudy", "overcast");

test("the daylight table: a wall facing the sun, facing away, and turned by 75° [ies-1984; peer: plain Python]", () => {
  for (const row of rows) {
    const { altitudeDeg, dayOfYear, azimuthFromSunDeg } = row.in;
    const answer = daylightOnWall({
      altitudeDeg,
      dayOfYear,
      azimuthFromSunDeg,
      sky: row.in.sky as Sky,
      airMassRule: row.in.airMassRule as AirMassRule,
    });
    expect(answer.totalLx / row.wallLx).toBeCloseTo(1, 8);
    expect(answer.directLx + answer.skyLx + answer.groundLx).toBeCloseTo(answer.totalLx, 6);
  }
});

test("snow, 0.8, throws back four times what bare ground does [by hand]", () => {
  const hull = { altitudeDeg: 15, dayOfYear: 20, azimuthFromSunDeg: 150 } as const;
  const bare = daylightOnWall(hull);
  const snow = daylightOnWall({ ...hull, groundReflectance: 0.8 });
  expect(snow.groundLx / bare.groundLx).toBeCloseTo(4, 12);
  expect(bare.groundLx).toBeCloseTo(0.1 * daylight({ altitudeDeg: 15, dayOfYear: 20 }).horizontalLx, 6);
});

test("left and right of the sun are alike, and nothing gets more than the side that faces it [property]", () => {
  fc.assert(
    fc.property(altitude, turn, sky, (altitudeDeg, azimuthFromSunDeg, kind) => {
      const wall = { altitudeDeg, dayOfYear: 172, sky: kind };
      const there = daylightOnWall({ ...wall, azimuthFromSunDeg }).totalLx;
      expect(daylightOnWall({ ...wall, azimuthFromSunDeg: -azimuthFromSunDeg }).totalLx).toBeCloseTo(there, 6);
      expect(daylightOnWall({ ...wall, azimuthFromSunDeg: azimuthFromSunDeg + 360 }).totalLx / there).toBeCloseTo(1, 9);
      expect(there).toBeLessThanOrEqual(daylightOnWall({ ...wall, azimuthFromSunDeg: 0 }).totalLx * (1 + 1e-12));
    }),
    fixed,
  );
});

test("no sun on the back of a wall, none through an overcast, none from the zenith [by hand]", () => {
  const wall = { altitudeDeg: 30, dayOfYear: 172 };
  expect(daylightOnWall({ ...wall, azimuthFromSunDeg: 120 }).directLx).toBe(0);
  expect(daylightOnWall({ ...wall, azimuthFromSunDeg: 0, sky: "overcast" }).directLx).toBe(0);
  const zenith = daylightOnWall({ ...wall, altitudeDeg: 90, azimuthFromSunDeg: 0 });
  expect(zenith.directLx).toBeCloseTo(0, 6);
  expect(Number.isFinite(zenith.totalLx)).toBe(true);
});

test("a sun below the horizon and ground that throws back more than all are refused", () => {
  const refused = (more: object, code: string, key: string) =>
    expect(() => daylightOnWall({ altitudeDeg: 30, dayOfYear: 172, azimuthFromSunDeg: 0, ...more })).toThrow(
      expect.objectContaining({ code, key }),
    );
  refused({ altitudeDeg: -1 }, "sunBelowHorizon", "altitudeDeg");
  refused({ azimuthFromSunDeg: Number.NaN }, "notFinite", "azimuthFromSunDeg");
  refused({ groundReflectance: 1.1 }, "outOfRange", "groundReflectance");
  refused({ groundReflectance: -0.1 }, "negative", "groundReflectance");
});
