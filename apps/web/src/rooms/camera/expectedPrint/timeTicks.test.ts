import { expect, test } from "vitest";
import { timeTicks } from "./timeTicks.ts";

const scale = { ledgerS: 13, least: -5, most: 4, letterPx: 15 };

test("at 31 px a stop round 13 s: 1, 2, 4 and the minutes have figures, none touches another [by hand]", () => {
  const ticks = timeTicks({ ...scale, perStopPx: 31 });
  const words = ticks.flatMap((tick) => (tick.words === undefined ? [] : [tick.words]));
  expect(words).toContain("1");
  expect(words).toContain("1 min");
  const figured = ticks.filter((tick) => tick.words !== undefined);
  for (const [place, tick] of figured.entries()) {
    const before = figured[place - 1];
    if (before === undefined) continue;
    const room = ((tick.words ?? "").length + (before.words ?? "").length) * 0.46 * 7.5;
    expect((tick.at - before.at) * 31).toBeGreaterThan(room);
  }
});

test("a tick stands at its time: 26 s would be one stop from 13 s, 52 two [by hand]", () => {
  const ticks = timeTicks({ ...scale, ledgerS: 15, perStopPx: 46 });
  expect(ticks.find((tick) => tick.words === "15")?.at).toBeCloseTo(0, 9);
  expect(ticks.find((tick) => tick.words === "30" || Math.abs(tick.at - 1) < 1e-9)?.at).toBeCloseTo(1, 9);
  expect(ticks.find((tick) => tick.words === "1 min")?.at).toBeCloseTo(2, 9);
});

test("inside its ends, in order, and some at any time of a day [property]", () => {
  for (const ledgerS of [0.4, 5, 90, 3000]) {
    const ticks = timeTicks({ ...scale, ledgerS, perStopPx: 31 });
    expect(ticks.some((tick) => tick.words !== undefined)).toBe(true);
    expect(ticks.every(({ at }, place) => at >= -5 && at <= 4 && at > (ticks[place - 1]?.at ?? -9))).toBe(true);
  }
});
