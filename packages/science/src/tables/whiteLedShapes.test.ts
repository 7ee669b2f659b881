import { expect, test } from "vitest";
import { whiteLedShapes } from "./whiteLedShapes.ts";

test("five lamps from warm to cool, with the colour temperatures of LED-B1…B5 [cie-15]", () => {
  expect(whiteLedShapes.map((shape) => shape.cctK)).toEqual([2733, 2998, 4103, 5109, 6598]);
});

test("blue between 448 and 453 nm, and less phosphor the cooler the lamp [cie-15, by hand: fitted]", () => {
  const ratios = whiteLedShapes.map((shape) => shape.phosphorRatio);
  expect([...ratios].sort((a, b) => b - a)).toEqual(ratios);
  for (const shape of whiteLedShapes) expect(Math.abs(shape.blueNm - 450.5)).toBeLessThan(2.5);
});
