import fc from "fast-check";
import { expect, test } from "vitest";
import { gradeOfRange } from "./gradeOfRange.ts";

test("R 100 is grade 2, R 64 grade 5, R 170 the softest and R 50 the hardest of six [focal-encyclopedia; inner limits from memory]", () => {
  expect([170, 140, 100, 64, 50].map((range) => gradeOfRange({ range }))).toEqual([0, 0, 2, 5, 5]);
});

test("just beyond a limit is the next grade; outside the scale there is none", () => {
  expect([139.9, 114.9, 94.9, 79.9, 64.9, 49.9].map((range) => gradeOfRange({ range }))).toEqual([1, 2, 3, 4, 5, 6]);
  expect([171, 34.9].map((range) => gradeOfRange({ range }))).toEqual([null, null]);
  expect(() => gradeOfRange({ range: 0 })).toThrow(expect.objectContaining({ code: "notPositive" }));
});

test("a longer range is never a harder grade [property]", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 35, max: 170, noNaN: true }),
      fc.double({ min: 35, max: 170, noNaN: true }),
      (one, other) => {
        const [short, long] = [Math.min(one, other), Math.max(one, other)];
        expect(gradeOfRange({ range: long }) ?? 9).toBeLessThanOrEqual(gradeOfRange({ range: short }) ?? -9);
      },
    ),
    { seed: 20261125 },
  );
});
