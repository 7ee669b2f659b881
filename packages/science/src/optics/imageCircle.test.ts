import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded, some } from "../../fixtures/optics/checking.ts";
import { imageCircle } from "./imageCircle.ts";

describe("imageCircle", () => {
  it("150 mm lens of 70°: 210.06226 mm, at m 0.25 262.57783 mm [by hand]", () => {
    expectClose(imageCircle({ focalLengthMm: 150, halfAngleDeg: 35 }), 210.06226);
    expectClose(imageCircle({ focalLengthMm: 150, halfAngleDeg: 35, magnification: 0.25 }), 262.57783);
  });

  it("life size doubles it, one tenth adds 10 per cent [coverage-pages: circle × (1 + M)]", () => {
    fc.assert(
      fc.property(some.focalLengthMm, fc.double({ min: 1, max: 60, noNaN: true }), (focalLengthMm, halfAngleDeg) => {
        const atInfinity = imageCircle({ focalLengthMm, halfAngleDeg });
        expectClose(imageCircle({ focalLengthMm, halfAngleDeg, magnification: 1 }), 2 * atInfinity, 1e-12);
        expectClose(imageCircle({ focalLengthMm, halfAngleDeg, magnification: 0.1 }), 1.1 * atInfinity, 1e-12);
      }),
      seeded,
    );
  });

  it("a half angle of 45° draws a circle of two focal lengths; 0° draws none, 90° is refused [by hand]", () => {
    expectClose(imageCircle({ focalLengthMm: 150, halfAngleDeg: 45 }), 300);
    expect(imageCircle({ focalLengthMm: 150, halfAngleDeg: 0 })).toBe(0);
    for (const halfAngleDeg of [90, 91, -0.001]) {
      expectRefusal(() => imageCircle({ focalLengthMm: 150, halfAngleDeg }), "offAxisAngle", "halfAngleDeg");
    }
    expect(imageCircle({ focalLengthMm: 150, halfAngleDeg: 89.9 })).toBeGreaterThan(1e5);
  });
});
