import { expect, test } from "vitest";
import { exposureConstant } from "./exposureConstant.ts";

test("the usual figures give 0.652, in round terms 0.65 [iso-12232 as documented by colour-hdri]", () => {
  expect(exposureConstant({})).toBeCloseTo(0.65157483, 8);
  expect(exposureConstant({})).toBeCloseTo(0.65, 2);
});

test("a perfect lens on the axis gives π/4 [by hand]", () => {
  expect(exposureConstant({ transmission: 1, vignetting: 1, offAxisDeg: 0 })).toBe(Math.PI / 4);
});

test("45° off the axis leaves a quarter [cos4]", () => {
  const onAxis = exposureConstant({ offAxisDeg: 0 });
  expect(exposureConstant({ offAxisDeg: 45 }) / onAxis).toBeCloseTo(0.25, 12);
});

test("a glass that adds light, an angle of 90° and more, and zero are refused", () => {
  expect(() => exposureConstant({ transmission: 1.01 })).toThrow(
    expect.objectContaining({ code: "transmissionOutOfRange", key: "transmission" }),
  );
  expect(() => exposureConstant({ transmission: 0 })).toThrow(
    expect.objectContaining({ code: "notPositive", key: "transmission" }),
  );
  expect(() => exposureConstant({ vignetting: 1.2 })).toThrow(
    expect.objectContaining({ code: "outOfRange", key: "vignetting" }),
  );
  for (const offAxisDeg of [90, -1]) {
    expect(() => exposureConstant({ offAxisDeg })).toThrow(
      expect.objectContaining({ code: "offAxisAngle", key: "offAxisDeg" }),
    );
  }
});
