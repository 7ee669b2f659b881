import fc from "fast-check";
import { expect, test } from "vitest";
import { newId } from "./newId.ts";
import { isRecordId } from "./recordId.ts";

test("26 characters of Crockford's alphabet, without I, L, O and U [property]", () => {
  fc.assert(
    fc.property(fc.nat(2 ** 48 - 1), fc.float({ min: 0, max: Math.fround(0.9999999), noNaN: true }), (now, chance) => {
      const id = newId({ now, random: () => chance });
      expect(id).toMatch(/^[0-9A-HJKMNP-TV-Z]{26}$/);
      expect(isRecordId(id)).toBe(true);
    }),
    { seed: 1 },
  );
});

test("ids sort by the time they were made in [property]", () => {
  fc.assert(
    fc.property(fc.nat(2 ** 45), fc.nat(10_000), (now, later) => {
      const first = newId({ now, random: () => 0.99 });
      const second = newId({ now: now + 1 + later, random: () => 0 });
      expect(first < second).toBe(true);
    }),
    { seed: 1 },
  );
});

test("the time is written as five bits a digit: 32 ms is 10 in base 32 [by hand]", () => {
  expect(newId({ now: 32, random: () => 0 })).toBe("00000000100000000000000000");
  expect(newId({ now: 31, random: () => 31 / 32 })).toBe(`000000000Z${"Z".repeat(16)}`);
});

test("what only looks like an id is none", () => {
  for (const text of [
    "",
    "W31",
    "8".padEnd(26, "0"),
    "0".repeat(25),
    "0".repeat(27),
    `${"0".repeat(25)}I`,
    "__proto__",
  ]) {
    expect(isRecordId(text)).toBe(false);
  }
});
