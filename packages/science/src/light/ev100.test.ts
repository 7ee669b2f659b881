import fc from "fast-check";
import { expect, test } from "vitest";
import { ev100 } from "./ev100.ts";
import { luminanceFromEv100 } from "./luminanceFromEv100.ts";
import { luminanceFromReading } from "./luminanceFromReading.ts";

const fixed = { seed: 20261125 };
const number = fc.double({ min: 0.01, max: 1000, noNaN: true });

test("at ISO 100 it is the plain EV; at ISO 6.25 four stops more [apex; by hand]", () => {
  expect(ev100({ fNumber: 8, timeS: 0.25, iso: 100 })).toBe(8);
  expect(ev100({ fNumber: 8, timeS: 0.25, iso: 6.25 })).toBe(12);
  expect(ev100({ fNumber: 8, timeS: 0.25, iso: 400 })).toBe(6);
});

test("the same light whatever the dial says: ISO traded for time [property]", () => {
  fc.assert(
    fc.property(number, number, number, number, (fNumber, timeS, iso, factor) => {
      const there = ev100({ fNumber, timeS, iso });
      expect(ev100({ fNumber, timeS: timeS / factor, iso: iso * factor })).toBeCloseTo(there, 9);
    }),
    fixed,
  );
});

test("light by way of EV100 and light from the reading are one [property]", () => {
  fc.assert(
    fc.property(number, number, number, (fNumber, timeS, iso) => {
      const viaEv = luminanceFromEv100({ ev100: ev100({ fNumber, timeS, iso }) });
      expect(viaEv / luminanceFromReading({ fNumber, timeS, iso })).toBeCloseTo(1, 9);
    }),
    fixed,
  );
});

test("zero is refused at its key", () => {
  for (const key of ["fNumber", "timeS", "iso"]) {
    expect(() => ev100({ fNumber: 8, timeS: 1, iso: 100, [key]: 0 })).toThrow(
      expect.objectContaining({ code: "notPositive", key }),
    );
  }
});
