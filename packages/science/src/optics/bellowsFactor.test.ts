import fc from "fast-check";
import { describe, expect, it } from "vitest";
import table from "../../fixtures/optics/bellows-loss.json";
import { expectClose, expectRefusal, seeded, some } from "../../fixtures/optics/checking.ts";
import examples from "../../fixtures/optics/worked-examples.json";
import { bellowsFactor } from "./bellowsFactor.ts";
import { extension } from "./extension.ts";

describe("bellowsFactor", () => {
  it("210 mm lens at 315 mm: 2.25 [greivenkamp-2004 p. 29; by hand]", () => {
    expectClose(bellowsFactor({ extensionMm: 315, focalLengthMm: 210 }), 2.25);
  });

  it("18 in with a 12 in lens, 450 mm with 300 mm: 2.25; 8 s become 18 s [army-ss0512]", () => {
    const course = examples["training-course"];
    for (const { extension: v, focalLength, factor } of course.rows) {
      expectClose(bellowsFactor({ extensionMm: v, focalLengthMm: focalLength }), factor);
    }
    const factor = bellowsFactor({ extensionMm: 450, focalLengthMm: 300 });
    expectClose(course.time.meteredS * factor, course.time.neededS);
  });

  it("300 mm lens at 450 mm: 2 s become 4.5 s [lens-examples]", () => {
    const { focalLengthMm, extensionMm, meteredS, neededS } = examples["lens-page"].time;
    expectClose(meteredS * bellowsFactor({ focalLengthMm, extensionMm }), neededS);
  });

  it("seven settings, before and behind the lens [peer: runners/optics.py, edge rays]", () => {
    for (const { magnification, pupilRatio, timeFactor } of table.rows) {
      const extensionMm = extension({ focalLengthMm: 250, magnification });
      expectClose(bellowsFactor({ extensionMm, focalLengthMm: 250, pupilRatio }), timeFactor, 1e-9);
    }
  });

  it("is never below 1 [property]", () => {
    fc.assert(
      fc.property(
        some.focalLengthMm,
        some.magnification,
        some.pupilRatio,
        (focalLengthMm, magnification, pupilRatio) => {
          const extensionMm = extension({ focalLengthMm, magnification });
          expect(bellowsFactor({ extensionMm, focalLengthMm, pupilRatio })).toBeGreaterThan(1);
        },
      ),
      seeded,
    );
  });

  it("is 1 at the infinity position, and is refused just inside it [by hand]", () => {
    expect(bellowsFactor({ extensionMm: 210, focalLengthMm: 210 })).toBe(1);
    expectRefusal(
      () => bellowsFactor({ extensionMm: 180, focalLengthMm: 210 }),
      "extensionShorterThanFocalLength",
      "extensionMm",
    );
  });
});
