import { expect, test } from "vitest";
import rows from "../../fixtures/light/ev-table.json";
import { illuminanceFromEv100 } from "./illuminanceFromEv100.ts";

test("the EV table from −4 to 16, in lx [apex, iso-2720: C = 250; by hand]", () => {
  for (const row of rows) {
    expect(illuminanceFromEv100({ ev100: row.ev100 }) / row.illuminanceLx).toBeCloseTo(1, 9);
  }
});

test("EV 0 is 2.5 lx [iso-12232 as documented by colour-hdri]", () => {
  expect(illuminanceFromEv100({ ev100: 0 })).toBe(2.5);
});

test("what is not a number, and a C of zero, are refused", () => {
  expect(() => illuminanceFromEv100({ ev100: Number.POSITIVE_INFINITY })).toThrow(
    expect.objectContaining({ code: "notFinite", key: "ev100" }),
  );
  expect(() => illuminanceFromEv100({ ev100: 5, meterC: -1 })).toThrow(
    expect.objectContaining({ code: "notPositive", key: "meterC" }),
  );
});
