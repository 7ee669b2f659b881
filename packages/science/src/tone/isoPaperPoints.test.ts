import { expect, test } from "vitest";
import invented from "../../fixtures/tone/invented-curve.json" with { type: "json" };
import straight from "../../fixtures/tone/straight-curve.json" with { type: "json" };
import { OutOfDomain } from "../errors/outOfDomain.ts";
import { type IsoPaperPointsInput, isoPaperPoints } from "./isoPaperPoints.ts";

const KEYS = ["toeLxS", "speedPointLxS", "shoulderLxS", "speed", "range"] as const;

function refusal(input: IsoPaperPointsInput): string {
  try {
    isoPaperPoints(input);
  } catch (error) {
    if (error instanceof OutOfDomain) return `${error.code} at ${error.key}`;
    throw error;
  }
  return "no error";
}

test("a straight curve has its points where a ruler finds them [by hand]", () => {
  const points = isoPaperPoints({ logExposure: straight.logExposure, density: straight.density });
  // The table prints eight figures.
  for (const key of KEYS) expect(Math.abs(points[key] / straight[key] - 1)).toBeLessThan(1e-7);
});

test("an S-shaped curve in steps of half a stop: same points to 1e-9 [peer: numpy interp]", () => {
  const points = isoPaperPoints({ logExposure: invented.logExposure, density: invented.density });
  for (const key of KEYS) expect(Math.abs(points[key] / invented[key] - 1)).toBeLessThan(1e-9);
});

test("on a flat stretch a density counts where it is first reached [edge]", () => {
  const points = isoPaperPoints({ logExposure: [0, 1, 2, 3], density: [0, 0.6, 0.6, 2] });
  expect(points.speedPointLxS).toBeCloseTo(10, 9);
});

test("a paper that reaches 0.60 and no more still has a speed; a hair less has none [edge]", () => {
  expect(isoPaperPoints({ logExposure: [0, 1], density: [0.05, 0.65] }).speed).toBeCloseTo(100, 6);
  // 0.54 + 0.6 is a little more than 1.14 in binary numbers.
  expect(isoPaperPoints({ logExposure: [0, 1], density: [0.54, 1.14] }).speed).toBeCloseTo(100, 6);
  expect(refusal({ logExposure: [0, 1], density: [0.05, 0.6499] })).toBe("speedPointNotReached at density");
  expect(refusal({ logExposure: [0, 1], density: [0.1, 0.1] })).toBe("speedPointNotReached at density");
});

test("shifting the curve along log exposure leaves the range and moves the speed [property]", () => {
  const base = isoPaperPoints(invented);
  const moved = isoPaperPoints({ ...invented, logExposure: invented.logExposure.map((value) => value + 0.3) });
  expect(moved.range).toBeCloseTo(base.range, 9);
  expect(moved.speed / base.speed).toBeCloseTo(10 ** -0.3, 9);
});

test("lists that differ, are too short, stand still or fall are refused [edges]", () => {
  expect(refusal({ logExposure: [0, 1, 2], density: [0, 1] })).toBe("listsDiffer at density");
  expect(refusal({ logExposure: [0], density: [0] })).toBe("tooFew at logExposure");
  expect(refusal({ logExposure: [0, 0], density: [0, 1] })).toBe("curveNotRising at logExposure");
  expect(refusal({ logExposure: [0, 1, 2], density: [0, 1, 0.9] })).toBe("curveNotRising at density");
  expect(refusal({ logExposure: [0, Number.NaN], density: [0, 1] })).toBe("notFinite at logExposure/1");
  expect(refusal({ logExposure: [0, 1], density: [0, Number.POSITIVE_INFINITY] })).toBe("notFinite at density/1");
});
