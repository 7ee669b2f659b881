import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, seeded } from "../../fixtures/optics/checking.ts";
import { airyDiameterUm } from "./airyDiameterUm.ts";
import { fNumber } from "./fNumber.ts";
import { pinholeDiameter } from "./pinholeDiameter.ts";

describe("pinholeDiameter", () => {
  it("200 mm, 550 nm: 0.63015871 mm with 1.9, 0.51807335 with √2.44 [pinhole-pages: both constants; by hand]", () => {
    expectClose(pinholeDiameter({ extensionMm: 200 }), 0.63015871);
    expectClose(pinholeDiameter({ extensionMm: 200, constant: Math.sqrt(2.44) }), 0.51807335);
  });

  it("100 mm, 550 nm, √2.44: 0.366 mm [pinhole-pages, three decimals]", () => {
    const found = pinholeDiameter({ extensionMm: 100, constant: Math.sqrt(2.44), wavelengthNm: 550 });
    expect(found).toBeCloseTo(0.366, 3);
  });

  it("with √2 the hole obeys 2 r² = λ f [rayleigh-1891, equation 1]", () => {
    const radiusMm = pinholeDiameter({ extensionMm: 2743, constant: Math.SQRT2, wavelengthNm: 500 }) / 2;
    expectClose(2 * radiusMm ** 2, 500e-6 * 2743);
  });

  it("200 mm and √2.44 is √(0.001342 f) of a mailing list [pinhole-pages, four digits]", () => {
    const found = pinholeDiameter({ extensionMm: 200, constant: Math.sqrt(2.44), wavelengthNm: 550 });
    expectClose(found, Math.sqrt(0.001342 * 200), 1e-4);
  });

  it("blue light 450 nm, 150 mm: 0.49363448 mm; a subject 300 mm before 200 mm: 0.48811884 mm [by hand]", () => {
    expectClose(pinholeDiameter({ extensionMm: 150, wavelengthNm: 450 }), 0.49363448);
    expectClose(pinholeDiameter({ extensionMm: 200, subjectDistanceMm: 300 }), 0.48811884);
  });

  it("the first hole is f/317.38036, 8.6201381 stops below a reading at f/16 [by hand]", () => {
    const found = fNumber({ focalLengthMm: 200, diameterMm: pinholeDiameter({ extensionMm: 200 }) });
    expectClose(found, 317.38036);
    expectClose(2 * Math.log2(found / 16), 8.6201381);
  });

  it("√2.44 makes the hole as wide as its own diffraction disc [property; 2.44 for 2.439]", () => {
    fc.assert(
      fc.property(fc.double({ min: 20, max: 1000, noNaN: true }), (extensionMm) => {
        const holeMm = pinholeDiameter({ extensionMm, constant: Math.sqrt(2.44), wavelengthNm: 450 });
        const disc = airyDiameterUm({ effectiveFNumber: extensionMm / holeMm, wavelengthNm: 450 });
        expectClose(disc / 1000, holeMm, 5e-4);
      }),
      seeded,
    );
  });

  it("a subject far off asks for the hole of a distant one, a near one for a smaller hole [property]", () => {
    const far = pinholeDiameter({ extensionMm: 150, subjectDistanceMm: 1e12 });
    expectClose(far, pinholeDiameter({ extensionMm: 150, subjectDistanceMm: null }), 1e-9);
    expect(pinholeDiameter({ extensionMm: 150, subjectDistanceMm: 500 })).toBeLessThan(far);
  });
});
