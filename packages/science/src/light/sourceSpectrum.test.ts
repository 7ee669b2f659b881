import { expect, test } from "vitest";

import { daylightWeights, daylightWhite, readSource, sourceSpectrum } from "./sourceSpectrum.ts";

test("D65 is worked at 6504 K: x 0.31272, y 0.32913, M₁ −0.295, M₂ −0.689 [cie-15]", () => {
  const white = daylightWhite(6500);
  expect(white.x).toBeCloseTo(0.31272027, 8);
  expect(white.y).toBeCloseTo(0.32912528, 8);
  expect(daylightWeights(white)).toEqual([-0.295, -0.689]);
});

test("M₁ and M₂ of D55 and of 10 000 K [cie-15]", () => {
  expect(daylightWeights(daylightWhite(5500))).toEqual([-0.785, -0.198]);
  expect(daylightWeights(daylightWhite(10_000))).toEqual([1.004, -0.368]);
});

test("a word is read with its temperature, decimals too", () => {
  expect(readSource("filament:2700", "source")).toEqual({ kind: "filament", cctK: 2700 });
  expect(readSource("daylight:6504.5", "source")).toEqual({ kind: "daylight", cctK: 6504.5 });
  expect(readSource("illuminantA", "source").kind).toBe("illuminantA");
});

test.each([
  "",
  "candle",
  "daylight",
  "daylight:",
  "daylight:D65",
  "daylight:-5500",
  "whiteLed:4e3",
  "illuminantA:2856",
  " daylight:5500",
])("“%s” is no word for a light", (source) => {
  expect(() => sourceSpectrum(source, "reference")).toThrow(
    expect.objectContaining({ code: "unknownWord", key: "reference" }),
  );
});

test.each(["daylight:3999", "daylight:25001", "whiteLed:2499", "whiteLed:7001", "filament:0", "filament:99"])(
  "“%s” is beyond what is known of such lights",
  (source) => {
    expect(() => sourceSpectrum(source, "source")).toThrow(
      expect.objectContaining({ code: "cctOutOfRange", key: "source" }),
    );
  },
);

test("the ends themselves are known", () => {
  for (const source of [
    "daylight:4000",
    "daylight:25000",
    "whiteLed:2500",
    "whiteLed:7000",
    "filament:100",
    "filament:1000000",
  ]) {
    expect(sourceSpectrum(source, "source").every((value) => Number.isFinite(value) && value >= 0)).toBe(true);
  }
});

test("beyond its warmest and coolest lamp a white LED keeps their shape", () => {
  expect(sourceSpectrum("whiteLed:2500", "source")).toEqual(sourceSpectrum("whiteLed:2733", "source"));
  expect(sourceSpectrum("whiteLed:7000", "source")).toEqual(sourceSpectrum("whiteLed:6598", "source"));
});
