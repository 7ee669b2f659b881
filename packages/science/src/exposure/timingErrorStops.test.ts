import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded, some } from "../../fixtures/exposure/checking.ts";
import { capEffectiveTime } from "./capEffectiveTime.ts";
import { combineStops } from "./combineStops.ts";
import { handSd } from "./handSd.ts";
import { openingsTiming } from "./openingsTiming.ts";
import { timingErrorStops } from "./timingErrorStops.ts";
import { timingSdStops } from "./timingSdStops.ts";

const rows = [
  { timeS: 1, long: 0.37851162, short: -0.51457317, sd: 0.43280851 },
  { timeS: 2, long: 0.20163386, short: -0.23446525, sd: 0.21640426 },
  { timeS: 6, long: 0.070389328, short: -0.074000581, sd: 0.072134752 },
  { timeS: 20, long: 0.021479727, short: -0.02180437, sd: 0.021640426 },
];

describe("timingErrorStops", () => {
  it("0.3 s too long or too short at 1, 2, 6 and 20 s [by hand]", () => {
    for (const { timeS, long, short } of rows) {
      expectClose(timingErrorStops({ timeS, errorS: 0.3 }), long);
      expectClose(timingErrorStops({ timeS, errorS: -0.3 }), short);
    }
  });

  it("costs more on the short side [property]", () => {
    fc.assert(
      fc.property(some.timeS, (timeS) => {
        const errorS = timeS / 3;
        expect(-timingErrorStops({ timeS, errorS: -errorS })).toBeGreaterThan(timingErrorStops({ timeS, errorS }));
      }),
      seeded,
    );
  });

  it("refuses an error that leaves nothing", () => {
    expectRefusal(() => timingErrorStops({ timeS: 1, errorS: -1 }), "noExposureLeft", "errorS");
    expectRefusal(() => timingErrorStops({ timeS: 0, errorS: 1 }), "notPositive", "timeS");
  });
});

describe("timingSdStops", () => {
  it("σ 0.3 s at 1, 2, 6 and 20 s [by hand]", () => {
    for (const { timeS, sd } of rows) expectClose(timingSdStops({ timeS, sdS: 0.3 }), sd);
  });

  it("is what a small error costs, to first order [property]", () => {
    fc.assert(
      fc.property(some.timeS, (timeS) => {
        const errorS = timeS * 1e-6;
        expectClose(timingSdStops({ timeS, sdS: errorS }), timingErrorStops({ timeS, errorS }), 1e-5);
      }),
      seeded,
    );
  });

  it("refuses a doubt below zero", () => {
    expectRefusal(() => timingSdStops({ timeS: 1, sdS: -0.1 }), "negative", "sdS");
  });
});

describe("handSd", () => {
  it("at 6 s before practice: 0.31622777 s, 0.076036705 stop [assumption; by hand]", () => {
    const sdS = handSd({ timeS: 6 });
    expectClose(sdS, 0.31622777);
    expectClose(timingSdStops({ timeS: 6, sdS }), 0.076036705);
  });

  it("grows with the time in seconds and falls as a share of it [lewis-miall-2009]", () => {
    fc.assert(
      fc.property(some.timeS, (timeS) => {
        const longer = timeS * 1.5;
        expect(handSd({ timeS: longer })).toBeGreaterThan(handSd({ timeS }));
        expect(handSd({ timeS: longer }) / longer).toBeLessThan(handSd({ timeS }) / timeS);
      }),
      seeded,
    );
  });

  it("refuses what no hand has", () => {
    expectRefusal(() => handSd({ timeS: 6, motorSdS: -0.1 }), "negative", "motorSdS");
    expectRefusal(() => handSd({ timeS: 6, weber: -0.1 }), "negative", "weber");
    expectRefusal(() => handSd({ timeS: 0 }), "notPositive", "timeS");
  });
});

describe("capEffectiveTime", () => {
  it("2 s, 0.3 s to uncover and 0.2 s to cover: 1.75 s [by hand]", () => {
    expectClose(capEffectiveTime({ timeS: 2, uncoverS: 0.3, coverS: 0.2 }), 1.75);
  });

  it("is the light that comes past a cap moving evenly [peer: the two ramps summed in 1 ms steps]", () => {
    const [timeS, uncoverS, coverS, step] = [3.2, 0.41, 0.27, 0.001];
    let sum = 0;
    for (let at = step / 2; at < timeS; at += step) sum += Math.min(1, at / uncoverS, (timeS - at) / coverS) * step;
    expectClose(capEffectiveTime({ timeS, uncoverS, coverS }), sum, 1e-5);
  });

  it("refuses a movement that leaves nothing", () => {
    expectRefusal(() => capEffectiveTime({ timeS: 0.2, uncoverS: 0.2, coverS: 0.2 }), "noExposureLeft", "timeS");
    expectRefusal(() => capEffectiveTime({ timeS: 2, uncoverS: -0.2, coverS: 0.2 }), "negative", "uncoverS");
  });
});

describe("openingsTiming", () => {
  const asked = { timeS: 12, openings: 4, openingSdS: 0.15, openingBiasS: -0.1 };

  it("12 s in 4 openings, σ 0.15 s, 0.1 s short each: 0.036067376 and −0.0489096 stop [by hand]", () => {
    const four = openingsTiming(asked);
    expectClose(four.sdStops, 0.036067376);
    expectClose(four.biasStops, -0.0489096, 1e-6);
    expectClose(openingsTiming({ ...asked, openings: 1 }).sdStops, 0.018033688);
  });

  it("splitting makes both worse [property]", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 8 }), (openings) => {
        const few = openingsTiming({ ...asked, openings });
        const more = openingsTiming({ ...asked, openings: openings + 1 });
        expect(more.sdStops).toBeGreaterThan(few.sdStops);
        expect(more.biasStops).toBeLessThan(few.biasStops);
      }),
      seeded,
    );
  });

  it("refuses a bias that leaves nothing, and half an opening", () => {
    expectRefusal(() => openingsTiming({ ...asked, openingBiasS: -3 }), "noExposureLeft", "openingBiasS");
    expectRefusal(() => openingsTiming({ ...asked, openings: 1.5 }), "wrongType", "openings");
    expectRefusal(() => openingsTiming({ ...asked, openings: 0 }), "outOfRange", "openings");
  });
});

describe("combineStops", () => {
  it("0.1, 0.15 and 0.3 make 0.35; none makes none [by hand]", () => {
    expectClose(combineStops({ sdStops: [0.1, 0.15, 0.3] }), 0.35);
    expect(combineStops({ sdStops: [] })).toBe(0);
  });

  it("does not depend on the order, and is at least the largest [property]", () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 3, noNaN: true }), { minLength: 1, maxLength: 12 }), (sdStops) => {
        const whole = combineStops({ sdStops });
        expectClose(combineStops({ sdStops: sdStops.toReversed() }), whole, 1e-12);
        expect(whole).toBeGreaterThanOrEqual(Math.max(...sdStops) * (1 - 1e-12));
      }),
      seeded,
    );
  });

  it("refuses a doubt below zero and names its place", () => {
    expectRefusal(() => combineStops({ sdStops: [0.1, -0.1] }), "negative", "sdStops/1");
    expectRefusal(() => combineStops({ sdStops: [Number.NaN] }), "notFinite", "sdStops/0");
  });
});
