import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded, some } from "../../fixtures/exposure/checking.ts";
import { openingsEffectiveTime } from "./openingsEffectiveTime.ts";

describe("openingsEffectiveTime", () => {
  const four = { openings: 4, openingTimeS: 15, exponent: 0.9 } as const;

  it("4 openings of 15 s at p 0.9: 39.841541 s as one, 45.765912 s each; 0.2 stop apart [by hand]", () => {
    const asOne = openingsEffectiveTime(four);
    const each = openingsEffectiveTime({ ...four, rule: "each" });
    expectClose(asOne, 39.841541);
    expectClose(each, 45.765912);
    expectClose(Math.log2(each / asOne), 0.2, 1e-9);
  });

  it("each is never worth less than as one, and one opening is the same by both [property]", () => {
    fc.assert(
      fc.property(some.timeS, some.exponent, fc.integer({ min: 1, max: 12 }), (openingTimeS, exponent, openings) => {
        const asked = { openings, openingTimeS, exponent };
        const each = openingsEffectiveTime({ ...asked, rule: "each" });
        expect(each).toBeGreaterThanOrEqual(openingsEffectiveTime(asked) * (1 - 1e-12));
        const one = { ...asked, openings: 1 };
        expectClose(openingsEffectiveTime({ ...one, rule: "each" }), openingsEffectiveTime(one), 1e-12);
      }),
      seeded,
    );
  });

  it("refuses half an opening, none, and an exponent no paper has", () => {
    expectRefusal(() => openingsEffectiveTime({ ...four, openings: 2.5 }), "wrongType", "openings");
    expectRefusal(() => openingsEffectiveTime({ ...four, openings: 0 }), "outOfRange", "openings");
    expectRefusal(() => openingsEffectiveTime({ ...four, openingTimeS: 0 }), "notPositive", "openingTimeS");
    expectRefusal(() => openingsEffectiveTime({ ...four, exponent: 2 }), "exponentOutOfRange", "exponent");
  });
});
