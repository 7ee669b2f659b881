import { describe, expect, test } from "vitest";
import type { Drawing, Shape } from "../shapes/shape.ts";
import { textWidth } from "../shapes/textWidth.ts";
import { lensSection } from "./lensSection.ts";
import { sheetStrokes } from "./sheetStrokes.ts";
import { lensCases, strokeCases, washerCases } from "./testing.ts";
import { washers } from "./washers.ts";

function named(drawing: Drawing, name: string): Shape[] {
  return drawing.shapes.filter((shape) => shape.name === name);
}
const numbersIn = (shape: Shape | undefined) =>
  shape?.kind === "path" ? (shape.d.match(/-?\d+(\.\d+)?/g) ?? []).map(Number) : [];

describe("a lens in section", () => {
  const input = lensCases["lens-210"];
  if (input === undefined) throw new Error("no case");
  const drawing = lensSection(input);

  test("pupil and focal length stand in one scale: read back, 18.4 to 210 is the slope of the rays [by hand]", () => {
    const [fromX = 0, fromY = 0, toX = 0, axisY = 0, , lowY = 0] = numbersIn(named(drawing, "rays")[0]);
    expect((lowY - fromY) / (toX - fromX)).toBeCloseTo(18.4 / 210, 3);
    expect((lowY + fromY) / 2).toBeCloseTo(axisY, 2);
    // The mock-up: from 48 to 304 px, the edge of the pupil 11.2 px off the axis; ours ends 4 px further right.
    expect(Math.abs(toX - 304.2)).toBeLessThan(5);
    expect(Math.abs(axisY - fromY - 11.2)).toBeLessThan(0.3);
  });

  test("the stop leaves open what the rays run through", () => {
    const [, , upper = 0, , , lower = 0] = numbersIn(named(drawing, "stop")[0]);
    const [, fromY = 0, , , , lowY = 0] = numbersIn(named(drawing, "rays")[0]);
    expect([upper, lower]).toEqual([fromY, lowY]);
  });

  test.each(Object.entries(lensCases))("%s: every word lies inside, and its sentence says the numbers", (_, one) => {
    const { shapes, width, height, says } = lensSection(one);
    for (const shape of shapes) {
      if (shape.kind !== "text") continue;
      const wide = textWidth({ text: shape.text, size: shape.size });
      const from = shape.x - (shape.anchor === "middle" ? wide / 2 : shape.anchor === "end" ? wide : 0);
      expect(from).toBeGreaterThanOrEqual(-0.5);
      expect(from + wide).toBeLessThanOrEqual(width + 0.5);
      expect(shape.y).toBeLessThanOrEqual(height);
    }
    expect(says).toContain(one.pupilWords);
  });
});

describe("sheets in a box", () => {
  test("14 of 25: 14 tall strokes, 11 short ones, a wider gap after each five", () => {
    const drawing = sheetStrokes({ widthPx: 358, left: 14, full: 25 });
    expect([named(drawing, "left").length, named(drawing, "used").length]).toEqual([14, 11]);
    const x = drawing.shapes.map((shape) => numbersIn(shape)[0] ?? 0);
    const gaps = x.slice(1).map((at, place) => at - (x[place] ?? 0));
    const inFive = gaps.filter((_, place) => (place + 1) % 5 !== 0);
    const between = gaps.filter((_, place) => (place + 1) % 5 === 0);
    expect(Math.max(...inFive)).toBeLessThan(Math.min(...between));
    expect(Math.max(...x)).toBeLessThan(358);
    expect(drawing.says).toBe("14 of 25 sheets left");
  });

  test("a narrow page has more rows of whole fives; one sheet is a sheet", () => {
    const { shapes, height } = sheetStrokes(strokeCases["strokes-uncounted"] ?? { widthPx: 0, left: 0 });
    expect(shapes).toHaveLength(23);
    expect(height).toBe(3 * 34);
    expect(sheetStrokes({ widthPx: 358, left: 1 }).says).toBe("1 sheet");
    expect(sheetStrokes({ widthPx: 10, left: 0, full: 0 }).shapes).toEqual([]);
  });
});

test("holes are drawn as wide as they are, in mm, and no card lies on another", () => {
  const input = washerCases["washers-180"];
  if (input === undefined) throw new Error("no case");
  const { shapes, width } = washers(input);
  const holes = shapes.filter((shape) => shape.kind === "circle" && shape.name?.startsWith("hole"));
  expect(holes.map((shape) => (shape.kind === "circle" ? 2 * shape.radius : 0))).toEqual([22.5, 15.91, 11.25, 7.95]);
  const cards = shapes.flatMap((shape) => (shape.kind === "circle" && shape.name?.startsWith("card") ? [shape] : []));
  for (const [place, one] of cards.entries()) {
    for (const other of cards.slice(place + 1)) {
      expect(Math.hypot(one.x - other.x, one.y - other.y)).toBeGreaterThan(one.radius + other.radius);
    }
  }
  expect(width).toBeLessThanOrEqual(180);
});
