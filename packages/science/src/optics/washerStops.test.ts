import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal, seeded, some } from "../../fixtures/optics/checking.ts";
import { stopBehindLens } from "./stopBehindLens.ts";
import { washerStops } from "./washerStops.ts";

describe("washerStops", () => {
  it("180 mm, f/8 to f/22 at the lens: 22.5, 15.909903, 11.25, 7.9549513 mm [by hand]", () => {
    const { holesMm } = washerStops({ focalLengthMm: 180, fNumbers: [8, 11.313708, 16, 22.627417] });
    for (const [index, expected] of [22.5, 15.909903, 11.25, 7.9549513].entries()) {
      expectClose(holesMm[index] ?? null, expected);
    }
  });

  it("250 mm, f/11, card 30 mm behind: 20 mm [by hand]", () => {
    expectClose(washerStops({ focalLengthMm: 250, fNumbers: [11], stopDistanceMm: 30 }).holesMm[0] ?? null, 20);
  });

  it("the hole, put back behind the lens, has the f-number asked for [property]", () => {
    fc.assert(
      fc.property(some.focalLengthMm, some.fNumber, some.share, (focalLengthMm, fNumber, share) => {
        const stopDistanceMm = share * focalLengthMm;
        const [holeMm = Number.NaN] = washerStops({ focalLengthMm, fNumbers: [fNumber], stopDistanceMm }).holesMm;
        expectClose(stopBehindLens({ focalLengthMm, stopDistanceMm, holeMm }).fNumber, fNumber, 1e-9);
      }),
      seeded,
    );
  });

  it("no f-numbers, no holes; refuses a card at the focus, and names the f-number at fault [by hand]", () => {
    expect(washerStops({ focalLengthMm: 180, fNumbers: [] })).toEqual({ holesMm: [] });
    expectRefusal(
      () => washerStops({ focalLengthMm: 180, fNumbers: [8], stopDistanceMm: 180 }),
      "stopBeyondFocus",
      "stopDistanceMm",
    );
    expectRefusal(() => washerStops({ focalLengthMm: 180, fNumbers: [8, 0] }), "notPositive", "fNumbers/1");
    expectRefusal(() => washerStops({ focalLengthMm: 180, fNumbers: [Number.NaN] }), "notFinite", "fNumbers/0");
  });
});
