import { daylight } from "@captray/science/light";
import { describe, expect, test } from "vitest";
import { meterOffsetOf } from "./meterOffsetOf.ts";

const reading = { timeS: 1 / 64, fNumber: 8, iso: 100 };

test("against another meter that asks for twice the time, this one shows one stop too much [by hand]", () => {
  const { offsetStops, withinDoubt } = meterOffsetOf({
    reading,
    light: { by: "otherMeter", reading: { ...reading, timeS: 1 / 32 } },
  });
  expect(offsetStops.value).toBeCloseTo(1, 12);
  expect(offsetStops.sd).toBeCloseTo(Math.hypot(0.1, 0.15, 0.15), 12);
  expect(withinDoubt).toBe(false);
});

describe("against a known light", () => {
  // EV 12 at ISO 100 is 12.5 · 2^12 / 100 = 512 cd/m² and 250 · 2^12 / 100 = 10240 lx [iso-2720 constants].
  test.each([
    { luminanceCdM2: 512, wanted: 0 },
    { luminanceCdM2: 256, wanted: 1 },
    { illuminanceLx: 10_240, wanted: 0 },
    { illuminanceLx: 20_480, wanted: -1 },
  ])("%o", ({ wanted, ...light }) => {
    const answer = meterOffsetOf({ reading, light: { by: "knownLight", ...light } as never });
    expect(answer.offsetStops.value).toBeCloseTo(wanted, 12);
    expect(answer.withinDoubt).toBe(wanted === 0);
  });

  test("its own K counts: 14 in place of 12.5 is 0.16 stop [log2(14/12.5): by hand]", () => {
    const light = { by: "knownLight", luminanceCdM2: 512 } as const;
    expect(meterOffsetOf({ reading, light, meter: { meterK: 14 } }).offsetStops.value).toBeCloseTo(0.1635, 4);
  });
});

test("a clear sun at 45° lights a card turned to it with 90 to 115 klx, and half a stop of meter error does not show in it", () => {
  // Full sun is 100 klx and somewhat more [common practice: "direct sunlight 32 to 130 klx" of photometry pages, from memory].
  const light = { by: "fullSun", altitudeDeg: 45, dayOfYear: 172 } as const;
  const sun = daylight(light);
  const lux = sun.directNormalLx + sun.skyHorizontalLx;
  expect(lux).toBeGreaterThan(90_000);
  expect(lux).toBeLessThan(115_000);
  // The meter that agrees: N² / t = L S / K with L = 0.18 E / π.
  const luminance = (0.18 * lux) / Math.PI;
  const timeS = (12.5 * 64) / (luminance * 100);
  const of = (stops: number) => meterOffsetOf({ reading: { timeS: timeS / 2 ** stops, fNumber: 8, iso: 100 }, light });
  expect(of(0).offsetStops.value).toBeCloseTo(0, 9);
  expect(of(0.5).withinDoubt).toBe(true);
  expect(of(1).withinDoubt).toBe(false);
});
