import { expect, test, vi } from "vitest";
import { expectClose, expectRefusal } from "../../fixtures/optics/checking.ts";
import peer from "../../fixtures/tone/expected-print.json" with { type: "json" };
import { curveNames, curvePriors, toScale } from "./curve.ts";
import { expectPrint } from "./expectPrint.ts";
import type { ExpectCurve, ExpectPrintInput } from "./expectTypes.ts";
import { exposureIndexFromCurve } from "./exposureIndexFromCurve.ts";
import { lightness } from "./lightness.ts";
import { planExposureFlash } from "./planExposureFlash.ts";

// Thousands of papers take a second; a machine with other work must not fail for that.
vi.setConfig({ testTimeout: 60_000 });

const areas = [
  { area: "snow", logExposure: 1.6368 },
  { area: "hull", logExposure: 0.7337 },
  { area: "shed door", logExposure: -0.4704 },
];
const wanted = { highlight: { area: "snow" }, shadow: { area: "shed door" } };
const paper = { exposureIndex: 1.5 };
const certain: ExpectCurve = Object.fromEntries(curveNames.map((name) => [name, curvePriors[name].mean]));

/** A fit's answer, as far as the print is made from it. */
function fitLike(sd: number) {
  return {
    parameters: Object.fromEntries(curveNames.map((name) => [name, { value: curvePriors[name].mean }])),
    covariance: curveNames.map((_, row) => [...curveNames.map((__, column) => (row === column ? sd * sd : 0)), 0]),
    scatterScale: 1.2,
    timingScale: 0.9,
    objective: 0.4,
  };
}

test("densities and their covariance in four cases [peer: numpy differences]", () => {
  for (const { in: input, density, covariance } of peer.cases) {
    const print = expectPrint({ ...(input as unknown as ExpectPrintInput), draws: 0 });
    for (const [row, value] of density.entries()) {
      expectClose(print.areas[row]?.density.value ?? null, value, 1e-8);
      for (const [column, wantedValue] of (covariance[row] ?? []).entries()) {
        expectClose(print.covariance[row]?.[column] ?? null, wantedValue, 1e-5, 1e-8);
      }
      expectClose(print.areas[row]?.density.sd ?? null, Math.sqrt(covariance[row]?.[row] ?? 0), 1e-5);
    }
  }
});

test("sampled intervals: ends within 0.06 of 400 000 papers drawn elsewhere [peer: numpy, another generator]", () => {
  for (const { in: input, intervals } of peer.cases) {
    const print = expectPrint({ ...(input as unknown as ExpectPrintInput), draws: 4000, seed: 3 });
    for (const [index, { low, high }] of intervals.entries()) {
      const ours = print.areas[index]?.interval;
      // The loosest end, the black of an unmeasured paper, has a standard error of 0.03 at 4000 draws.
      expect(Math.abs((ours?.low ?? 0) - low)).toBeLessThan(0.06);
      expect(Math.abs((ours?.high ?? 0) - high)).toBeLessThan(0.06);
    }
  }
});

test("the linear interval is the value ± 1.645 sd [standard normal table]", () => {
  const { areas: printed } = expectPrint({ areas, paper, draws: 0 });
  for (const { density, interval } of printed) {
    expectClose((interval.high - interval.low) / 2 / density.sd, 1.6448536, 1e-7);
    expectClose((interval.high + interval.low) / 2, density.value, 1e-12);
  }
});

test("sampled intervals stay between base and surface; the same seed gives the same, another another [property]", () => {
  const at = (seed: number) => expectPrint({ areas, paper, seed }).areas.map(({ interval }) => interval);
  expect(at(1)).toEqual(at(1));
  expect(at(1)).not.toEqual(at(2));
  for (const { low, high } of at(5)) {
    expect(low).toBeGreaterThan(0.02);
    expect(high).toBeLessThanOrEqual(-Math.log10(0.003));
    expect(high).toBeGreaterThan(low);
  }
});

test("with everything certain, only the light and the patch are left: V = j² (σ_c² + σ_a²) + 0.02² [by hand]", () => {
  const [hull] = expectPrint({ areas: areas.slice(1, 2), curve: certain, draws: 0 }).areas;
  const byStop = Math.sqrt(((hull?.density.sd ?? 0) ** 2 - 0.02 ** 2) / (0.15 ** 2 + 0.15 ** 2));
  expectClose(hull?.sdStops ?? null, (hull?.density.sd ?? 0) / byStop, 1e-9);
  const [still] = expectPrint({
    areas: areas.slice(1, 2).map((area) => ({ ...area, sdStops: 0 })),
    curve: certain,
    commonSdStops: 0,
    patchSd: 0,
  }).areas;
  expect(still?.density.sd).toBe(0);
  expectClose(still?.interval.low ?? null, still?.density.value ?? 0, 1e-9);
  expectClose(still?.interval.high ?? null, still?.density.value ?? 0, 1e-9);
});

test("whatever index is typed, an area on mid prints its aim within 0.02 [property: index and x50 are one quantity]", () => {
  for (const process of ["reversal", "negative"] as const) {
    for (const exposureIndex of [0.05, 0.7, 6, 800]) {
      for (const settings of [{}, { rounds: 3, u1: 1.5 }, { u2: 0.8, finish: "matt" as const }]) {
        const logExposure = Math.log10(8.125 / exposureIndex);
        const print = expectPrint({
          areas: [{ area: "hull", logExposure }],
          paper: { exposureIndex },
          process,
          ...settings,
          draws: 0,
        });
        const { aimDensity } = exposureIndexFromCurve({ process, ...settings });
        expect(Math.abs((print.areas[0]?.density.value ?? 0) - aimDensity)).toBeLessThan(0.02);
      }
    }
  }
});

test("an index says nothing where the curve has its own x50; the sd of the index moves that of the print [contract]", () => {
  const curve = { x50: { value: 0.6, sd: 0.1 } };
  const own = expectPrint({ areas, curve, draws: 0 });
  expect(expectPrint({ areas, curve, paper, draws: 0 })).toEqual(own);
  expect(own.basis).toBe("curve");
  const sure = expectPrint({ areas, paper: { exposureIndex: 1.5, exposureIndexSdStops: 0.15 }, draws: 0 });
  const unsure = expectPrint({ areas, paper, draws: 0 });
  expect(sure.basis).toBe("priors");
  expect(sure.areas[1]?.density.sd).toBeLessThan((unsure.areas[1]?.density.sd ?? 0) - 0.1);
});

test("flare by the coating of the lens: 0.05 without, unless the curve says it [contract]", () => {
  const shadow = (more: object) => expectPrint({ areas, draws: 0, ...more }).areas[2]?.density.value;
  expect(shadow({ lensCoating: "uncoated" })).toBeLessThan(shadow({}) ?? 0);
  expect(shadow({ lensCoating: "uncoated", curve: { phi: 0.02 } })).toBe(shadow({}));
});

test("a fit brings its covariance and its scales [contract]", () => {
  const print = expectPrint({ areas, fit: fitLike(0.1), draws: 0 });
  expect(print.basis).toBe("fit");
  const same = expectPrint({
    areas,
    curve: Object.fromEntries(curveNames.map((name) => [name, { value: curvePriors[name].mean, sd: 0.1 }])),
    commonSdStops: 0.15 * 0.9,
    patchSd: 0.02 * 1.2,
    draws: 0,
  });
  expect(print.areas).toEqual(same.areas);
  expect(print.covariance).toEqual(same.covariance);
});

test("what is wanted is planned as planExposureFlash plans it [contract]", () => {
  const { recommendation } = expectPrint({ areas, curve: certain, wanted, draws: 0 });
  const {
    logHighlight: _,
    logShadow: __,
    verdict,
    sceneLongerByStops,
    ...plan
  } = planExposureFlash({
    highlightLxS: 10 ** 1.6368,
    shadowLxS: 10 ** -0.4704,
    meanLxS: (10 ** 1.6368 + 10 ** 0.7337 + 10 ** -0.4704) / 3,
    highlightDensity: 0.43195379881495155,
    shadowDensity: 1.8032716265527726,
  });
  expect(recommendation).toMatchObject({ kind: verdict });
  const flat = Object.entries({ ...plan, byStops: Math.abs(sceneLongerByStops) });
  for (const [key, value] of flat) expectClose(Reflect.get(recommendation ?? {}, key) as number, value, 1e-9);
  expect(expectPrint({ areas, draws: 0 }).recommendation).toBeNull();
});

test("a tone that the paper has not is an answer, with what it has [contract]", () => {
  const print = expectPrint({
    areas,
    wanted: { highlight: { area: "snow", density: 0.1 }, shadow: { area: "shed door", density: 1.5 } },
    draws: 0,
  });
  expect(print.recommendation).toEqual({ kind: "toneOutOfReach", reach: print.reach });
});

test("warnings: white and black lost, a flash that flattens the shadow, a short second development [contract]", () => {
  const warnings = (more: object) => expectPrint({ areas, curve: certain, draws: 0, ...more }).warnings;
  expect(warnings({})).toEqual([{ kind: "beyondPaper", area: "shed door", side: "black" }]);
  expect(warnings({ meanLogExposure: -30, areas: [{ area: "snow", logExposure: 2.5 }] })).toEqual([
    { kind: "beyondPaper", area: "snow", side: "white" },
  ]);
  // The shed door gets 0.34 lx·s and 0.33 of flare: more flash than both flattens it.
  const veiled = 10 ** -0.4704 + 0.02 * 10 ** Math.log10((10 ** 1.6368 + 10 ** 0.7337 + 10 ** -0.4704) / 3);
  const flat = { kind: "flatShadow" };
  expect(warnings({ flashS: (veiled / 0.1) * 1.001 })).toContainEqual(flat);
  expect(warnings({ flashS: (veiled / 0.1) * 0.999 })).not.toContainEqual(flat);
  expect(
    warnings({ flashS: 30, wanted: { highlight: { area: "snow" }, shadow: { area: "hull" } } }),
  ).not.toContainEqual(flat);
  expect(warnings({ u2: 0.69 })).toContainEqual({ kind: "shortSecondDevelopment" });
  expect(warnings({ u2: 0.7 })).not.toContainEqual({ kind: "shortSecondDevelopment" });
  expect(warnings({ u2: 0.5, process: "negative" })).not.toContainEqual({ kind: "shortSecondDevelopment" });
});

test("where the curve is flat no exposure answers for the doubt; lightness is that of the value [contract]", () => {
  const [area] = expectPrint({ areas: [{ area: "snow", logExposure: 12 }], draws: 0 }).areas;
  expect(area?.sdStops).toBeNull();
  expect(area?.lightness).toBe(lightness({ density: area?.density.value ?? 0 }));
});

test("very uncertain papers give finite intervals [edge]", () => {
  const wild = Object.fromEntries(
    curveNames.map((name) => [name, { value: curvePriors[name].mean, sd: name === "x50" ? 30 : 40 }]),
  );
  for (const finish of ["gloss", "matt"] as const) {
    for (const { interval } of expectPrint({ areas, curve: wild, finish, flashS: 3 }).areas) {
      expect(Number.isFinite(interval.low) && Number.isFinite(interval.high)).toBe(true);
    }
  }
  expect(toScale(0.5, "logit")).toBe(0);
});

test("out of domain [edges]", () => {
  const ask = (more: object) => () => expectPrint({ areas, draws: 0, ...more });
  expectRefusal(ask({ areas: [] }), "tooFew", "areas");
  expectRefusal(ask({ areas: [areas[0], areas[0]] }), "outOfRange", "areas/1/area");
  expectRefusal(ask({ curve: {}, fit: fitLike(1) }), "twoOfOne", "fit");
  expectRefusal(ask({ paper, fit: fitLike(1) }), "twoOfOne", "paper");
  expectRefusal(ask({ fit: {} }), "missingKey", "fit/parameters");
  expectRefusal(ask({ fit: { ...fitLike(1), covariance: [[1]] } }), "tooFew", "fit/covariance");
  expectRefusal(ask({ fit: { ...fitLike(1), parameters: {} } }), "missingKey", "fit/parameters/x50");
  expectRefusal(ask({ curve: { q: 0.01 } }), "outOfRange", "curve/q");
  expectRefusal(ask({ curve: { q: { value: 1, sd: -1 } } }), "negative", "curve/q/sd");
  expectRefusal(ask({ curve: { q: { value: 11, sd: 1 } } }), "outOfRange", "curve/q/value");
  expectRefusal(ask({ paper: { exposureIndex: 0 } }), "notPositive", "paper/exposureIndex");
  expectRefusal(ask({ paper, rounds: 0 }), "toneOutOfReach", "paper/exposureIndex");
  expectRefusal(ask({ draws: 1e9 }), "outOfRange", "draws");
  expectRefusal(ask({ draws: 2.5 }), "wrongType", "draws");
  expectRefusal(ask({ seed: 0.5 }), "wrongType", "seed");
  expectRefusal(ask({ u1: 0 }), "notPositive", "u1");
  expectRefusal(
    ask({ wanted: { highlight: { area: "sky" }, shadow: { area: "hull" } } }),
    "unknownArea",
    "wanted/highlight/area",
  );
  expectRefusal(
    ask({ wanted: { highlight: { area: "hull" }, shadow: { area: "snow" } } }),
    "outOfRange",
    "wanted/shadow/area",
  );
  expectRefusal(
    ask({ wanted: { highlight: { area: "snow", density: 1 }, shadow: { area: "hull", density: 0.9 } } }),
    "outOfRange",
    "wanted/shadow/density",
  );
});
