import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, seeded, some } from "../../fixtures/optics/checking.ts";
import { bellowsStops } from "./bellowsStops.ts";
import { extensionErrorStops } from "./extensionErrorStops.ts";

describe("extensionErrorStops", () => {
  it("210 ± 4 mm lens, travel 105 ± 1 mm: 0.020482312 stop [by hand]", () => {
    const given = { focalLengthMm: 210, focalLengthSdMm: 4, travelMm: 105, travelSdMm: 1 };
    expectClose(extensionErrorStops(given), 0.020482312);
  });

  it("is the slope of the bellows loss, by small steps to either side [peer: differences of bellowsStops]", () => {
    const travel = fc.double({ min: 1, max: 1500, noNaN: true });
    fc.assert(
      fc.property(some.focalLengthMm, travel, (focalLengthMm, travelMm) => {
        const loss = (f: number, e: number) => bellowsStops({ magnification: e / f });
        const step = 1e-3;
        const byTravel = (loss(focalLengthMm, travelMm + step) - loss(focalLengthMm, travelMm - step)) / (2 * step);
        const byFocal = (loss(focalLengthMm + step, travelMm) - loss(focalLengthMm - step, travelMm)) / (2 * step);
        const expected = Math.hypot(byTravel * 0.7, byFocal * 3);
        const found = extensionErrorStops({ focalLengthMm, focalLengthSdMm: 3, travelMm, travelSdMm: 0.7 });
        expectClose(found, expected, 1e-5);
      }),
      seeded,
    );
  });

  it("at infinity the focal length does not count, only the ruler [by hand]", () => {
    const given = { focalLengthMm: 200, focalLengthSdMm: 10, travelMm: 0, travelSdMm: 1 };
    expectClose(extensionErrorStops(given), 2 / Math.LN2 / 200);
  });

  it("is 0 without doubt [by hand]", () => {
    expect(extensionErrorStops({ focalLengthMm: 210, focalLengthSdMm: 0, travelMm: 50, travelSdMm: 0 })).toBe(0);
  });
});
