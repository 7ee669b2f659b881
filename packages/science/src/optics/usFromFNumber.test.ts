import { describe, expect, it } from "vitest";
import { expectClose } from "../../fixtures/optics/checking.ts";
import table from "../../fixtures/optics/us-stops.json";
import { exactFNumber } from "./exactFNumber.ts";
import { usFromFNumber } from "./usFromFNumber.ts";

describe("usFromFNumber", () => {
  it("f/16 is U.S. 16, f/8 is U.S. 4, f/4 is U.S. 1 [us-stops]", () => {
    expect(usFromFNumber({ fNumber: 16 })).toBe(16);
    expect(usFromFNumber({ fNumber: 8 })).toBe(4);
    expect(usFromFNumber({ fNumber: 4 })).toBe(1);
  });

  it("f/4.5 is 1.26 and f/6.3 near 2.5 [us-stops]", () => {
    for (const { us, fNumber } of table.measured) {
      expect(Math.abs(usFromFNumber({ fNumber }) - us)).toBeLessThan(us < 2 ? 0.01 : 0.03);
    }
  });

  it("goes with the time of exposure: each full stop doubles it [us-stops, column exposure]", () => {
    for (const { us, exposure } of table.magazine) {
      const stops = 6 + Math.log2(exposure);
      expectClose(usFromFNumber({ fNumber: exactFNumber({ stopsFromOne: stops }) }), us);
    }
  });
});
