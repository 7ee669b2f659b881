import fc from "fast-check";
import { expect, test } from "vitest";
import rows from "../../fixtures/light/ev-table.json";
import { luminanceFromEv100 } from "./luminanceFromEv100.ts";
import { timeFromLuminance } from "./timeFromLuminance.ts";

const fixed = { seed: 20261125 };

test("the EV table from −4 to 16, in cd/m² [apex, iso-2720: K = 12.5; by hand]", () => {
  expect(rows).toHaveLength(21);
  for (const row of rows) {
    expect(luminanceFromEv100({ ev100: row.ev100 }) / row.luminanceCdM2).toBeCloseTo(1, 9);
  }
});

test("the EV table from −4 to 16, in seconds at f/8 on EI 6 [apex, iso-2720; by hand]", () => {
  for (const row of rows) {
    const luminanceCdM2 = luminanceFromEv100({ ev100: row.ev100 });
    const timeS = timeFromLuminance({ luminanceCdM2, fNumber: 8, exposureIndex: 6 });
    // Eight digits in the table.
    expect(timeS / row.timeAtF8Ei6S).toBeCloseTo(1, 7);
  }
});

test("EV 0 is 0.125 cd/m² [iso-12232 as documented by colour-hdri]", () => {
  expect(luminanceFromEv100({ ev100: 0 })).toBe(0.125);
});

test("one EV doubles the light [property]", () => {
  fc.assert(
    fc.property(fc.double({ min: -30, max: 30, noNaN: true }), (ev100) => {
      expect(luminanceFromEv100({ ev100: ev100 + 1 }) / luminanceFromEv100({ ev100 })).toBeCloseTo(2, 9);
    }),
    fixed,
  );
});

test("what is not a number, and a K of zero, are refused", () => {
  expect(() => luminanceFromEv100({ ev100: Number.NaN })).toThrow(
    expect.objectContaining({ code: "notFinite", key: "ev100" }),
  );
  expect(() => luminanceFromEv100({ ev100: 5, meterK: 0 })).toThrow(
    expect.objectContaining({ code: "notPositive", key: "meterK" }),
  );
});
