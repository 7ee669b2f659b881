import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded } from "../../fixtures/process/checking.ts";
import { driftEffectiveTime } from "./driftEffectiveTime.ts";

/** The same integral by summing up the exponential series term by term: another way, exact for moderate differences. */
function bySeries(timeS: number, startC: number, airC: number, tauS: number, q10: number): number {
  const slope = (Math.log(q10) / 10) * (startC - airC);
  let [sum, power] = [timeS, 1];
  for (let n = 1; n < 80; n += 1) {
    power *= slope / n;
    sum += (power * tauS * (1 - Math.exp((-n * timeS) / tauS))) / n;
  }
  return q10 ** ((airC - 20) / 10) * sum;
}

describe("driftEffectiveTime", () => {
  it("3 min in a 20 °C bath in air of 12 °C: 175.256 s [by hand: exponential series]", () => {
    expectClose(driftEffectiveTime({ timeS: 180, startC: 20, airC: 12, timeConstantS: 1800 }), 175.256, 0, 5e-4);
  });

  it("agrees with the exponential series, also over hours [property; by hand]", () => {
    const temperature = fc.double({ min: 8, max: 35, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 20_000, noNaN: true }),
        temperature,
        temperature,
        fc.double({ min: 600, max: 4000, noNaN: true }),
        fc.double({ min: 1.2, max: 4, noNaN: true }),
        (timeS, startC, airC, timeConstantS, q10) => {
          const expected = bySeries(timeS, startC, airC, timeConstantS, q10);
          expectClose(driftEffectiveTime({ timeS, startC, airC, timeConstantS, q10 }), expected, 1e-9);
        },
      ),
      seeded,
    );
  });

  it("a bath as warm as the air does not drift; one that never moves is worth its factor [by hand]", () => {
    expectClose(driftEffectiveTime({ timeS: 120, startC: 20, airC: 20, timeConstantS: 60 }), 120, 1e-12);
    expectClose(driftEffectiveTime({ timeS: 120, startC: 24, airC: 5, timeConstantS: 1e12 }), 120 * 2 ** 0.4, 1e-6);
  });

  it("a bath that is at once as cold as the air is worth the air [by hand]", () => {
    expectClose(driftEffectiveTime({ timeS: 1e5, startC: 30, airC: 10, timeConstantS: 1e-3 }), 5e4, 1e-6);
  });

  it("refuses no time, no time constant and a factor no developer has", () => {
    const fine = { timeS: 180, startC: 20, airC: 12, timeConstantS: 1800 };
    expectRefusal(() => driftEffectiveTime({ ...fine, timeS: 0 }), "notPositive", "timeS");
    expectRefusal(() => driftEffectiveTime({ ...fine, timeConstantS: 0 }), "notPositive", "timeConstantS");
    expectRefusal(() => driftEffectiveTime({ ...fine, q10: 5 }), "outOfRange", "q10");
    expectRefusal(() => driftEffectiveTime({ ...fine, airC: Number.NaN }), "notFinite", "airC");
    expect(driftEffectiveTime({ ...fine, startC: 40, airC: 40 })).toBeGreaterThan(180);
  });
});
