import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, seeded } from "../../fixtures/optics/checking.ts";
import series from "../../fixtures/optics/stop-series.json";
import { exactFNumber } from "./exactFNumber.ts";

describe("exactFNumber", () => {
  it("the marked 11 and 45 stand for 11.313708 and 45.254832 [stop-pages, course]", () => {
    for (const { stopsFromOne, fNumber } of series.exact) expectClose(exactFNumber({ stopsFromOne }), fNumber);
  });

  it("thirds from f/1 to f/161.27 [stop-pages, two decimals]", () => {
    for (const [index, printed] of series.thirdsToTwoDecimals.entries()) {
      // ± 0.006: the list is rounded, twice where it ends in 5.
      expect(Math.abs(exactFNumber({ stopsFromOne: index / 3 }) - printed)).toBeLessThan(0.006);
    }
  });

  it("every mark of full, half and third stops lies near its member: a tenth of a stop from f/2 on [stop-pages]", () => {
    // Marks are rounded by custom: 22 for 22.627 is 0.08 stop, 1.2 for 1.26 is 0.14 and the farthest of all.
    const steps = { full: 1, halves: 2, thirds: 3 } as const;
    for (const [kind, perStop] of Object.entries(steps)) {
      for (const [index, mark] of series.marked[kind as keyof typeof steps].entries()) {
        const off = Math.abs(2 * Math.log2(exactFNumber({ stopsFromOne: index / perStop }) / mark));
        expect(off, `${kind} ${mark}`).toBeLessThan(mark < 2 ? 0.15 : 0.1);
      }
    }
  });

  it("taking a marked 22 as 22 is 0.081136763 stop; k = 6⅔ is 10.079368 [by hand]", () => {
    expectClose(2 * Math.log2(exactFNumber({ stopsFromOne: 9 }) / 22), 0.081136763);
    expectClose(exactFNumber({ stopsFromOne: 20 / 3 }), 10.079368);
  });

  it("two stops more double it, also below f/1 [property]", () => {
    fc.assert(
      fc.property(fc.double({ min: -6, max: 16, noNaN: true }), (stopsFromOne) => {
        expectClose(exactFNumber({ stopsFromOne: stopsFromOne + 2 }), 2 * exactFNumber({ stopsFromOne }), 1e-12);
      }),
      seeded,
    );
    expect(exactFNumber({ stopsFromOne: 0 })).toBe(1);
    expectClose(exactFNumber({ stopsFromOne: -1 }), Math.SQRT1_2);
  });
});
