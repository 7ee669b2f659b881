import fc from "fast-check";
import { describe, it } from "vitest";
import { expectClose, expectRefusal, seeded, some } from "../../fixtures/optics/checking.ts";
import { extension } from "./extension.ts";
import { focalLengthFromTwo } from "./focalLengthFromTwo.ts";

describe("focalLengthFromTwo", () => {
  const settings = {
    firstExtensionMm: 221,
    firstMagnification: 0.05,
    secondExtensionMm: 305,
    secondMagnification: 0.45,
  };

  it("221 mm at m 0.05 and 305 mm at m 0.45: 210 mm [by hand]", () => {
    expectClose(focalLengthFromTwo(settings), 210);
  });

  it("finds the focal length wherever the principal plane lies, in either order [property]", () => {
    const offset = fc.double({ min: -20, max: 60, noNaN: true });
    const apart = fc.double({ min: 0.05, max: 2, noNaN: true });
    fc.assert(
      fc.property(some.focalLengthMm, some.magnification, apart, offset, (focalLengthMm, m, more, offsetMm) => {
        const at = (magnification: number) => extension({ focalLengthMm, magnification }) + offsetMm;
        const found = focalLengthFromTwo({
          firstExtensionMm: at(m),
          firstMagnification: m,
          secondExtensionMm: at(m + more),
          secondMagnification: m + more,
        });
        const turned = focalLengthFromTwo({
          firstExtensionMm: at(m + more),
          firstMagnification: m + more,
          secondExtensionMm: at(m),
          secondMagnification: m,
        });
        expectClose(found, focalLengthMm, 1e-9);
        expectClose(turned, focalLengthMm, 1e-9);
      }),
      seeded,
    );
  });

  it("takes a distant subject as one of the two [by hand]", () => {
    expectClose(focalLengthFromTwo({ ...settings, firstExtensionMm: 210.5, firstMagnification: 0 }), 210);
  });

  it("refuses equal magnifications, equal extensions and a lens that spreads light [by hand]", () => {
    for (const change of [
      { secondMagnification: 0.05 },
      { secondExtensionMm: 221 },
      { secondExtensionMm: 200 },
      { secondExtensionMm: 221, secondMagnification: 0.05 },
    ]) {
      expectRefusal(() => focalLengthFromTwo({ ...settings, ...change }), "notALens", "firstExtensionMm");
    }
    const upright = { ...settings, secondMagnification: -0.1 };
    expectRefusal(() => focalLengthFromTwo(upright), "negative", "secondMagnification");
  });
});
