import { expect, test } from "vitest";
import fixture from "../../fixtures/tone/speeds.json" with { type: "json" };
import { OutOfDomain } from "../errors/outOfDomain.ts";
import { meteredExposure } from "../light/meteredExposure.ts";
import { exposureIndexFromAim } from "./exposureIndexFromAim.ts";
import { exposureIndexFromPaperSpeed } from "./exposureIndexFromPaperSpeed.ts";
import { filmSpeed } from "./filmSpeed.ts";
import { paperRange } from "./paperRange.ts";
import { paperSpeed } from "./paperSpeed.ts";

// The fixture prints eight figures.
const EIGHT_FIGURES = 1e-7;

function expectNear(value: number, wanted: number): void {
  expect(Math.abs(value / wanted - 1)).toBeLessThan(EIGHT_FIGURES);
}

function codeOf(act: () => unknown): string {
  try {
    act();
  } catch (error) {
    if (error instanceof OutOfDomain) return `${error.code} at ${error.key}`;
    throw error;
  }
  return "no error";
}

test("paper speed is 1000 over the speed point [iso-6846 second hand; the 1000 from memory]", () => {
  for (const { in: input, out } of fixture.paperSpeed) expectNear(paperSpeed(input), out);
});

test("paper range is 100 log10 of shoulder over toe [focal-encyclopedia p. 679; by hand]", () => {
  for (const { in: input, out } of fixture.paperRange) expectNear(paperRange(input), out);
});

test("film speed is 0.80 over the exposure at 0.10 above fog [iso-6 second hand]", () => {
  for (const { in: input, out } of fixture.filmSpeed) expectNear(filmSpeed(input), out);
});

test("exposure index from the exposure aimed at [by hand]", () => {
  for (const { in: input, out } of fixture.exposureIndexFromAim) expectNear(exposureIndexFromAim(input), out);
});

test("exposure index from a paper's P, placed and under another light [by hand]", () => {
  for (const { in: input, out } of fixture.exposureIndexFromPaperSpeed) {
    expectNear(exposureIndexFromPaperSpeed(input), out);
  }
});

test("the index from an aim gives that aim back to the metered tone [property]", () => {
  for (const aimLxS of [1e-6, 0.3, 2.5, 40, 1e6]) {
    for (const placeStops of [-4, -1 / 3, 0, 2.5]) {
      const exposureIndex = exposureIndexFromAim({ aimLxS, placeStops });
      expect(meteredExposure({ exposureIndex, placeStops }) / aimLxS).toBeCloseTo(1, 12);
    }
  }
});

test("an index from P is the index from the aim 1000 / P [property]", () => {
  for (const speed of [3, 160, 500]) {
    const fromAim = exposureIndexFromAim({ aimLxS: 1000 / speed, placeStops: 1, meterK: 14, exposureConstant: 0.6 });
    const fromSpeed = exposureIndexFromPaperSpeed({
      paperSpeed: speed,
      placeStops: 1,
      meterK: 14,
      exposureConstant: 0.6,
    });
    expect(fromSpeed / fromAim).toBeCloseTo(1, 12);
  }
});

test("nothing and less is refused, and a shoulder that is not beyond the toe [edges]", () => {
  expect(codeOf(() => paperSpeed({ speedPointLxS: 0 }))).toBe("notPositive at speedPointLxS");
  expect(codeOf(() => filmSpeed({ speedPointLxS: -1 }))).toBe("notPositive at speedPointLxS");
  expect(codeOf(() => paperRange({ toeLxS: 2, shoulderLxS: 2 }))).toBe("curveNotRising at shoulderLxS");
  expect(codeOf(() => paperRange({ toeLxS: 0, shoulderLxS: 2 }))).toBe("notPositive at toeLxS");
  expect(codeOf(() => exposureIndexFromAim({ aimLxS: 0 }))).toBe("notPositive at aimLxS");
  expect(codeOf(() => exposureIndexFromAim({ aimLxS: 1, placeStops: Number.NaN }))).toBe("notFinite at placeStops");
  expect(codeOf(() => exposureIndexFromAim({ aimLxS: 1, meterK: 0 }))).toBe("notPositive at meterK");
  expect(codeOf(() => exposureIndexFromPaperSpeed({ paperSpeed: 0 }))).toBe("notPositive at paperSpeed");
  expect(codeOf(() => exposureIndexFromPaperSpeed({ paperSpeed: 1, exposureConstant: -1 }))).toBe(
    "notPositive at exposureConstant",
  );
});
