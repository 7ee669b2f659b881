import fc from "fast-check";
import { expect, test } from "vitest";
import { imageExposure } from "./imageExposure.ts";
import { pictureLuminance } from "./pictureLuminance.ts";
import { relativeLuminance } from "./relativeLuminance.ts";

const fixed = { seed: 20261125 };

test("f/1.8, 1/100 s, ISO 50, mid-tone: 99.7 cd/m² [iso-12232: S = 10 / H; by hand]", () => {
  const picture = { fNumber: 1.8, timeS: 0.01, iso: 50, relativeLuminance: 0.18 };
  expect(pictureLuminance(picture)).toBeCloseTo(99.692308, 6);
});

test("f/2.2, 1/30 s, ISO 400, a grey of code 90: 3.17 cd/m² [iso-12232, srgb; by hand]", () => {
  const grey = relativeLuminance({ red: 90, green: 90, blue: 90 });
  const picture = { fNumber: 2.2, timeS: 1 / 30, iso: 400, relativeLuminance: grey };
  expect(pictureLuminance(picture)).toBeCloseTo(3.1721153, 7);
});

test("the mid-tone got 10 / S lx·s: the camera equation turned round [property]", () => {
  const number = fc.double({ min: 0.01, max: 1000, noNaN: true });
  fc.assert(
    fc.property(number, number, number, (fNumber, timeS, iso) => {
      const glass = { transmission: 0.65 / (Math.PI / 4), vignetting: 1, offAxisDeg: 0 };
      const luminanceCdM2 = pictureLuminance({ fNumber, timeS, iso, relativeLuminance: 0.18 });
      expect(imageExposure({ luminanceCdM2, fNumber, timeS, ...glass }) * iso).toBeCloseTo(10, 6);
    }),
    fixed,
  );
});

test("an offset of a stop doubles, and twice the tone is twice the light [by hand]", () => {
  const picture = { fNumber: 2, timeS: 0.02, iso: 100, relativeLuminance: 0.2 };
  const there = pictureLuminance(picture);
  expect(pictureLuminance({ ...picture, offsetStops: 1 }) / there).toBeCloseTo(2, 12);
  expect(pictureLuminance({ ...picture, relativeLuminance: 0.4 }) / there).toBeCloseTo(2, 12);
});

test("black, brighter than white, and settings of zero are refused at their key", () => {
  const refused = (more: object, code: string, key: string) =>
    expect(() => pictureLuminance({ fNumber: 2, timeS: 0.02, iso: 100, relativeLuminance: 0.2, ...more })).toThrow(
      expect.objectContaining({ code, key }),
    );
  refused({ relativeLuminance: 0 }, "notPositive", "relativeLuminance");
  refused({ relativeLuminance: 1.01 }, "outOfRange", "relativeLuminance");
  refused({ fNumber: 0 }, "notPositive", "fNumber");
  refused({ timeS: 0 }, "notPositive", "timeS");
  refused({ iso: 0 }, "notPositive", "iso");
  refused({ exposureConstant: 0 }, "notPositive", "exposureConstant");
  refused({ offsetStops: Number.NaN }, "notFinite", "offsetStops");
});
