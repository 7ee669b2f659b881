import fc from "fast-check";
import { expect, test } from "vitest";
import { bridgeStops } from "./bridgeStops.ts";
import { ev100 } from "./ev100.ts";

const fixed = { seed: 20261125 };
const speed = fc.double({ min: 0.01, max: 10_000, noNaN: true });

test.each([
  [6, 3, 1],
  [6, 0.75, 3],
  [3, 0.2, 3.9068906],
  [25, 1.6, 3.9657843],
])("from ISO %d on the dial to EI %d: %d stops [by hand]", (dialIso, exposureIndex, stops) => {
  expect(bridgeStops({ dialIso, exposureIndex })).toBeCloseTo(stops, 7);
});

test("a paper faster than the dial takes stops away [by hand]", () => {
  expect(bridgeStops({ dialIso: 6, exposureIndex: 12 })).toBe(-1);
});

test("there and back is nothing, and two bridges add [property]", () => {
  fc.assert(
    fc.property(speed, speed, speed, (a, b, c) => {
      const direct = bridgeStops({ dialIso: a, exposureIndex: c });
      const inTwo = bridgeStops({ dialIso: a, exposureIndex: b }) + bridgeStops({ dialIso: b, exposureIndex: c });
      expect(inTwo).toBeCloseTo(direct, 9);
    }),
    fixed,
  );
});

test("an EV100 is free of the dial: the bridge is what a reading at the index would have shown [property]", () => {
  fc.assert(
    fc.property(speed, speed, (dialIso, exposureIndex) => {
      const timeS = 2;
      const timeAtIndexS = timeS * 2 ** bridgeStops({ dialIso, exposureIndex });
      const there = ev100({ fNumber: 8, timeS, iso: dialIso });
      expect(ev100({ fNumber: 8, timeS: timeAtIndexS, iso: exposureIndex })).toBeCloseTo(there, 9);
    }),
    fixed,
  );
});

test("zero is refused at its key", () => {
  expect(() => bridgeStops({ dialIso: 0, exposureIndex: 3 })).toThrow(
    expect.objectContaining({ code: "notPositive", key: "dialIso" }),
  );
  expect(() => bridgeStops({ dialIso: 6, exposureIndex: 0 })).toThrow(
    expect.objectContaining({ code: "notPositive", key: "exposureIndex" }),
  );
});
