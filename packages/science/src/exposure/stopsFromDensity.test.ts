import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded, some } from "../../fixtures/exposure/checking.ts";
import published from "../../fixtures/exposure/published.json";
import { stopsFromDensity } from "./stopsFromDensity.ts";
import { stopsFromFactor } from "./stopsFromFactor.ts";

describe("stopsFromDensity", () => {
  it("seventeen densities of neutral filters, within the rounding of the tables [nd-tables]", () => {
    const { rows, toleranceStops } = published.neutralDensity;
    for (const [density, stops] of rows as [number, number][]) {
      expectClose(stopsFromDensity({ density }), stops, 0, toleranceStops);
    }
  });

  it("D 0.9 is 2.9897353 stops, D 0.3 is 0.99657843, none is none [by hand]", () => {
    expectClose(stopsFromDensity({ density: 0.9 }), 2.9897353);
    expectClose(stopsFromDensity({ density: 0.3 }), 0.99657843);
    expect(stopsFromDensity({ density: 0 })).toBe(0);
  });

  it("two filters one behind the other add, and agree with their factor 10^D [property]", () => {
    fc.assert(
      fc.property(some.density, some.density, (first, second) => {
        const both = stopsFromDensity({ density: first + second });
        expectClose(both, stopsFromDensity({ density: first }) + stopsFromDensity({ density: second }), 1e-12);
        expectClose(both, stopsFromFactor({ factor: 10 ** (first + second) }), 1e-12);
      }),
      seeded,
    );
  });

  it("refuses a density below zero", () => {
    expectRefusal(() => stopsFromDensity({ density: -0.1 }), "negative", "density");
  });
});

describe("stopsFromFactor", () => {
  it("factors 1, 2, 4, 8 and 16 are 0 to 4 stops [filter-factor-article]", () => {
    for (const [factor, stops] of published.filterFactor.rows as [number, number][]) {
      expectClose(stopsFromFactor({ factor }), stops);
    }
  });

  it("ten factors in thirds of a stop, each the density beside it [filter-factor-table]", () => {
    const { rows, toleranceStops } = published.thirds;
    for (const [factor, stops, density] of rows as [number, number, number][]) {
      expectClose(stopsFromFactor({ factor }), stops, 0, toleranceStops);
      expectClose(stopsFromDensity({ density }), stops, 0, toleranceStops);
    }
  });

  it("factor 5 is 2.3219281 stops [by hand]", () => {
    expectClose(stopsFromFactor({ factor: 5 }), 2.3219281);
  });

  it("refuses a factor of nothing", () => {
    expectRefusal(() => stopsFromFactor({ factor: 0 }), "notPositive", "factor");
  });
});
