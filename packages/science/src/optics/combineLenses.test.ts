import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded, some } from "../../fixtures/optics/checking.ts";
import peer from "../../fixtures/optics/sympy-lens.json";
import examples from "../../fixtures/optics/worked-examples.json";
import { combineLenses } from "./combineLenses.ts";
import { focalLengthFromDioptres } from "./focalLengthFromDioptres.ts";

describe("combineLenses", () => {
  it("250 and 400 mm, 20 mm apart: 158.73016; 210 mm with +2 dioptres: 147.88732 [by hand]", () => {
    const pair = { firstFocalLengthMm: 250, secondFocalLengthMm: 400, separationMm: 20 };
    expectClose(combineLenses(pair), 158.73016);
    const closeUp = focalLengthFromDioptres({ dioptres: 2 });
    expectClose(combineLenses({ firstFocalLengthMm: 210, secondFocalLengthMm: closeUp }), 147.88732);
  });

  it("four pairs, two with a lens that spreads light [peer: sympy physics.optics, ray transfer matrices]", () => {
    for (const { focalLengthMm, ...pair } of peer.pairs) expectClose(combineLenses(pair), focalLengthMm, 1e-12);
  });

  it("300 and 400 mm: 172 mm; 180 mm with +3: 116.8 mm [dioptre-pages, rounded on the way]", () => {
    for (const { firstFocalLengthMm, secondFocalLengthMm, focalLengthMm } of examples.dioptres.pairs) {
      const found = combineLenses({ firstFocalLengthMm, secondFocalLengthMm });
      expect(Math.abs(found - focalLengthMm)).toBeLessThan(focalLengthMm > 150 ? 1 : 0.1);
    }
  });

  it("is the same from either side, and in contact the powers add [property]", () => {
    fc.assert(
      fc.property(some.focalLengthMm, some.focalLengthMm, some.share, (first, second, share) => {
        const separationMm = share * Math.min(first, second);
        const there = combineLenses({ firstFocalLengthMm: first, secondFocalLengthMm: second, separationMm });
        const back = combineLenses({ firstFocalLengthMm: second, secondFocalLengthMm: first, separationMm });
        expectClose(there, back, 1e-12);
        const contact = combineLenses({ firstFocalLengthMm: first, secondFocalLengthMm: second });
        expectClose(1 / contact, 1 / first + 1 / second, 1e-12);
      }),
      seeded,
    );
  });

  it("refuses pairs that do not gather light, and a focal length of 0 [by hand]", () => {
    for (const [firstFocalLengthMm, secondFocalLengthMm, separationMm] of [
      [250, -250, 0],
      [250, -200, 0],
      [-300, -300, 0],
      [250, 400, 650],
      [250, 400, 700],
    ] as const) {
      const pair = { firstFocalLengthMm, secondFocalLengthMm, separationMm };
      expectRefusal(() => combineLenses(pair), "notConverging", "firstFocalLengthMm");
    }
    expect(combineLenses({ firstFocalLengthMm: 250, secondFocalLengthMm: 400, separationMm: 649.9 })).toBeGreaterThan(
      9e5,
    );
    expectRefusal(
      () => combineLenses({ firstFocalLengthMm: 250, secondFocalLengthMm: 0 }),
      "notPositive",
      "secondFocalLengthMm",
    );
    expectRefusal(
      () => combineLenses({ firstFocalLengthMm: 0, secondFocalLengthMm: 250 }),
      "notPositive",
      "firstFocalLengthMm",
    );
  });
});
