import { expect, test } from "vitest";
import { flareExposure } from "./flareExposure.ts";

test("a fiftieth of a mean exposure of 16 lx·s is 0.32 lx·s [by hand]", () => {
  expect(flareExposure({ meanExposureLxS: 16, fraction: 0.02 })).toBeCloseTo(0.32, 12);
});

test("no light and no flare are nothing", () => {
  expect(flareExposure({ meanExposureLxS: 0, fraction: 0.1 })).toBe(0);
  expect(flareExposure({ meanExposureLxS: 16, fraction: 0 })).toBe(0);
});

test("a fraction of 1 and more, and less than nothing, are refused", () => {
  expect(() => flareExposure({ meanExposureLxS: 16, fraction: 1 })).toThrow(
    expect.objectContaining({ code: "outOfRange", key: "fraction" }),
  );
  expect(() => flareExposure({ meanExposureLxS: 16, fraction: -0.1 })).toThrow(
    expect.objectContaining({ code: "negative", key: "fraction" }),
  );
  expect(() => flareExposure({ meanExposureLxS: -1, fraction: 0.1 })).toThrow(
    expect.objectContaining({ code: "negative", key: "meanExposureLxS" }),
  );
});
