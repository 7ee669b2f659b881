import { describe, expect, test } from "vitest";
import type { Drawing, Shape } from "../shapes/shape.ts";
import { textWidth } from "../shapes/textWidth.ts";
import { toneCases } from "./testing.ts";
import { toneDrawing } from "./toneDrawing.ts";
import type { ToneDrawingInput } from "./toneTypes.ts";

const cases = Object.entries(toneCases);

/** The scale of a drawing as an eye finds it: two figures of each axis and where they stand. */
function scalesOf({ shapes }: Drawing) {
  const figure = (name: string) => {
    const found = shapes.find((shape) => shape.name === name);
    if (found?.kind !== "text") throw new Error(`no ${name}`);
    return found;
  };
  const figured = shapes.filter((shape) => shape.name?.startsWith("figure stops")) as Extract<
    Shape,
    { kind: "text" }
  >[];
  const [first, last] = [figured[0], figured.at(-1)];
  if (first === undefined || last === undefined) throw new Error("no stops");
  const stopsAt = (shape: { readonly name?: string | undefined }) => Number(shape.name?.split(" ").at(-1));
  const perStop = (last.x - first.x) / (stopsAt(last) - stopsAt(first));
  const [nought, two] = [figure("figure D 0").y, figure("figure D 2").y];
  return {
    // The base line of a figure stands a third of its letters under its line.
    density: (y: number, letterPx: number) => ((y + letterPx / 3 - nought) / (two - nought)) * 2,
    stops: (x: number) => stopsAt(first) + (x - first.x) / perStop,
  };
}

function squareOf({ shapes }: Drawing, name: string) {
  const found = shapes.find((shape) => shape.name === `area ${name}`);
  if (found?.kind !== "rect") throw new Error(`no square for ${name}`);
  return { x: found.x + found.width / 2, y: found.y + found.height / 2, fill: found.fill };
}

const isInside = (input: ToneDrawingInput, stops: number) => {
  const [from, to] = [input.curve[0]?.stops ?? 0, input.curve.at(-1)?.stops ?? 0];
  return stops >= from && stops <= to;
};

describe("what is drawn is what the numbers say", () => {
  test.each(cases)("%s: every square read back from the axes [by hand: figure to figure]", (_name, input) => {
    const drawing = toneDrawing(input);
    const scales = scalesOf(drawing);
    for (const area of input.areas) {
      const square = squareOf(drawing, area.name);
      expect(scales.density(square.y, input.letterPx)).toBeCloseTo(area.density, 3);
      if (isInside(input, area.stops)) expect(scales.stops(square.x)).toBeCloseTo(area.stops, 2);
      expect(square.fill).toEqual({ density: area.density });
    }
  });

  test.each(cases)("%s: the curve passes through its points, rings lie where they should [by hand]", (_name, input) => {
    const drawing = toneDrawing(input);
    const scales = scalesOf(drawing);
    const curve = drawing.shapes.find((shape) => shape.name === "curve");
    if (curve?.kind !== "path") throw new Error("no curve");
    const points = [...curve.d.matchAll(/([\d.-]+) ([\d.-]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
    expect(points.length).toBe(input.curve.length);
    for (const [place, [x, y]] of points.entries()) {
      // Two decimals of a px are drawn: 0.005 px of 72 px a density, or of 29 px a stop.
      expect(scales.density(y, input.letterPx)).toBeCloseTo(input.curve[place]?.density ?? 0, 3);
      expect(scales.stops(x)).toBeCloseTo(input.curve[place]?.stops ?? 0, 2);
    }
    for (const { name, other } of input.areas) {
      if (other === undefined) continue;
      const ring = drawing.shapes.find((shape) => shape.name === `ring ${name}`);
      if (ring?.kind !== "circle") continue;
      expect(scales.stops(ring.x)).toBeCloseTo(other.stops, 2);
      expect(scales.density(ring.y, input.letterPx)).toBeCloseTo(other.density, 3);
    }
  });

  test.each(cases)(
    "%s: the hatching holds the doubt, broken lines and brackets their numbers [by hand]",
    (_name, input) => {
      const drawing = toneDrawing(input);
      const scales = scalesOf(drawing);
      const doubt = drawing.shapes.find((shape) => shape.name === "doubt");
      if (doubt?.kind !== "path") throw new Error("no hatching");
      const strokes = [...doubt.d.matchAll(/M([\d.]+) ([\d.]+)V([\d.]+)/g)].map((found) => found.slice(1).map(Number));
      expect(strokes.length).toBeGreaterThan(40);
      for (const [x = 0, from = 0, to = 0] of strokes) {
        const stops = scales.stops(x);
        const near = input.curve.reduce((best, one) =>
          Math.abs(one.stops - stops) < Math.abs(best.stops - stops) ? one : best,
        );
        if (Math.abs(near.stops - stops) > 0.06) continue;
        const ends = [scales.density(from, input.letterPx), scales.density(to, input.letterPx)].sort((a, b) => a - b);
        // Half a step of the curve away at most, where the band climbs by up to 1 D a stop.
        expect(Math.abs((ends[0] ?? 0) - near.low)).toBeLessThan(0.09);
        expect(Math.abs((ends[1] ?? 0) - near.high)).toBeLessThan(0.09);
      }
      for (const { words, density } of input.wanted) {
        const line = drawing.shapes.find((shape) => shape.name === `line ${words}`);
        const y = line?.kind === "path" ? Number(/ ([\d.]+)H/.exec(line.d)?.[1]) : Number.NaN;
        expect(scales.density(y, input.letterPx)).toBeCloseTo(density, 3);
      }
      for (const { words, from, to } of input.dimensions) {
        if (!isInside(input, from) || !isInside(input, to)) continue;
        const span = drawing.shapes.find((shape) => shape.name === `span ${words}`);
        const ends =
          span?.kind === "path" ? [...span.d.matchAll(/M([\d.]+) [\d.]+v10/g)].map(([, x]) => Number(x)) : [];
        const straight = /v10M([\d.]+) /.exec(span?.kind === "path" ? span.d : "")?.[1];
        expect(scales.stops(ends[0] ?? Number.NaN)).toBeCloseTo(from, 2);
        expect(scales.stops(Number(straight))).toBeCloseTo(to, 2);
      }
    },
  );
});

describe("words", () => {
  const boxesOf = ({ shapes }: Drawing) =>
    shapes.flatMap((shape) => {
      if (shape.kind !== "text") return [];
      const width = textWidth({ text: shape.text, size: shape.size, isBold: shape.isBold });
      const left = shape.x - (shape.anchor === "start" ? 0 : shape.anchor === "end" ? width : width / 2);
      // Letters reach about 0.72 of their size over the base line.
      return [{ text: shape.text, left, right: left + width, top: shape.y - 0.72 * shape.size, foot: shape.y }];
    });

  test.each(cases)("%s: none lies over another, none is cut off [property]", (_name, input) => {
    const drawing = toneDrawing(input);
    const boxes = boxesOf(drawing);
    for (const [place, one] of boxes.entries()) {
      expect(one.left, one.text).toBeGreaterThanOrEqual(-0.5);
      expect(one.right, one.text).toBeLessThanOrEqual(drawing.width + 0.5);
      expect(one.top, one.text).toBeGreaterThanOrEqual(0);
      expect(one.foot, one.text).toBeLessThanOrEqual(drawing.height);
      for (const other of boxes.slice(place + 1)) {
        const apart =
          one.right <= other.left || other.right <= one.left || one.foot <= other.top || other.foot <= one.top;
        expect(apart, `${one.text} over ${other.text}`).toBe(true);
      }
    }
  });

  test("a mark beyond the drawing stands at its edge and points outward [by hand]", () => {
    const drawing = toneDrawing(toneCases["tone-beyond"] as ToneDrawingInput);
    const pointing = drawing.shapes.filter((shape) => shape.name?.startsWith("beyond"));
    expect(pointing.map(({ name }) => name)).toEqual(["beyond Sun on the ice of the slip", "beyond Under the keel"]);
    const { x } = squareOf(drawing, "Sun on the ice of the slip");
    const tip = pointing[0]?.kind === "polygon" ? (pointing[0].points[2]?.[0] ?? 0) : 0;
    expect(tip).toBeGreaterThan(x);
    expect(tip).toBeLessThanOrEqual(drawing.width);
  });

  test("the sentence gives the numbers, and a wide doubt as a range [by hand]", () => {
    const phone = toneCases["tone-positive-phone"] as ToneDrawingInput;
    const [snow] = phone.areas;
    const { says } = toneDrawing(phone);
    expect(says).toContain("Curve of paper box C with recipe 4, lighter upward.");
    expect(says).toContain(`Snow prints at ${snow?.density.toFixed(2)}, give or take`);
    expect(says).toContain("Wanted white 0.45. Wanted black 1.80. The scene: 7.0 stops.");
    const hull = { name: "hull", stops: 0, density: 0.75, low: 0.28, high: 1.61 };
    const negative = toneDrawing({ ...phone, kind: "negative", areas: [hull] });
    expect(negative.says).toContain("Hull comes to 0.75, anywhere from 0.3 to 1.6.");
  });
});
