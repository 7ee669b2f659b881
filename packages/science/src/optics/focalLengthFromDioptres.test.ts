import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal } from "../../fixtures/optics/checking.ts";
import examples from "../../fixtures/optics/worked-examples.json";
import { focalLengthFromDioptres } from "./focalLengthFromDioptres.ts";

describe("focalLengthFromDioptres", () => {
  it("1, 2, 4 and 20 dioptres: 1000, 500, 250 and 50 mm [dioptre-pages]", () => {
    for (const { dioptres, focalLengthMm } of examples.dioptres.single) {
      expectClose(focalLengthFromDioptres({ dioptres }), focalLengthMm);
    }
  });

  it("+3.25: 307.69231 mm [by hand]", () => {
    expectClose(focalLengthFromDioptres({ dioptres: 3.25 }), 307.69231);
  });

  it("a lens of no power or one that spreads light makes no picture [by hand]", () => {
    for (const dioptres of [0, -0.25]) {
      expectRefusal(() => focalLengthFromDioptres({ dioptres }), "notConverging", "dioptres");
    }
    expect(focalLengthFromDioptres({ dioptres: 0.25 })).toBe(4000);
  });
});
