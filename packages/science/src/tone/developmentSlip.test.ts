import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { developmentSlip } from "./developmentSlip.ts";
import { forward } from "./forward.ts";

/** Nothing but the first development is incomplete: bleach, second development, fog and stain next to nothing. */
const onlyFirst = { S: 0.813794479, m1: 0.04, a0: 1e-5, k1: 1e-5, m2: 1e-5, s: 1e-6, Db: 0.06 };

describe("what a slip in the first developer does", () => {
  it("4 % left become 3 %: the whites of a gloss positive go from 0.2648 to 0.2229 [table of left halide and density, photon count beside it]", () => {
    const ratioStops = Math.log2(Math.log(0.03) / Math.log(0.04));
    const { exposed } = developmentSlip({ curve: onlyFirst, rounds: 3, ratioStops });
    expect(exposed.value).toBeCloseTo(0.2229 - 0.2648, 3);
  });

  it("is the difference of two forward predictions [peer: forward]", () => {
    const [planned = 0, longer = 0] = forward({
      sheets: [{ u1: 1 }, { u1: 1.2 }],
      patches: [0, 1].map((sheet) => ({ sheet, kind: "fogged" as const })),
    }).density;
    expect(developmentSlip({ ratioStops: Math.log2(1.2) }).exposed.value).toBeCloseTo(longer - planned, 3);
  });

  it("a small slip is the derivative times the slip [by hand: dA/du = −m1 ln m1, at one hundredth of a stop]", () => {
    const slope = (stops: number) => developmentSlip({ ratioStops: stops, draws: 1 }).exposed.value / stops;
    expect(slope(0.01)).toBeCloseTo(slope(-0.01), 1);
    expect(slope(1e-4)).toBeCloseTo(slope(1e-3), 3);
  });

  it("longer makes the whites lighter and the blacks weaker, shorter the whites greyer [property]", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 2, noNaN: true }), (stops) => {
        const longer = developmentSlip({ ratioStops: stops, draws: 20 });
        const shorter = developmentSlip({ ratioStops: -stops, draws: 20 });
        expect(longer.exposed.value).toBeLessThan(0);
        expect(longer.unexposed.value).toBeLessThan(0);
        expect(shorter.exposed.value).toBeGreaterThan(0);
        expect(shorter.exposed.interval.low).toBeGreaterThan(0);
      }),
    );
  });

  it("the late second costs less than the early one: greyer by more than lighter [property of first-order completion]", () => {
    const late = developmentSlip({ ratioStops: Math.log2(125 / 120), draws: 1 }).exposed.value;
    const early = developmentSlip({ ratioStops: Math.log2(115 / 120), draws: 1 }).exposed.value;
    expect(early).toBeGreaterThan(-late);
  });

  it("what is surer of the paper is surer of the cost, and a doubtful time makes it less sure", () => {
    const guess = developmentSlip({ ratioStops: -0.1 }).exposed.sd;
    const m1 = { value: 0.04, sd: 0.1 };
    expect(developmentSlip({ ratioStops: -0.1, curve: { m1 } }).exposed.sd).toBeLessThan(guess);
    expect(developmentSlip({ ratioStops: -0.1, ratioSdStops: 0.1 }).exposed.sd).toBeGreaterThan(guess);
  });

  it("without a slip nothing changes, and the same seed gives the same answer", () => {
    const none = developmentSlip({ ratioStops: 0 });
    expect([none.exposed.value, none.exposed.sd, none.half.value]).toEqual([0, 0, 0]);
    expect(developmentSlip({ ratioStops: 0.2 })).toEqual(developmentSlip({ ratioStops: 0.2 }));
  });

  it("a negative that is left in longer gains at its dark end", () => {
    expect(developmentSlip({ process: "negative", ratioStops: 0.3 }).exposed.value).toBeGreaterThan(0);
  });

  it("refuses a slip of more than four stops", () => {
    expect(() => developmentSlip({ ratioStops: 4.1 })).toThrow("outOfRange");
  });
});
