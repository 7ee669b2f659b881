import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded, some } from "../../fixtures/optics/checking.ts";
import { magnificationFromExtension } from "./magnificationFromExtension.ts";
import { magnificationFromTravel } from "./magnificationFromTravel.ts";

describe("magnificationFromTravel", () => {
  it("52.5 mm past infinity with 210 mm: m 0.25 [lens-relations; by hand]", () => {
    expectClose(magnificationFromTravel({ focalLengthMm: 210, travelMm: 52.5 }), 0.25);
  });

  it("agrees with the extension where that is f + travel [property]", () => {
    fc.assert(
      fc.property(some.focalLengthMm, fc.double({ min: 0, max: 3000, noNaN: true }), (focalLengthMm, travelMm) => {
        const extensionMm = focalLengthMm + travelMm;
        expectClose(
          magnificationFromTravel({ focalLengthMm, travelMm }),
          magnificationFromExtension({ focalLengthMm, extensionMm }),
          1e-9,
        );
      }),
      seeded,
    );
  });

  it("is 0 at the infinity mark, and is refused before it [by hand]", () => {
    expect(magnificationFromTravel({ focalLengthMm: 210, travelMm: 0 })).toBe(0);
    expectRefusal(() => magnificationFromTravel({ focalLengthMm: 210, travelMm: -1e-9 }), "travelNegative", "travelMm");
  });
});
