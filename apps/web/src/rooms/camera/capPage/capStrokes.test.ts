import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { layStrokes, strokesWidth, strokeWidth } from "./capStrokes.ts";

describe("layStrokes", () => {
  test("13 ticks, 8 of them over: 13 strokes in 5, 5 and 3, eight filled, the cap over the last [by hand]", () => {
    const { strokes, numbers, cap } = layStrokes({ ticks: 13, done: 8 });
    expect(strokes.map(({ filled }) => filled)).toEqual([1, 1, 1, 1, 1, 1, 1, 1, 0, 0, 0, 0, 0]);
    expect(numbers.map(({ n }) => n)).toEqual([5, 10, 13]);
    const steps = strokes.slice(1).map(({ x }, i) => x - (strokes[i]?.x ?? 0));
    expect(steps.flatMap((step, i) => (step > 30 ? [i + 1] : []))).toEqual([5, 10]);
    expect(cap?.x).toBeCloseTo((strokes[12]?.x ?? 0) + strokeWidth / 2, 6);
  });

  test("a kept piece of 8.3 s fills a third of the ninth [by hand]", () => {
    expect(layStrokes({ ticks: 13, done: 8.3 }).strokes[8]?.filled).toBe(0.3);
  });

  test("a half tick has a stroke of its own, and says what it is [by hand]", () => {
    const { strokes, numbers } = layStrokes({ ticks: 1.5, done: 0 });
    expect([strokes.length, numbers.map(({ n }) => n)]).toEqual([2, [1.5]]);
  });

  test("2 min 10 s: the strokes are those of the present minute [by hand]", () => {
    const third = layStrokes({ ticks: 130, done: 125 });
    expect([third.minute, third.minutes, third.strokes.length]).toEqual([3, 3, 10]);
    expect(third.numbers.map(({ n }) => n)).toEqual([125, 130]);
    expect(layStrokes({ ticks: 130, done: 3 }).cap).toBeNull();
  });

  test("never runs off the drawing, never more than sixty [property]", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 4000, noNaN: true }),
        fc.double({ min: 0, max: 5000, noNaN: true }),
        (ticks, done) => {
          const { strokes, height } = layStrokes({ ticks, done });
          expect(strokes.length).toBeGreaterThan(0);
          expect(strokes.length).toBeLessThanOrEqual(60);
          expect(height).toBeLessThan(160);
          for (const { x } of strokes) {
            expect(x).toBeGreaterThanOrEqual(0);
            expect(x + strokeWidth).toBeLessThanOrEqual(strokesWidth + 0.05);
          }
        },
      ),
      { seed: 20261125 },
    );
  });
});
