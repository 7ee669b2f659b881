import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded, some } from "../../fixtures/optics/checking.ts";
import examples from "../../fixtures/optics/worked-examples.json";
import { extension } from "./extension.ts";
import { magnificationFromExtension } from "./magnificationFromExtension.ts";

describe("magnificationFromExtension", () => {
  it("210 mm lens at 315 mm: m 0.5 [lens-relations; by hand]", () => {
    expectClose(magnificationFromExtension({ focalLengthMm: 210, extensionMm: 315 }), 0.5);
  });

  it("200 and 150 mm lenses at 320 mm: 60 % and 1.133 [lens-examples, three decimals]", () => {
    for (const { focalLengthMm, extensionMm, magnification } of examples["lens-page"].magnificationFromExtension) {
      expect(magnificationFromExtension({ focalLengthMm, extensionMm })).toBeCloseTo(magnification, 3);
    }
  });

  it("undoes extension [property]", () => {
    fc.assert(
      fc.property(some.focalLengthMm, some.magnification, (focalLengthMm, magnification) => {
        const extensionMm = extension({ focalLengthMm, magnification });
        expectClose(magnificationFromExtension({ focalLengthMm, extensionMm }), magnification, 1e-9);
      }),
      seeded,
    );
  });

  it("is 0 at the infinity position, and is refused just inside it [by hand]", () => {
    expect(magnificationFromExtension({ focalLengthMm: 210, extensionMm: 210 })).toBe(0);
    expectRefusal(
      () => magnificationFromExtension({ focalLengthMm: 210, extensionMm: 209.999 }),
      "extensionShorterThanFocalLength",
      "extensionMm",
    );
  });
});
