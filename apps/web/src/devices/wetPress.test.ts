import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dry, stampOf, stepWet, type WetEvent, type WetState } from "./wetPress.ts";

/** The times of the presses in a row of events. */
function pressesIn(events: readonly WetEvent[], from: WetState = dry): number[] {
  const presses: number[] = [];
  let state = from;
  for (const event of events) {
    const stepped = stepWet({ state, event });
    state = stepped.state;
    if (stepped.pressMs !== undefined) presses.push(stepped.pressMs);
  }
  return presses;
}
const finger = (downMs: number, forMs: number, name = 1): readonly WetEvent[] => [
  { kind: "down", finger: name, stampMs: downMs },
  { kind: "up", finger: name, stampMs: downMs + forMs },
];

describe("stepWet", () => {
  test.each([
    [79, 0],
    [80, 1],
    [400, 1],
    [1500, 1],
    [1501, 0],
  ])("one finger down for %i ms: %i presses [LOOK: 80 to 1500 ms]", (forMs, count) => {
    expect(pressesIn(finger(5000, forMs))).toHaveLength(count);
  });

  test("the press was made when the finger came down", () => {
    expect(pressesIn(finger(5000, 400))).toEqual([5000]);
  });

  test("two fingers are a splash or a hand, and so is what is left of them", () => {
    const events: WetEvent[] = [
      { kind: "down", finger: 1, stampMs: 0 },
      { kind: "down", finger: 2, stampMs: 50 },
      { kind: "up", finger: 1, stampMs: 300 },
      { kind: "up", finger: 2, stampMs: 350 },
    ];
    expect(pressesIn(events)).toEqual([]);
    expect(pressesIn([...events, ...finger(1000, 200)])).toEqual([1000]);
  });

  test("not within 2 s of the last, by finger or by key", () => {
    expect(pressesIn([...finger(0, 200), ...finger(1999, 200), ...finger(2000, 200)])).toEqual([0, 2000]);
    expect(
      pressesIn([
        { kind: "key", stampMs: 0 },
        { kind: "key", stampMs: 900 },
        { kind: "key", stampMs: 2100 },
      ]),
    ).toEqual([0, 2100]);
  });

  test("a finger the browser takes away, for scrolling or a gesture, pressed nothing", () => {
    expect(
      pressesIn([
        { kind: "down", finger: 1, stampMs: 0 },
        { kind: "lost", finger: 1, stampMs: 300 },
        { kind: "up", finger: 1, stampMs: 310 },
      ]),
    ).toEqual([]);
  });

  test("whatever rains on it, two presses are never nearer than 2 s [property]", () => {
    const drop = fc.record({
      kind: fc.constantFrom("down", "up", "lost", "key"),
      finger: fc.integer({ min: 1, max: 3 }),
      afterMs: fc.integer({ min: 0, max: 900 }),
    });
    fc.assert(
      fc.property(fc.array(drop, { maxLength: 80 }), (drops) => {
        let stampMs = 0;
        const events = drops.map(({ kind, finger: name, afterMs }) => {
          stampMs += afterMs;
          return { kind, finger: name, stampMs } as WetEvent;
        });
        const presses = pressesIn(events);
        for (const [place, at] of presses.entries()) {
          if (place > 0) expect(at - (presses[place - 1] ?? 0)).toBeGreaterThanOrEqual(2000);
        }
      }),
      { seed: 20261125 },
    );
  });
});

test("a stamp of the browser's is believed up to 3 s back; one of another clock is not", () => {
  expect(stampOf({ stampMs: 9000, nowMs: 10_500 })).toBe(9000);
  expect(stampOf({ stampMs: 9000, nowMs: 12_001 })).toBe(12_001);
  expect(stampOf({ stampMs: 9000, nowMs: 8000 })).toBe(8000);
});
