import fc from "fast-check";
import { expect, test } from "vitest";
import { changeName } from "./change.ts";
import { deviceOf, HybridClock, timeOf, writerOf } from "./hybridClock.ts";

const nine = Date.UTC(2026, 11, 1, 9);

test("names sort in the order they were made while the time stands still or goes back", () => {
  const times = [nine, nine, nine - 5000, nine - 5000, nine + 1];
  const clock = new HybridClock({ now: () => times.shift() ?? 0, writer: "boatyard01" });
  const names = Array.from({ length: 5 }, () => clock.tick());
  expect([...names].sort()).toEqual(names);
  expect(new Set(names).size).toBe(5);
  expect(names.every((name) => changeName.test(name))).toBe(true);
  expect([timeOf(names[0] ?? ""), deviceOf(names[0] ?? ""), writerOf(names[0] ?? "")]).toEqual([
    nine,
    "boatyard",
    "boatyard01",
  ]);
});

test("a full counter takes the next millisecond", () => {
  const clock = new HybridClock({ now: () => nine, writer: "boatyard01" });
  clock.see(`${nine.toString(36).padStart(9, "0")}zzzydarkroom01`);
  const [last, next] = [clock.tick(), clock.tick()];
  expect(last.slice(9, 13)).toBe("zzzz");
  expect([timeOf(next), next.slice(9, 13)]).toEqual([nine + 1, "0000"]);
});

test("an own name comes after every name seen, however wrong the other's clock [property]", () => {
  fc.assert(
    fc.property(
      fc.array(fc.record({ offset: fc.integer({ min: -90_000, max: 40_000 }), count: fc.nat(36 ** 4 - 1) }), {
        maxLength: 30,
      }),
      (seen) => {
        const clock = new HybridClock({ now: () => nine, writer: "boatyard01" });
        for (const { offset, count } of seen) {
          const name = `${(nine + offset).toString(36).padStart(9, "0")}${count.toString(36).padStart(4, "0")}darkroom01`;
          clock.see(name);
          const own = clock.tick();
          expect(own > name).toBe(true);
          expect(clock.highest).toBe(own);
        }
      },
    ),
    { seed: 1 },
  );
});
