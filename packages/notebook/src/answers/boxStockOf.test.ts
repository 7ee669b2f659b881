import { expect, test } from "vitest";
import { boxStockOf } from "./boxStockOf.ts";
import { nextBoxOf } from "./nextBoxOf.ts";
import { idNumber, recordOf } from "./testing.ts";

const box = recordOf("paperBox", idNumber(5), {
  name: "box C",
  sheetsLeft: 14,
  sheetsWhenFull: 40,
  cutIntoParts: 4,
  price: { amount: 30, currency: "EUR" },
  batch: "K2",
  reciprocityTable: [
    { meteredS: 1, neededS: 1 },
    { meteredS: 10, neededS: 15 },
  ],
});

test("40 sheets cut in four are ten large ones; a sheet costs a fortieth of the box [by hand]", () => {
  expect(boxStockOf({ box, boxes: [] })).toEqual({
    left: 14,
    full: 40,
    largerSheets: 10,
    pricePerSheet: 0.75,
    before: [],
  });
});

test("the boxes before are found one behind the other, and a ring of them is walked once", () => {
  const older = recordOf("paperBox", idNumber(6), { name: "box B", previousBoxId: idNumber(7) });
  const oldest = recordOf("paperBox", idNumber(7), { name: "box A", previousBoxId: idNumber(6) });
  const now = { ...box, previousBoxId: idNumber(6) };
  expect(boxStockOf({ box: now, boxes: [now, older, oldest] }).before.map(({ name }) => name)).toEqual([
    "box B",
    "box A",
  ]);
});

test("a new box of the same paper is full, and its index the old one with a third of a stop more doubt", () => {
  const index = recordOf("exposureIndex", idNumber(8), {
    paperBoxId: box.id,
    result: "positive",
    value: { value: 1.4, sdStops: 0.4 },
    found: { how: "ownSheets", source: "daylight:5500" },
  });
  const other = recordOf("exposureIndex", idNumber(9), { paperBoxId: idNumber(1), value: { value: 2, sdStops: 0.7 } });
  const next = nextBoxOf({ box, indexes: [index, other], name: "box D", newBoxId: idNumber(10) });
  expect(next.box).toMatchObject({ name: "box D", sheetsLeft: 40, previousBoxId: box.id, cutIntoParts: 4 });
  expect(next.box).not.toHaveProperty("batch");
  expect(next.indexes).toEqual([
    {
      paperBoxId: idNumber(10),
      result: "positive",
      value: { value: 1.4, sdStops: expect.closeTo(0.5, 9) },
      found: { how: "ownSheets", source: "daylight:5500" },
      assumed: ["value"],
    },
  ]);
});
