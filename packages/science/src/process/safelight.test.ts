import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded } from "../../fixtures/process/checking.ts";
import { lightBudget } from "./lightBudget.ts";
import { safelightTime } from "./safelightTime.ts";

const series = {
  timesS: [60, 120, 240, 480],
  fogDensity: [0, 0.004, 0.011, 0.021],
  fogSd: [0.004, 0.004, 0.004, 0.004],
};

describe("safelightTime", () => {
  it("four steps: 4.31373e-5 ± 7.23102e-6 a second, safe 363.423 s, advised 181.712 s [by hand: weighted line through zero]", () => {
    const { slopePerS, slopeSd, safeS, adviseS } = safelightTime(series);
    expectClose(slopePerS, 4.31373e-5, 0, 5e-11);
    expectClose(slopeSd, 7.23102e-6, 0, 5e-12);
    expectClose(safeS, 363.423, 0, 5e-4);
    expectClose(adviseS, 181.712, 0, 5e-4);
  });

  it("the slope makes the weighted squares least: a little to either side they are more [property]", () => {
    const misfit = (slope: number, fog: readonly number[]) =>
      fog.reduce((sum, each, i) => sum + ((each - slope * (series.timesS[i] ?? 0)) / (series.fogSd[i] ?? 1)) ** 2, 0);
    fc.assert(
      fc.property(fc.array(fc.double({ min: -0.01, max: 0.2, noNaN: true }), { minLength: 4, maxLength: 4 }), (fog) => {
        const { slopePerS, slopeSd } = safelightTime({ ...series, fogDensity: fog });
        const least = misfit(slopePerS, fog);
        // One standard error to either side costs exactly 1 of χ².
        expectClose(misfit(slopePerS + slopeSd, fog), least + 1, 1e-6, 1e-6);
        expectClose(misfit(slopePerS - slopeSd, fog), least + 1, 1e-6, 1e-6);
      }),
      seeded,
    );
  });

  it("where nothing is seen it is safe up to the longest time tried, and no further", () => {
    const clear = { ...series, fogDensity: [0, 0, 0, 0], fogSd: [0.001, 0.001, 0.001, 0.001] };
    expect(safelightTime(clear).safeS).toBe(480);
    expect(safelightTime({ ...clear, fogDensity: [-0.01, -0.01, -0.02, -0.04] }).safeS).toBe(480);
  });

  it("more fog, more doubt or a stricter eye never make it safer [property]", () => {
    const fog = fc.array(fc.double({ min: 0, max: 0.2, noNaN: true }), { minLength: 4, maxLength: 4 });
    fc.assert(
      fc.property(fog, fc.double({ min: 1, max: 5, noNaN: true }), (fogDensity, more) => {
        const { safeS } = safelightTime({ ...series, fogDensity });
        const darker = fogDensity.map((each) => each * more);
        const unsure = series.fogSd.map((each) => each * more);
        expect(safelightTime({ ...series, fogDensity: darker }).safeS).toBeLessThanOrEqual(safeS + 1e-9);
        expect(safelightTime({ ...series, fogDensity, fogSd: unsure }).safeS).toBeLessThanOrEqual(safeS + 1e-9);
        expect(safelightTime({ ...series, fogDensity, threshold: 0.02 / more }).safeS).toBeLessThanOrEqual(
          safeS + 1e-9,
        );
      }),
      seeded,
    );
  });

  it("refuses lists of different lengths, none, no doubt at all", () => {
    expectRefusal(() => safelightTime({ ...series, fogDensity: [0] }), "listsDiffer", "fogDensity");
    expectRefusal(() => safelightTime({ ...series, fogSd: [0.01] }), "listsDiffer", "fogSd");
    expectRefusal(() => safelightTime({ timesS: [], fogDensity: [], fogSd: [] }), "tooFew", "timesS");
    expectRefusal(() => safelightTime({ ...series, timesS: [60, 0, 240, 480] }), "notPositive", "timesS/1");
    expectRefusal(() => safelightTime({ ...series, fogSd: [0.01, 0.01, 0, 0.01] }), "notPositive", "fogSd/2");
    expectRefusal(() => safelightTime({ ...series, threshold: 0 }), "notPositive", "threshold");
  });
});

describe("lightBudget", () => {
  it("0.5 lx for 60 s, 1 lx for 90 s, 0.25 lx for 240 s against 1 lx for 420 s: three sevenths [by hand]", () => {
    const stays = [
      { illuminanceLx: 0.5, timeS: 60 },
      { illuminanceLx: 1, timeS: 90 },
      { illuminanceLx: 0.25, timeS: 240 },
    ];
    expectClose(lightBudget({ stays, testIlluminanceLx: 1, safeS: 420 }), 3 / 7);
  });

  it("safe for 7 min before the exposure and 3 after it: 3 min in all are the whole of it [safelight-k4, test C]", () => {
    const stays = [
      { illuminanceLx: 1, timeS: 60 },
      { illuminanceLx: 1, timeS: 120 },
    ];
    expectClose(lightBudget({ stays, testIlluminanceLx: 1, safeS: Math.min(420, 180) }), 1);
  });

  it("no stay is no light; refusals say at which stay", () => {
    expect(lightBudget({ stays: [], testIlluminanceLx: 1, safeS: 420 })).toBe(0);
    const stays = [
      { illuminanceLx: 1, timeS: 60 },
      { illuminanceLx: 1, timeS: -60 },
    ];
    expectRefusal(() => lightBudget({ stays, testIlluminanceLx: 1, safeS: 420 }), "notPositive", "stays/1/timeS");
    expectRefusal(() => lightBudget({ stays: [], testIlluminanceLx: 1, safeS: 0 }), "notPositive", "safeS");
  });
});
