import { expect, test } from "vitest";
import { blend } from "./blend.ts";
import { dilutePlus } from "./dilutePlus.ts";
import { misreadRatio } from "./misreadRatio.ts";
import { trayVolume } from "./trayVolume.ts";

test("1+4 to a litre is 200 and 800 mL; 1+0 is the stock [iso-78-2, by hand]", () => {
  expect(dilutePlus({ parts: 4, volumeMl: 1000 })).toEqual({ stockMl: 200, waterMl: 800, fraction: 0.2 });
  expect(dilutePlus({ parts: 0, volumeMl: 500 })).toEqual({ stockMl: 500, waterMl: 0, fraction: 1 });
});

test("1:4 and 1:9 read the other way are a quarter and a ninth stronger [by hand]", () => {
  expect(misreadRatio({ parts: 4 }).factor).toBe(1.25);
  expect(misreadRatio({ parts: 4 }).stops).toBeCloseTo(Math.log(1.25) / Math.log(2), 12);
  expect(misreadRatio({ parts: 9 }).factor).toBeCloseTo(10 / 9, 12);
});

test("vinegar of 5 % to a stop of 1.5 %, 1 % and 2 % [common practice: 300 mL, 1+4, 1+1.5]", () => {
  const of = (targetStrength: number) =>
    blend({ firstStrength: 5, secondStrength: 0, targetStrength, totalMl: 1000 }).firstMl;
  expect(of(1.5)).toBeCloseTo(300, 9);
  expect(of(1)).toBeCloseTo(dilutePlus({ parts: 4, volumeMl: 1000 }).stockMl, 9);
  expect(of(2)).toBeCloseTo(dilutePlus({ parts: 1.5, volumeMl: 1000 }).stockMl, 9);
});

test("3 parts of glacial acid with 8 of water are 28 % w/w [common practice; ±2 %, it is said in whole parts]", () => {
  // Of masses: glacial acid 99.8 % w/w and 1.049 g/mL, water 0.998 g/mL.
  const { firstMl: acidG, secondMl: waterG } = blend({
    firstStrength: 99.8,
    secondStrength: 0,
    targetStrength: 28,
    totalMl: 1000,
  });
  expect(Math.abs(acidG / 1.049 / (waterG / 0.998) / (3 / 8) - 1)).toBeLessThan(0.02);
});

test("what goes in of each strength comes out of the blend [property: balance of the substance]", () => {
  const { firstMl, secondMl } = blend({ firstStrength: 2, secondStrength: 9, targetStrength: 4.5, totalMl: 700 });
  expect(firstMl * 2 + secondMl * 9).toBeCloseTo(4.5 * 700, 9);
});

test("a tray of 250 by 300 mm, 10 mm deep, is 750 mL; a margin counts on both sides [by hand]", () => {
  expect(trayVolume({ widthMm: 250, heightMm: 300, depthMm: 10 })).toBe(750);
  expect(trayVolume({ widthMm: 210, heightMm: 260, depthMm: 10, marginMm: 20 })).toBe(750);
});

test("what cannot be poured is refused", () => {
  const strengths = { firstStrength: 5, secondStrength: 2, totalMl: 100 };
  for (const targetStrength of [1.9, 5.1]) {
    expect(() => blend({ ...strengths, targetStrength })).toThrow(
      expect.objectContaining({ code: "targetOutsideStrengths", key: "targetStrength" }),
    );
  }
  expect(() => blend({ firstStrength: 3, secondStrength: 3, targetStrength: 3, totalMl: 100 })).toThrow(
    expect.objectContaining({ code: "targetOutsideStrengths" }),
  );
  expect(() => dilutePlus({ parts: -1, volumeMl: 100 })).toThrow(expect.objectContaining({ code: "negative" }));
  expect(() => dilutePlus({ parts: 1, volumeMl: 0 })).toThrow(expect.objectContaining({ code: "notPositive" }));
  expect(() => misreadRatio({ parts: 0 })).toThrow(expect.objectContaining({ code: "notPositive" }));
  expect(() => trayVolume({ widthMm: 1, heightMm: 1, depthMm: -1 })).toThrow(
    expect.objectContaining({ code: "notPositive", key: "depthMm" }),
  );
});
