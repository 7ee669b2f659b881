import { describe, expect, test } from "vitest";
import type { Drawing, Shape } from "../shapes/shape.ts";
import { faultSign } from "./faultSign.ts";
import { placeWords } from "./placeWords.ts";
import { sheetDrawing } from "./sheetDrawing.ts";
import { everyFault, sheetCases } from "./testing.ts";

const named = (drawing: Drawing, name: string) => drawing.shapes.filter((shape) => shape.name === name);

/** The corner points of a shape; control points too, so that bounds hold with room to spare. */
function pointsOf(shape: Shape): (readonly [number, number])[] {
  if (shape.kind === "circle") return [[shape.x, shape.y]];
  if (shape.kind !== "path" || /[hvHV]/.test(shape.d)) return [];
  const numbers = (shape.d.replace(/A[^ ]+ [^ ]+ 0 1 0/g, "L").match(/-?\d+(\.\d+)?/g) ?? []).map(Number);
  return Array.from({ length: numbers.length / 2 }, (_, k) => [numbers[2 * k] ?? 0, numbers[2 * k + 1] ?? 0] as const);
}

/** What an eye has to go by without colour: which strokes, how many, closed or not. */
function likeness(shapes: readonly Shape[]): string {
  return shapes
    .map((shape) =>
      shape.kind === "path" ? `${shape.d.replace(/[-\d. ]+/g, "")}${shape.dashes ? " broken" : ""}` : shape.kind,
    )
    .join("|");
}

describe("the marks of faults", () => {
  test("no two are drawn with the same strokes, and all in one ink [property]", () => {
    const signs = everyFault.map((what) => faultSign({ what, sizePx: 44 }));
    expect(new Set(signs.map(({ shapes }) => likeness(shapes))).size).toBe(everyFault.length);
    for (const { shapes } of signs) {
      for (const shape of shapes) expect("stroke" in shape ? shape.stroke : "").toBe("ink");
    }
  });

  test.each(everyFault)("%s stays in its square [property]", (what) => {
    const { shapes } = faultSign({ what, sizePx: 44 });
    expect(shapes.length).toBeGreaterThan(0);
    const points = shapes.flatMap(pointsOf);
    expect(points.length).toBeGreaterThan(1);
    // Control points of the curves lie up to a quarter of the square outside it, the curves themselves do not.
    for (const [x, y] of points) {
      expect(Math.min(x, y)).toBeGreaterThan(-8);
      expect(Math.max(x, y)).toBeLessThan(52);
    }
  });

  test("a scratch runs along the longer side of what was marked", () => {
    const scratched = (width: number, height: number) => {
      const [first] = named(
        sheetDrawing({
          widthPx: 300,
          mostHeightPx: 300,
          letterPx: 15,
          code: "W30",
          sizeMm: { widthMm: 100, heightMm: 100 },
          faults: [{ what: "scratch", x: 0.5, y: 0.5, width, height }],
        }),
        "fault 1",
      );
      const [[fromX = 0, fromY = 0] = [], [toX = 0, toY = 0] = []] = first === undefined ? [] : pointsOf(first);
      return [Math.abs(toX - fromX), Math.abs(toY - fromY)] as const;
    };
    const [acrossX, acrossY] = scratched(0.6, 0.1);
    const [downX, downY] = scratched(0.1, 0.6);
    expect(acrossX).toBeGreaterThan(4 * acrossY);
    expect(downY).toBeGreaterThan(4 * downX);
  });

  test("a light leak opens away from the nearest edge", () => {
    const rays = (x: number, y: number) => {
      const [shape] = named(
        sheetDrawing({
          widthPx: 300,
          mostHeightPx: 300,
          letterPx: 15,
          code: "W30",
          sizeMm: { widthMm: 100, heightMm: 100 },
          faults: [{ what: "lightLeak", x, y, width: 0.2, height: 0.2 }],
        }),
        "fault 1",
      );
      const [[fromX = 0, fromY = 0] = [], [toX = 0, toY = 0] = []] = shape === undefined ? [] : pointsOf(shape);
      return [Math.round(toX - fromX), Math.round(toY - fromY)];
    };
    expect(rays(0.05, 0.5)[0]).toBe(60);
    expect(rays(0.95, 0.5)[0]).toBe(-60);
    expect(rays(0.5, 0.05)[1]).toBe(60);
    expect(rays(0.5, 0.95)[1]).toBe(-60);
  });
});

describe("a sheet with its faults", () => {
  test.each(Object.entries(sheetCases))(
    "%s: as wide and high as there is room, in the shape of the paper",
    (_, input) => {
      const { width, height } = sheetDrawing(input);
      expect(width).toBeLessThanOrEqual(input.widthPx);
      expect(height).toBeLessThanOrEqual(input.mostHeightPx + 0.01);
      expect(height / width).toBeCloseTo(180 / 130, 3);
    },
  );

  test.each(Object.entries(sheetCases))(
    "%s: every mark and number lies on the sheet, no number on another",
    (_, input) => {
      const drawing = sheetDrawing(input);
      const grounds = drawing.shapes.filter((shape) => shape.name?.startsWith("ground of"));
      expect(grounds).toHaveLength(input.faults.length);
      for (const [place, one] of grounds.entries()) {
        if (one.kind !== "rect") throw new Error("a number stands on a rect");
        expect(one.x).toBeGreaterThanOrEqual(0);
        expect(one.y).toBeGreaterThanOrEqual(0);
        expect(one.x + one.width).toBeLessThanOrEqual(drawing.width);
        expect(one.y + one.height).toBeLessThanOrEqual(drawing.height);
        for (const other of grounds.slice(place + 1)) {
          if (other.kind !== "rect") continue;
          const apart =
            one.x + one.width <= other.x + 0.01 ||
            other.x + other.width <= one.x + 0.01 ||
            one.y + one.height <= other.y + 0.01 ||
            other.y + other.height <= one.y + 0.01;
          expect(apart).toBe(true);
        }
      }
      for (const place of input.faults.keys()) {
        for (const [x, y] of named(drawing, `fault ${place + 1}`).flatMap(pointsOf)) {
          expect(x).toBeGreaterThan(-0.3 * drawing.width);
          expect(x).toBeLessThan(1.3 * drawing.width);
          expect(y).toBeGreaterThan(-0.3 * drawing.height);
          expect(y).toBeLessThan(1.3 * drawing.height);
        }
      }
    },
  );

  test("its sentence says what, where, and the pieces", () => {
    const { says } = sheetDrawing({
      widthPx: 300,
      mostHeightPx: 500,
      letterPx: 15,
      code: "W31",
      faults: [{ what: "stain", x: 0.2, y: 0.1, width: 0.1, height: 0.1 }],
      pieces: [{ letter: "a", place: { x: 0, y: 0, width: 1, height: 0.5 } }],
    });
    expect(says).toBe("Sheet W31, cut into a: 1 stain, upper left.");
  });

  test("a paper of no known size is drawn 5 by 7", () => {
    const { width, height } = sheetDrawing({ widthPx: 200, mostHeightPx: 900, letterPx: 15, code: "A1", faults: [] });
    expect([width, height]).toEqual([200, 280]);
  });

  test("places in words [by hand]", () => {
    const said = ([x, y]: readonly [number, number]) => placeWords({ x, y });
    expect(
      (
        [
          [0.5, 0.5],
          [0.2, 0.2],
          [0.8, 0.5],
          [0.5, 0.9],
          [0.01, 0.5],
          [0.01, 0.2],
          [0.5, 0.99],
          [0.2, 0.99],
          [0.99, 0.01],
        ] as const
      ).map(said),
    ).toEqual([
      "middle",
      "upper left",
      "right",
      "lower",
      "left edge",
      "upper left edge",
      "lower edge",
      "lower edge, left",
      "upper right corner",
    ]);
  });
});
