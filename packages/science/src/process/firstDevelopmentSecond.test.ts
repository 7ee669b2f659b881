import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded } from "../../fixtures/process/checking.ts";
import { firstDevelopmentSecond } from "./firstDevelopmentSecond.ts";

const series = { inductionS: 10, timeConstantS: 30, layerDensity: 2, contrast: 2 };

describe("firstDevelopmentSecond", () => {
  it("at 60 s a second is 0.0125917 D or 0.0209144 stop, at 150 s a twentieth of it [by hand: 2 e^(−5/3)/30]", () => {
    const early = firstDevelopmentSecond({ ...series, timeS: 60 });
    expectClose(early.undeveloped, Math.exp(-5 / 3));
    expectClose(early.densityPerS, 0.0125917, 0, 5e-8);
    expectClose(early.stopsPerS, 0.0209144, 0, 5e-8);
    const late = firstDevelopmentSecond({ ...series, timeS: 150 });
    expectClose(late.densityPerS, 0.000626904, 0, 5e-10);
    expectClose(late.stopsPerS, 0.00104127, 0, 5e-9);
  });

  it("is the slope of the density left: a thousandth of a second more, a thousandth of it less [property]", () => {
    fc.assert(
      fc.property(fc.double({ min: 10, max: 300, noNaN: true }), (timeS) => {
        const now = firstDevelopmentSecond({ ...series, timeS });
        const then = firstDevelopmentSecond({ ...series, timeS: timeS + 1e-3 });
        const lost = series.layerDensity * (now.undeveloped - then.undeveloped);
        expectClose(lost / 1e-3, now.densityPerS, 1e-4, 1e-10);
      }),
      seeded,
    );
  });

  it("at the first appearance all is still undeveloped; before it there is no answer", () => {
    expect(firstDevelopmentSecond({ ...series, timeS: 10 }).undeveloped).toBe(1);
    expectRefusal(() => firstDevelopmentSecond({ ...series, timeS: 9.9 }), "outOfRange", "timeS");
    expectRefusal(() => firstDevelopmentSecond({ ...series, timeS: 60, inductionS: -1 }), "negative", "inductionS");
    expectRefusal(() => firstDevelopmentSecond({ ...series, timeS: 60, contrast: 0 }), "notPositive", "contrast");
  });
});
