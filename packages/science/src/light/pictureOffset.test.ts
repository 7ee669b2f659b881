import fc from "fast-check";
import { expect, test } from "vitest";
import { pictureLuminance } from "./pictureLuminance.ts";
import { pictureOffset } from "./pictureOffset.ts";

const fixed = { seed: 20261125 };

test("the meter says 250, the phone 190 cd/m²: 0.396 stop [by hand]", () => {
  expect(pictureOffset({ meterCdM2: 250, pictureCdM2: 190 })).toBeCloseTo(0.39592868, 8);
});

test("with its offset the phone says what the meter says [property]", () => {
  const luminance = fc.double({ min: 0.01, max: 10_000, noNaN: true });
  fc.assert(
    fc.property(luminance, fc.double({ min: 0.05, max: 1, noNaN: true }), (meterCdM2, relativeLuminance) => {
      const picture = { fNumber: 1.8, timeS: 0.02, iso: 64, relativeLuminance };
      const offsetStops = pictureOffset({ meterCdM2, pictureCdM2: pictureLuminance(picture) });
      expect(pictureLuminance({ ...picture, offsetStops }) / meterCdM2).toBeCloseTo(1, 9);
    }),
    fixed,
  );
});

test("no light is refused at its key", () => {
  for (const key of ["meterCdM2", "pictureCdM2"]) {
    expect(() => pictureOffset({ meterCdM2: 1, pictureCdM2: 1, [key]: 0 })).toThrow(
      expect.objectContaining({ code: "notPositive", key }),
    );
  }
});
