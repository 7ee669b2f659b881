import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { expectClose, expectRefusal, seeded } from "../../fixtures/exposure/checking.ts";
import peer from "../../fixtures/exposure/hand.json" with { type: "json" };
import { chiSquared } from "../numbers/chiSquared.ts";
import { studentT } from "../numbers/studentT.ts";
import { handFromOpenings } from "./handFromOpenings.ts";

const opening = fc.record({
  wantedS: fc.constantFrom(2, 4, 8, 13),
  givenS: fc.double({ min: 1, max: 20, noNaN: true }),
});

describe("handFromOpenings", () => {
  test.each(peer.hands.map((hand, place) => ({ place, hand })))(
    "hand $place: bias, rate and unevenness, nine in ten [peer: prior times likelihood summed on a grid, scipy]",
    ({ hand }) => {
      const openings = hand.openings.map(([wantedS = 0, givenS = 0]) => ({ wantedS, givenS }));
      const found = handFromOpenings({ openings, counted: hand.counted });
      const [low = 0, middle = 0, high = 0] = hand.bias;
      // ±0.003 s and ±0.5 %: the steps of the grid are 0.004 s and 1.4 %.
      expect(Math.abs(found.biasS.value - middle)).toBeLessThan(0.003);
      expect(Math.abs(2 * 1.6448536 * found.biasS.sd - (high - low))).toBeLessThan(0.006);
      expectClose(found.unevenness.least, hand.unevenness[0] ?? 0, 0.005);
      expectClose(found.unevenness.most, hand.unevenness[2] ?? 0, 0.005);
      const rate = hand.rate;
      if (rate === undefined) return expect(found.rate).toEqual({ value: 1, sd: 0 });
      expect(Math.abs(found.rate.value - (rate[1] ?? 0))).toBeLessThan(0.001);
      expectClose(2 * 1.6448536 * found.rate.sd, (rate[2] ?? 0) - (rate[0] ?? 0), 0.01);
    },
  );

  test("one opening 0.3 s long at 4 s: bias 0.3 · 0.2²/(0.2² + 0.05) [by hand: weights of start and opening]", () => {
    expectClose(handFromOpenings({ openings: [{ wantedS: 4, givenS: 4.3 }] }).biasS.value, (0.3 * 0.04) / 0.09);
  });

  test("before any opening: no bias, and scatter of a hand before practice, widened by t of four [by hand]", () => {
    const found = handFromOpenings({ openings: [] });
    expect(found.biasS.value).toBe(0);
    // t(0.95, 4) = 2.132, as tables print it.
    expectClose(found.motorSdS, (0.1 * 2.132) / 1.645, 1e-3);
    expectClose(found.weber / found.motorSdS, 0.5);
  });

  test("order does not matter, and a hundred alike are believed: bias within 0.01 s of what they say [property]", () => {
    fc.assert(
      fc.property(fc.array(opening, { minLength: 1, maxLength: 12 }), fc.boolean(), (openings, counted) => {
        const found = handFromOpenings({ openings, counted });
        const turned = handFromOpenings({ openings: openings.toReversed(), counted });
        expectClose(turned.biasS.value, found.biasS.value, 1e-6, 1e-7);
        expect(found.unevenness.least).toBeLessThan(found.unevenness.value);
        expect(found.unevenness.most).toBeGreaterThan(found.unevenness.value);
        for (const sd of [found.biasS.sd, found.motorSdS, found.weber]) expect(sd).toBeGreaterThan(0);
      }),
      seeded,
    );
    const alike = Array.from({ length: 100 }, () => ({ wantedS: 2, givenS: 2.3 }));
    expect(Math.abs(handFromOpenings({ openings: alike }).biasS.value - 0.3)).toBeLessThan(0.01);
  });

  test("more openings make it surer: four times as many, about half the doubt [σ/√n]", () => {
    const errors = [-0.1, 0.1, 0.2, -0.2];
    const some = (times: number) =>
      handFromOpenings({
        openings: Array.from({ length: 10 * times }, (_, i) => ({ wantedS: 4, givenS: 4 + (errors[i % 4] ?? 0) })),
      });
    const ratio = some(4).biasS.sd / some(1).biasS.sd;
    expect(ratio).toBeGreaterThan(0.42);
    expect(ratio).toBeLessThan(0.58);
  });

  test("a time of nothing is refused by name", () => {
    expectRefusal(() => handFromOpenings({ openings: [{ wantedS: 0, givenS: 1 }] }), "notPositive", "wantedS");
    expectRefusal(() => handFromOpenings({ openings: [{ wantedS: 2, givenS: -1 }] }), "notPositive", "givenS");
  });
});

test("quantiles of Student's t and χ², one degree of freedom to 1001 [peer: scipy.stats]", () => {
  // To 1e-9: both are found by halving.
  for (const [p = 0, degrees = 0, value = 0] of peer.studentT) expectClose(studentT(p, degrees), value, 1e-9);
  for (const [p = 0, degrees = 0, value = 0] of peer.chiSquared) expectClose(chiSquared(p, degrees), value, 1e-9);
});
