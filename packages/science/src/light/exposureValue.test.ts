import fc from "fast-check";
import { expect, test } from "vitest";
import { exposureValue } from "./exposureValue.ts";

const fixed = { seed: 20261125 };

test("f/1 at 1 s is EV 0, f/8 at 1/4 s EV 8, f/16 at 1/128 s EV 15 [apex]", () => {
  expect(exposureValue({ fNumber: 1, timeS: 1 })).toBe(0);
  expect(exposureValue({ fNumber: 8, timeS: 0.25 })).toBe(8);
  expect(exposureValue({ fNumber: 16, timeS: 1 / 128 })).toBe(15);
});

test("a mark of f/22 taken as 22 is 0.081 stop off its exact member [iso-517; by hand]", () => {
  const off = exposureValue({ fNumber: 2 ** 4.5, timeS: 1 }) - exposureValue({ fNumber: 22, timeS: 1 });
  expect(off).toBeCloseTo(0.081136763, 8);
});

test("one stop of opening and one of time trade evenly [property]", () => {
  const stops = fc.double({ min: -20, max: 20, noNaN: true });
  fc.assert(
    fc.property(stops, stops, (av, tv) => {
      expect(exposureValue({ fNumber: 2 ** (av / 2), timeS: 2 ** -tv })).toBeCloseTo(av + tv, 9);
    }),
    fixed,
  );
});

test("zero is refused at its key", () => {
  expect(() => exposureValue({ fNumber: 0, timeS: 1 })).toThrow(
    expect.objectContaining({ code: "notPositive", key: "fNumber" }),
  );
  expect(() => exposureValue({ fNumber: 8, timeS: 0 })).toThrow(
    expect.objectContaining({ code: "notPositive", key: "timeS" }),
  );
});
