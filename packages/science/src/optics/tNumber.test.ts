import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded, some } from "../../fixtures/optics/checking.ts";
import examples from "../../fixtures/optics/worked-examples.json";
import { tNumber } from "./tNumber.ts";

describe("tNumber", () => {
  it("f/2 at 75 %: T/2.309; f/4 at half: one stop more [f-number-article]", () => {
    for (const { fNumber, transmission, tNumber: printed } of examples["t-stops"].rows) {
      // ± 0.001: the first is cut off after three decimals.
      expect(Math.abs(tNumber({ fNumber, transmission }) - printed)).toBeLessThan(0.001);
    }
  });

  it("f/8 at 0.70: T/9.5618289 [by hand]", () => {
    expectClose(tNumber({ fNumber: 8, transmission: 0.7 }), 9.5618289);
  });

  it("is as many stops above the f-number as the glass loses [property]", () => {
    fc.assert(
      fc.property(some.fNumber, fc.double({ min: 0.01, max: 1, noNaN: true }), (fNumber, transmission) => {
        const stops = 2 * Math.log2(tNumber({ fNumber, transmission }) / fNumber);
        expectClose(stops, -Math.log2(transmission), 1e-9);
      }),
      seeded,
    );
  });

  it("a lossless lens keeps its f-number; more than all the light is refused [by hand]", () => {
    expect(tNumber({ fNumber: 8, transmission: 1 })).toBe(8);
    expectRefusal(() => tNumber({ fNumber: 8, transmission: 1.0001 }), "transmissionOutOfRange", "transmission");
    expectRefusal(() => tNumber({ fNumber: 8, transmission: 0 }), "notPositive", "transmission");
  });
});
