import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addToClock, beginClock, clockAt, resumeClock, stepClock } from "./runClock.ts";

const began = beginClock({ pageMs: 40, wallMs: 1_764_000_000_000 });
const later = (pageMs: number, wallMs: number, wasHidden = false) =>
  stepClock({ clock: began, now: { pageMs: 40 + pageMs, wallMs: began.wallMs + wallMs, wasHidden } });

describe("the clock of a run", () => {
  test("a second is a second, also where the network puts the wall clock right by 0.4 s [by hand]", () => {
    expect(later(1000, 1000)).toMatchObject({ sinceMs: 1000, notice: null });
    expect(later(1000, 1400)).toMatchObject({ sinceMs: 1000, notice: null });
  });

  test("in sight, a clock set ahead or back by an hour moves nothing, and is told [by hand]", () => {
    expect(later(1000, 3_601_000)).toMatchObject({ sinceMs: 1000, notice: { kind: "jumpedAhead", byMs: 3_600_000 } });
    expect(later(1000, -3_599_000)).toMatchObject({ sinceMs: 1000, notice: { kind: "setBack", byMs: 3_600_000 } });
  });

  test("daylight saving moves the local time only: in milliseconds since 1970 nothing happens [by hand]", () => {
    const beforeMs = Date.UTC(2026, 9, 25, 0, 59, 59);
    const clock = beginClock({ pageMs: 0, wallMs: beforeMs });
    const now = { pageMs: 2000, wallMs: Date.UTC(2026, 9, 25, 1, 0, 1), wasHidden: false };
    expect(stepClock({ clock, now })).toMatchObject({ sinceMs: 2000, notice: null });
  });

  test("out of sight the machine slept, and the time has passed [by hand]", () => {
    expect(later(1000, 61_000, true)).toMatchObject({ sinceMs: 61_000, notice: { kind: "slept", byMs: 60_000 } });
  });

  test("gone for two minutes: they have passed, and it says so; a quick reload is not worth a word", () => {
    const seen = { sinceMs: 100_000, wallMs: 1_000_000 };
    expect(resumeClock({ seen, pageMs: 5, wallMs: 1_120_000 })).toMatchObject({
      sinceMs: 220_000,
      notice: { kind: "away", byMs: 120_000 },
    });
    expect(resumeClock({ seen, pageMs: 5, wallMs: 1_001_000 })).toMatchObject({ sinceMs: 101_000, notice: null });
  });

  test("gone, and the clock set back or a day ahead meanwhile: nothing is added unasked, and it asks", () => {
    const seen = { sinceMs: 100_000, wallMs: 100_000_000 };
    for (const gapMs of [-3_600_000, 86_400_000]) {
      const clock = resumeClock({ seen, pageMs: 5, wallMs: seen.wallMs + gapMs });
      expect(clock).toMatchObject({ sinceMs: 100_000, notice: { kind: "awayUnknown" } });
      expect(addToClock({ clock, byMs: 60_000 })).toMatchObject({ sinceMs: 160_000, notice: null });
    }
  });

  test("never runs backwards, and without jumps it is the page's own time to the ms over two hours [property]", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 0, max: 5000 }), fc.integer({ min: -90_000, max: 90_000 }), fc.boolean())),
        (steps) => {
          let clock = began;
          let { pageMs, wallMs } = began;
          for (const [page, wall, wasHidden] of steps) {
            pageMs += page;
            wallMs += wall;
            const next = stepClock({ clock, now: { pageMs, wallMs, wasHidden } });
            expect(next.sinceMs).toBeGreaterThanOrEqual(clock.sinceMs + page);
            clock = next;
          }
        },
      ),
      { seed: 20261125 },
    );
    let clock = began;
    for (let tick = 1; tick <= 28_800; tick++) {
      const now = { pageMs: 40 + tick * 250, wallMs: began.wallMs + tick * 250, wasHidden: false };
      clock = stepClock({ clock, now });
    }
    expect(clock.sinceMs).toBe(7_200_000);
    expect(clockAt({ clock, pageMs: clock.pageMs + 125 })).toBe(7_200_125);
  });
});
