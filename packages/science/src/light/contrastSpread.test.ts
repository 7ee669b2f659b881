import { expect, test } from "vitest";
import { rows } from "../../fixtures/light/actinic.json";
import { contrastSpread } from "./contrastSpread.ts";
import type { LensGlass } from "./paperResponse.ts";

test("sixteen lights and three glasses [peer: plain Python]", () => {
  for (const { source, lens, contrastSpread: spread } of rows) {
    expect(Math.abs(contrastSpread({ source, lens: lens as LensGlass }) - spread)).toBeLessThan(1e-8);
  }
});

test.each([
  ["illuminantA", 0.3077],
  ["filament:2700", 0.3402],
  ["whiteLed:2700", 0.3786],
  ["whiteLed:5000", 0.1964],
  ["daylight:5500", 0.1382],
  ["daylight:10000", 0.0799],
])("%s spreads the emulsions by %d [by hand]", (source, spread) => {
  expect(Math.abs(contrastSpread({ source }) - spread)).toBeLessThan(1e-3);
});

test("open shade prints harder than the noon sun, a lamp softer than both [common practice]", () => {
  const spread = (source: string) => contrastSpread({ source });
  expect(spread("daylight:10000")).toBeLessThan(spread("daylight:5300"));
  expect(spread("daylight:5300")).toBeLessThan(spread("filament:2700"));
});

test("an unknown light and an unknown glass are refused", () => {
  expect(() => contrastSpread({ source: "torch" })).toThrow(
    expect.objectContaining({ code: "unknownWord", key: "source" }),
  );
  expect(() => contrastSpread({ source: "illuminantA", lens: "plastic" as "none" })).toThrow(
    expect.objectContaining({ code: "unknownWord", key: "lens" }),
  );
});
