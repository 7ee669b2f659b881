import fc from "fast-check";
import { describe, expect, it } from "vitest";
import table from "../../fixtures/optics/bellows-loss.json";
import { expectClose, seeded, some } from "../../fixtures/optics/checking.ts";
import examples from "../../fixtures/optics/worked-examples.json";
import { bellowsStops } from "./bellowsStops.ts";
import { extension } from "./extension.ts";

describe("bellowsStops", () => {
  it("m 0.5: 1.169925 stops; life size: 2 stops [greivenkamp-2004 p. 29; by hand]", () => {
    expectClose(bellowsStops({ magnification: 0.5 }), 1.169925);
    expect(bellowsStops({ magnification: 1 })).toBe(2);
  });

  it("seven settings, before and behind the lens [peer: runners/optics.py, edge rays]", () => {
    for (const { magnification, pupilRatio, lossStops } of table.rows) {
      expectClose(bellowsStops({ magnification, pupilRatio }), lossStops, 1e-9);
    }
  });

  it("an original of 12 drawn 8 high: factor 2.8 [army-ss0512, one decimal]", () => {
    const { image, original, factor } = examples["training-course"].byImage;
    expect(2 ** bellowsStops({ magnification: image / original })).toBeCloseTo(factor, 1);
  });

  it("magnification 0.5: 2¼ times the time [closeup-textbook]", () => {
    const { magnification, factor } = examples.textbook;
    expectClose(2 ** bellowsStops({ magnification }), factor);
  });

  it("is 2 log2(v / f) for equal pupils [property]", () => {
    fc.assert(
      fc.property(some.focalLengthMm, some.magnification, (focalLengthMm, magnification) => {
        const extensionMm = extension({ focalLengthMm, magnification });
        expectClose(bellowsStops({ magnification }), 2 * Math.log2(extensionMm / focalLengthMm), 1e-9);
      }),
      seeded,
    );
  });

  it("the slip of taking v / f as the factor of time gives half the stops [peer: runners/optics.py]", () => {
    for (const { magnification, pupilRatio, linearSlipStops } of table.rows) {
      expectClose(bellowsStops({ magnification, pupilRatio }) / 2, linearSlipStops, 1e-9);
    }
  });

  it("rises with the magnification and falls with the pupil ratio [property]", () => {
    fc.assert(
      fc.property(some.magnification, some.pupilRatio, (magnification, pupilRatio) => {
        const here = bellowsStops({ magnification, pupilRatio });
        expect(bellowsStops({ magnification: magnification * 1.01, pupilRatio })).toBeGreaterThan(here);
        expect(bellowsStops({ magnification, pupilRatio: pupilRatio * 1.01 })).toBeLessThan(here);
      }),
      seeded,
    );
  });

  it("is 0 for a distant subject [by hand]", () => {
    expect(bellowsStops({ magnification: 0 })).toBe(0);
  });
});
