import fc from "fast-check";
import { describe, it } from "vitest";
import { expectClose, seeded, some } from "../../fixtures/optics/checking.ts";
import { fNumber } from "./fNumber.ts";
import { washerStops } from "./washerStops.ts";

describe("fNumber", () => {
  it("210 mm with 26.25 mm is f/8, 300 with 37 is f/8.1081081 [walree: definition; by hand]", () => {
    expectClose(fNumber({ focalLengthMm: 210, diameterMm: 26.25 }), 8);
    expectClose(fNumber({ focalLengthMm: 300, diameterMm: 37 }), 8.1081081);
  });

  it("half a millimetre too much in 20 mm is 0.071247819 stop [by hand]", () => {
    const right = fNumber({ focalLengthMm: 210, diameterMm: 20 });
    const wrong = fNumber({ focalLengthMm: 210, diameterMm: 20.5 });
    expectClose(2 * Math.log2(right / wrong), 0.071247819);
  });

  it("undoes washerStops at the lens [property]", () => {
    fc.assert(
      fc.property(some.focalLengthMm, some.fNumber, (focalLengthMm, wanted) => {
        const [diameterMm = Number.NaN] = washerStops({ focalLengthMm, fNumbers: [wanted] }).holesMm;
        expectClose(fNumber({ focalLengthMm, diameterMm }), wanted, 1e-12);
      }),
      seeded,
    );
  });
});
