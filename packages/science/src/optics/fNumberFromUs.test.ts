import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, seeded, some } from "../../fixtures/optics/checking.ts";
import table from "../../fixtures/optics/us-stops.json";
import { fNumberFromUs } from "./fNumberFromUs.ts";
import { usFromFNumber } from "./usFromFNumber.ts";

describe("fNumberFromUs", () => {
  it("U.S. 4 … 128 are f/8 … f/45.2 [us-stops, one decimal, cut off]", () => {
    for (const { us, printed } of table.magazine) {
      expect(Math.abs(fNumberFromUs({ usNumber: us }) - printed)).toBeLessThan(0.1);
    }
  });

  it("U.S. 11 is f/13.266499 [by hand]", () => {
    expectClose(fNumberFromUs({ usNumber: 11 }), 13.266499);
  });

  it("undoes usFromFNumber [property]", () => {
    fc.assert(
      fc.property(some.fNumber, (fNumber) => {
        expectClose(fNumberFromUs({ usNumber: usFromFNumber({ fNumber }) }), fNumber, 1e-12);
      }),
      seeded,
    );
  });
});
