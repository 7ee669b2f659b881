import { expect, test } from "vitest";
import { isoStandardLens } from "./isoStandardLens.ts";

test("350 to 690 nm in steps of 10, as the standard prints them [iso-6728, read in a public data set]", () => {
  const printed =
    "0.00 0.07 0.23 0.42 0.60 0.74 0.83 0.88 0.91 0.94 0.95 0.97 0.98 0.98 0.99 0.99 1.00 1.00 1.00 1.00 1.00 1.00 " +
    "1.00 1.00 0.99 0.99 0.99 0.98 0.98 0.97 0.97 0.96 0.95 0.94 0.94";
  expect(isoStandardLens.map(([nm]) => nm)).toEqual(Array.from({ length: 35 }, (_, index) => 350 + 10 * index));
  expect(isoStandardLens.map(([, share]) => share)).toEqual(printed.split(" ").map(Number));
});
