import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { createClock } from "./clock.ts";

const machine = () => {
  const time = { wall: 1_764_000_000_000, page: 40 };
  return { time, clock: createClock({ wallMs: () => time.wall, pageMs: () => time.page }) };
};

describe("createClock", () => {
  test("a correction of 0.3 s by the network does not reach an open cap [by hand]", () => {
    const { time, clock } = machine();
    const beganMs = clock.nowMs();
    time.wall += 5300;
    time.page += 5000;
    expect(clock.nowMs() - beganMs).toBe(5000);
  });

  test("a phone that slept for a minute has lost none of it [by hand]", () => {
    const { time, clock } = machine();
    const beganMs = clock.nowMs();
    time.wall += 60_000;
    expect(clock.nowMs() - beganMs).toBe(60_000);
    time.wall += 1000;
    time.page += 1000;
    expect(clock.nowMs() - beganMs).toBe(61_000);
  });

  test("set back by an hour, it goes on counting [by hand]", () => {
    const { time, clock } = machine();
    const beganMs = clock.nowMs();
    time.wall += 4000 - 3_600_000;
    time.page += 4000;
    expect(clock.nowMs() - beganMs).toBe(4000);
    time.wall += 6000;
    time.page += 6000;
    expect(clock.nowMs() - beganMs).toBe(10_000);
  });

  test("never runs backwards, whatever the wall clock does [property]", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: -100_000, max: 100_000 }), fc.integer({ min: 0, max: 30_000 }))),
        (steps) => {
          const { time, clock } = machine();
          let last = clock.nowMs();
          for (const [wall, page] of steps) {
            time.wall += wall;
            time.page += page;
            const now = clock.nowMs();
            expect(now).toBeGreaterThanOrEqual(last);
            last = now;
          }
        },
      ),
      { seed: 20261125 },
    );
  });
});
