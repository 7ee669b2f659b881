import { describe, expect, it } from "vitest";
import { expectClose, expectRefusal } from "../../fixtures/exposure/checking.ts";
import published from "../../fixtures/exposure/published.json";
import peer from "../../fixtures/exposure/reciprocity.json";
import { type ReciprocityTable, reciprocityFromTable } from "./reciprocityFromTable.ts";

const table = [
  [1, 1],
  [10, 14],
  [100, 200],
] as const;

describe("reciprocityFromTable", () => {
  it("finds 15 s and 25 s of a published table from the rows around them [reciprocity-tables]", () => {
    for (const [meteredTimeS, timeS] of published.table.leftOut as [number, number][]) {
      const found = reciprocityFromTable({ meteredTimeS, table: published.table.table as [number, number][] });
      expectClose(found.timeS, timeS, 0, published.table.toleranceS);
    }
  });

  it("eight times inside an invented table [peer: numpy.interp in logarithms]", () => {
    for (const { meteredTimeS, timeS } of peer.tableRows) {
      const found = reciprocityFromTable({ meteredTimeS, table: peer.table as [number, number][] });
      expectClose(found.timeS, timeS, 1e-12);
      expect(found.extrapolated).toBe(false);
    }
  });

  it("5 s need 6.3257077 s, 40 s need 69.414196 s [by hand]", () => {
    expectClose(reciprocityFromTable({ meteredTimeS: 5, table }).timeS, 6.3257077);
    expectClose(reciprocityFromTable({ meteredTimeS: 40, table }).timeS, 69.414196);
  });

  it("keeps the first ratio below the table, and the last slope above it, and says so [by hand]", () => {
    expect(reciprocityFromTable({ meteredTimeS: 0.2, table })).toEqual({ timeS: 0.2, extrapolated: false });
    const beyond = reciprocityFromTable({ meteredTimeS: 300, table });
    expectClose(beyond.timeS, 711.30894);
    expect(beyond.extrapolated).toBe(true);
    const last = reciprocityFromTable({ meteredTimeS: 100, table });
    expectClose(last.timeS, 200, 1e-12);
    expect(last.extrapolated).toBe(false);
  });

  it("refuses a table too short, falling, or not positive, and names the place", () => {
    const asked = (rows: ReciprocityTable) => () => reciprocityFromTable({ meteredTimeS: 5, table: rows });
    expectRefusal(asked([[1, 1]]), "tooFew", "table");
    expectRefusal(
      asked([
        [1, 1],
        [1, 2],
      ]),
      "tableNotRising",
      "table",
    );
    expectRefusal(
      asked([
        [1, 3],
        [10, 3],
      ]),
      "tableNotRising",
      "table",
    );
    expectRefusal(
      asked([
        [0, 1],
        [10, 14],
      ]),
      "notPositive",
      "table/0/0",
    );
    expectRefusal(
      asked([
        [1, 1],
        [10, Number.POSITIVE_INFINITY],
      ]),
      "notFinite",
      "table/1/1",
    );
    expectRefusal(() => reciprocityFromTable({ meteredTimeS: -1, table }), "notPositive", "meteredTimeS");
  });
});
