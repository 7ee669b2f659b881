import type { Practice } from "@captray/notebook/records";
import { describe, expect, test } from "vitest";
import { capPlanOf, openingSdS, openingsSdStops } from "./capHand.ts";

const practice: Practice = { biasS: { value: 0.2, sd: 0 }, motorSdS: 0.15, weber: 0, openings: 12, by: "cap" };

describe("openingsSdStops", () => {
  test("one opening of 6 s before practice: 0.0760 stop [√(0.10² + 0.30²)/(6 ln 2): by hand]", () => {
    expect(openingsSdStops({ openTimesS: [6], practice: null })).toBeCloseTo(0.076036705, 8);
  });

  test("four openings of 3 s, 0.15 s each: twice the doubt of one of 12 s [√n σ/(t ln 2): by hand]", () => {
    expect(openingsSdStops({ openTimesS: [3, 3, 3, 3], practice })).toBeCloseTo(0.036067376, 8);
    expect(openingsSdStops({ openTimesS: [12], practice })).toBeCloseTo(0.018033688, 8);
  });

  test("the doubts of bias and of the counted second are in it [in quadrature: by hand]", () => {
    const doubtful: Practice = { ...practice, biasS: { value: 0, sd: 0.2 }, rate: { value: 1, sd: 0.02 } };
    // √(0.15² + 0.2² + (0.02 × 10)²)
    expect(openingSdS({ timeS: 10, practice: doubtful })).toBeCloseTo(0.320156212, 8);
  });

  test("nothing given has no doubt, and no number that is none", () => {
    expect(openingsSdStops({ openTimesS: [], practice })).toBe(0);
  });
});

describe("capPlanOf", () => {
  test("the rate belongs to counting in the head, never to the ticks", () => {
    const own = { ...practice, rate: { value: 1.1, sd: 0.02 } };
    expect(capPlanOf({ wantedS: 13, way: "ticks", practice: own })).toEqual({
      wantedS: 13,
      way: "ticks",
      biasS: 0.2,
      rate: 1,
    });
    expect(capPlanOf({ wantedS: 13, way: "counted", practice: own }).rate).toBe(1.1);
  });

  test("a bias longer than the exposure, or a second of nothing, is not believed", () => {
    const broken: Practice = { ...practice, biasS: { value: 20, sd: 0 }, rate: { value: 0, sd: 0 } };
    expect(capPlanOf({ wantedS: 13, way: "counted", practice: broken })).toEqual({
      wantedS: 13,
      way: "counted",
      biasS: 0,
      rate: 1,
    });
  });
});
