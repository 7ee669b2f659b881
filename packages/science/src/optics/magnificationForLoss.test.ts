import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose, seeded, some } from "../../fixtures/optics/checking.ts";
import { bellowsStops } from "./bellowsStops.ts";
import { magnificationForLoss } from "./magnificationForLoss.ts";

describe("magnificationForLoss", () => {
  it("a third of a stop at m 0.12246205, one stop at 0.41421356, two at life size [by hand]", () => {
    expectClose(magnificationForLoss({ lossStops: 1 / 3 }), 0.12246205);
    expectClose(magnificationForLoss({ lossStops: 1 }), 0.41421356);
    expectClose(magnificationForLoss({ lossStops: 2 }), 1);
  });

  it("undoes bellowsStops [property]", () => {
    fc.assert(
      fc.property(some.magnification, some.pupilRatio, (magnification, pupilRatio) => {
        const lossStops = bellowsStops({ magnification, pupilRatio });
        expectClose(magnificationForLoss({ lossStops, pupilRatio }), magnification, 1e-9);
      }),
      seeded,
    );
  });

  it("nothing is lost at infinity [by hand]", () => {
    expect(magnificationForLoss({ lossStops: 0 })).toBe(0);
  });
});
