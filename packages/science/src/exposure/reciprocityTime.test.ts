import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded, some } from "../../fixtures/exposure/checking.ts";
import published from "../../fixtures/exposure/published.json";
import peer from "../../fixtures/exposure/reciprocity.json";
import { reciprocityEffectiveTime } from "./reciprocityEffectiveTime.ts";
import { reciprocityTime } from "./reciprocityTime.ts";

describe("reciprocityTime", () => {
  it("10 s become 20.4 s by the power 1.31 [reciprocity-note]", () => {
    const { power, meteredTimeS, timeS, toleranceS } = published.exponent;
    expectClose(reciprocityTime({ meteredTimeS, exponent: 1 / power }), timeS, 0, toleranceS);
  });

  it("five times, below and beyond the start [peer: runners/exposure.py, numpy.power]", () => {
    for (const { timeS, ...row } of peer.exponentRows) expectClose(reciprocityTime(row), timeS, 1e-12);
  });

  it("p 0.9: 60 s need 94.563516 s; p 0.8 from 2 s: 2400 s need 14125.589 s; 0.5 s stays [by hand]", () => {
    expectClose(reciprocityTime({ meteredTimeS: 60, exponent: 0.9 }), 94.563516);
    expectClose(reciprocityTime({ meteredTimeS: 2400, exponent: 0.8, fromS: 2 }), 14125.589);
    expect(reciprocityTime({ meteredTimeS: 0.5, exponent: 0.85 })).toBe(0.5);
    expect(reciprocityTime({ meteredTimeS: 1, exponent: 0.85 })).toBe(1);
  });

  it("never asks for less, rises with the time, and leaves it with an exponent of 1 [property]", () => {
    fc.assert(
      fc.property(some.timeS, some.exponent, (meteredTimeS, exponent) => {
        const needed = reciprocityTime({ meteredTimeS, exponent });
        expect(needed).toBeGreaterThanOrEqual(meteredTimeS);
        expect(reciprocityTime({ meteredTimeS: meteredTimeS * 1.01, exponent })).toBeGreaterThan(needed);
        expect(reciprocityTime({ meteredTimeS, exponent: 1 })).toBe(meteredTimeS);
      }),
      seeded,
    );
  });

  it("refuses an exponent no paper has, and no time", () => {
    for (const exponent of [0.5, 1.0001, -1]) {
      expectRefusal(() => reciprocityTime({ meteredTimeS: 5, exponent }), "exponentOutOfRange", "exponent");
    }
    expectRefusal(() => reciprocityTime({ meteredTimeS: 5, exponent: Number.NaN }), "notFinite", "exponent");
    expectRefusal(() => reciprocityTime({ meteredTimeS: 0, exponent: 0.9 }), "notPositive", "meteredTimeS");
    expectRefusal(() => reciprocityTime({ meteredTimeS: 5, exponent: 0.9, fromS: 0 }), "notPositive", "fromS");
  });
});

describe("reciprocityEffectiveTime", () => {
  it("94.563516 s at p 0.9 are worth 60 s [by hand]", () => {
    expectClose(reciprocityEffectiveTime({ timeS: 94.563516, exponent: 0.9 }), 60);
  });

  it("is the inverse of reciprocityTime [property]", () => {
    fc.assert(
      fc.property(some.timeS, some.exponent, fc.constantFrom(0.5, 1, 4), (timeS, exponent, fromS) => {
        const meteredTimeS = reciprocityEffectiveTime({ timeS, exponent, fromS });
        expectClose(reciprocityTime({ meteredTimeS, exponent, fromS }), timeS, 1e-12);
      }),
      seeded,
    );
  });

  it("refuses what reciprocityTime refuses", () => {
    expectRefusal(() => reciprocityEffectiveTime({ timeS: 5, exponent: 0.4 }), "exponentOutOfRange", "exponent");
    expectRefusal(() => reciprocityEffectiveTime({ timeS: -5, exponent: 0.9 }), "notPositive", "timeS");
  });
});
