import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded } from "../../fixtures/process/checking.ts";
import { discIlluminance } from "../light/discIlluminance.ts";
import { screenIlluminance } from "./screenIlluminance.ts";
import { srgbOnWidePanel } from "./srgbOnWidePanel.ts";

const phone = { luminanceCdM2: 0.05, widthMm: 70, heightMm: 150, distanceMm: 500 };

describe("screenIlluminance", () => {
  it("0.05 cd/m² on 70 × 150 mm at half a metre: 0.0020723 lx [by hand]", () => {
    expectClose(screenIlluminance(phone), 0.0020723, 0, 5e-9);
  });

  it("a screen without end gives π L [photometry: E = π L sin² θ with θ 90°]", () => {
    expectClose(screenIlluminance({ ...phone, widthMm: 1e7, heightMm: 1e7 }), Math.PI * 0.05, 1e-6);
  });

  it("is the disc of the same area and intensity L A [property; photometry]", () => {
    const side = fc.double({ min: 20, max: 400, noNaN: true });
    fc.assert(
      fc.property(side, side, fc.double({ min: 50, max: 3000, noNaN: true }), (widthMm, heightMm, distanceMm) => {
        const areaM2 = (widthMm * heightMm) / 1e6;
        const disc = { intensityCd: 0.05 * areaM2, distanceM: distanceMm / 1000, radiusM: Math.sqrt(areaM2 / Math.PI) };
        expectClose(screenIlluminance({ ...phone, widthMm, heightMm, distanceMm }), discIlluminance(disc), 1e-12);
      }),
      seeded,
    );
  });

  it("a real rectangle, tile by tile: 0.5 % less at half a metre, 4 % at one long side [by hand: cosine twice, inverse square]", () => {
    const rectangleLx = (distanceMm: number) => {
      const tiles = 200;
      let sum = 0;
      for (let row = 0; row < tiles; row += 1) {
        for (let column = 0; column < tiles; column += 1) {
          const xMm = ((column + 0.5) / tiles - 0.5) * 70;
          const yMm = ((row + 0.5) / tiles - 0.5) * 150;
          sum += distanceMm ** 2 / (xMm ** 2 + yMm ** 2 + distanceMm ** 2) ** 2;
        }
      }
      return (0.05 * sum * 70 * 150) / tiles ** 2;
    };
    expectClose(screenIlluminance(phone) / rectangleLx(500), 1.005, 0, 0.001);
    expectClose(screenIlluminance({ ...phone, distanceMm: 150 }) / rectangleLx(150), 1.042, 0, 0.001);
    expect(screenIlluminance({ ...phone, luminanceCdM2: 0 })).toBe(0);
  });

  it("refuses a negative light and a screen without size or distance", () => {
    expectRefusal(() => screenIlluminance({ ...phone, luminanceCdM2: -1 }), "negative", "luminanceCdM2");
    expectRefusal(() => screenIlluminance({ ...phone, widthMm: 0 }), "notPositive", "widthMm");
    expectRefusal(() => screenIlluminance({ ...phone, distanceMm: 0 }), "notPositive", "distanceMm");
  });
});

describe("srgbOnWidePanel", () => {
  it("#ff0000 lights 0.822462, 0.0331942, 0.0170826: codes 234, 51, 35 [css-color-4: products of its matrices as printed in public code]", () => {
    const { linear, codes } = srgbOnWidePanel({ red: 1, green: 0, blue: 0 });
    expectClose(linear[0], 0.82246196871436, 1e-12);
    expectClose(linear[1], 0.03319419885096, 1e-11);
    expectClose(linear[2], 0.01708263072112, 1e-11);
    expect(codes).toEqual([234, 51, 35]);
  });

  it("green and blue, by the other two columns of the same printed matrix [css-color-4]", () => {
    const green = srgbOnWidePanel({ red: 0, green: 1, blue: 0 }).linear;
    const blue = srgbOnWidePanel({ red: 0, green: 0, blue: 1 }).linear;
    for (const [index, value] of [0.17753803128564, 0.96680580114904, 0.07239744066396].entries()) {
      expectClose(green[index], value, 1e-11);
    }
    for (const [index, value] of [0, 0, 0.91051992861492].entries()) expectClose(blue[index], value, 1e-11, 1e-12);
  });

  it("greys stay greys, black is black and white is white [property]", () => {
    expect(srgbOnWidePanel({ red: 0, green: 0, blue: 0 })).toEqual({ linear: [0, 0, 0], codes: [0, 0, 0] });
    expect(srgbOnWidePanel({ red: 1, green: 1, blue: 1 }).codes).toEqual([255, 255, 255]);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 255 }), (code) => {
        const value = code / 255;
        expect(srgbOnWidePanel({ red: value, green: value, blue: value }).codes).toEqual([code, code, code]);
      }),
      seeded,
    );
  });

  it("no red of a style sheet is free of green and blue on such a panel [property]", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 1, noNaN: true }), (red) => {
        const { linear } = srgbOnWidePanel({ red, green: 0, blue: 0 });
        expect(linear[1]).toBeGreaterThan(0);
        expect(linear[2]).toBeGreaterThan(0);
      }),
      seeded,
    );
  });

  it("refuses what is not from 0 to 1", () => {
    expectRefusal(() => srgbOnWidePanel({ red: 1.01, green: 0, blue: 0 }), "outOfRange", "red");
    expectRefusal(() => srgbOnWidePanel({ red: 0, green: -0.1, blue: 0 }), "negative", "green");
    expectRefusal(() => srgbOnWidePanel({ red: 0, green: 0, blue: Number.NaN }), "notFinite", "blue");
  });
});
