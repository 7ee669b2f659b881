import { describe, expect, test } from "vitest";
import type { Drawing, Shape } from "../shapes/shape.ts";
import { textWidth } from "../shapes/textWidth.ts";
import { trueScalePage } from "../trueScale/trueScalePage.ts";
import { bathDrawing } from "./bathDrawing.ts";
import { bathLabel } from "./bathLabel.ts";
import { bathCases, labelCases } from "./testing.ts";

const named = (drawing: Drawing, name: string): Shape[] => drawing.shapes.filter((shape) => shape.name === name);
const numbersIn = (shape: Shape | undefined) =>
  shape?.kind === "path" ? (shape.d.match(/-?\d+(\.\d+)?/g) ?? []).map(Number) : [];

function liesInside({ shapes, width, height }: Drawing): void {
  for (const shape of shapes) {
    if (shape.kind !== "text") continue;
    const wide = textWidth({ text: shape.text, size: shape.size, isBold: shape.isBold });
    const from = shape.x - (shape.anchor === "middle" ? wide / 2 : shape.anchor === "end" ? wide : 0);
    expect(from, shape.text).toBeGreaterThanOrEqual(-0.5);
    expect(from + wide, shape.text).toBeLessThanOrEqual(width + 0.5);
    expect(shape.y, shape.text).toBeLessThanOrEqual(height);
  }
}

describe("a bath in section", () => {
  const input = bathCases["bath-bleach"];
  if (input === undefined) throw new Error("no case");
  const drawing = bathDrawing(input);

  test("hours, strokes, now and bracket stand on one scale: read back, 22:00 is where its line is [by hand]", () => {
    const ticks = named(drawing, "tick").map((shape) => numbersIn(shape)[0] ?? 0);
    const perHour = (ticks[5] ?? 0) - (ticks[4] ?? 0);
    expect((ticks[5] ?? 0) - (ticks[0] ?? 0)).toBeCloseTo(5 * perHour, 1);
    expect(numbersIn(named(drawing, "end line")[0])[0]).toBeCloseTo(ticks[3] ?? 0, 1);
    const [low = 0, , high = 0] = numbersIn(named(drawing, "end")[0]);
    expect((high - low) / perHour).toBeCloseTo(23.17 - 21.1, 2);
    expect(numbersIn(named(drawing, "now")[0])[0]).toBeCloseTo((ticks[1] ?? 0) + 0.83 * perHour, 1);
    expect(named(drawing, "sheet")).toHaveLength(4);
  });

  test("what is used up is hatched no further than now", () => {
    const numbers = numbersIn(named(drawing, "used")[0]);
    const across = numbers.filter((_, place) => place % 2 === 0);
    const now = numbersIn(named(drawing, "now")[0])[0] ?? 0;
    expect(Math.max(...across)).toBeLessThanOrEqual(now + 0.01);
    expect(Math.min(...across)).toBeGreaterThan(8);
  });

  test.each(Object.entries(bathCases))("%s: every word lies inside", (_, one) => liesInside(bathDrawing(one)));

  test("a bath that was just mixed has nothing hatched and no sheets", () => {
    const fresh = bathDrawing({ ...input, filledTo: input.scale.from, strokes: [] });
    expect([named(fresh, "used"), named(fresh, "sheet")]).toEqual([[], []]);
  });
});

describe("a label", () => {
  const input = labelCases["label-bleach"];
  if (input === undefined) throw new Error("no case");

  test("says what, how strong, since when, its last hour, and that it is never stoppered", () => {
    const label = bathLabel(input);
    const words = label.shapes.flatMap((shape) => (shape.kind === "text" ? [shape.text] : []));
    expect(words).toEqual(expect.arrayContaining(["last hour 00:40", "Vented. Never stopper it."]));
    liesInside(label);
  });

  test("a stop is closed as any bottle, and a title of any length finds room", () => {
    const label = bathLabel({ ...input, isVented: false, lastHour: undefined, title: "a long name ".repeat(8) });
    expect(named(label, "vented")).toEqual([]);
    liesInside(label);
  });

  test("finds room on the smallest paper", () => {
    expect(trueScalePage({ paper: "a6", piece: bathLabel(input) }).width).toBe(105);
  });
});
