import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded, some } from "../../fixtures/optics/checking.ts";
import { bellowsFactor } from "./bellowsFactor.ts";
import { bellowsStopsFromExtension } from "./bellowsStopsFromExtension.ts";
import { extension } from "./extension.ts";

describe("bellowsStopsFromExtension", () => {
  it("210 mm lens at 315 mm: 1.169925 stops [greivenkamp-2004 p. 29; by hand]", () => {
    expectClose(bellowsStopsFromExtension({ extensionMm: 315, focalLengthMm: 210 }), 1.169925);
  });

  it("is the logarithm of the factor of time [property]", () => {
    fc.assert(
      fc.property(
        some.focalLengthMm,
        some.magnification,
        some.pupilRatio,
        (focalLengthMm, magnification, pupilRatio) => {
          const bellows = { extensionMm: extension({ focalLengthMm, magnification }), focalLengthMm, pupilRatio };
          expectClose(bellowsStopsFromExtension(bellows), Math.log2(bellowsFactor(bellows)), 1e-9);
        },
      ),
      seeded,
    );
  });

  it("is 0 at the infinity position, and is refused just inside it [by hand]", () => {
    expect(bellowsStopsFromExtension({ extensionMm: 210, focalLengthMm: 210 })).toBe(0);
    expectRefusal(
      () => bellowsStopsFromExtension({ extensionMm: 209.999, focalLengthMm: 210 }),
      "extensionShorterThanFocalLength",
      "extensionMm",
    );
  });
});
