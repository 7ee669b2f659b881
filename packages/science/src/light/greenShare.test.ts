import { expect, test } from "vitest";
import { rows } from "../../fixtures/light/actinic.json";
import { greenShare } from "./greenShare.ts";
import type { LensGlass } from "./paperResponse.ts";

test("25 to 30 % in daylight, 50 to 60 % under lamps [ortho-encyclopedia]", () => {
  const daylight = greenShare({ source: "daylight:5500" });
  const lamp = greenShare({ source: "illuminantA" });
  expect(daylight).toBeGreaterThan(0.25);
  expect(daylight).toBeLessThan(0.3);
  expect(lamp).toBeGreaterThan(0.5);
  expect(lamp).toBeLessThan(0.6);
});

test("51.278746 % under A, 27.5 % in D55 [by hand]", () => {
  expect(greenShare({ source: "illuminantA" })).toBeCloseTo(0.51278746, 7);
  expect(greenShare({ source: "daylight:5500" })).toBeCloseTo(0.275, 3);
});

test("sixteen lights and three glasses [peer: plain Python]", () => {
  for (const { source, lens, greenShare: share } of rows) {
    expect(Math.abs(greenShare({ source, lens: lens as LensGlass }) - share)).toBeLessThan(1e-8);
  }
});

test("an unknown light and an unknown glass are refused", () => {
  expect(() => greenShare({ source: "torch" })).toThrow(
    expect.objectContaining({ code: "unknownWord", key: "source" }),
  );
  expect(() => greenShare({ source: "illuminantA", lens: "plastic" as "none" })).toThrow(
    expect.objectContaining({ code: "unknownWord", key: "lens" }),
  );
});
