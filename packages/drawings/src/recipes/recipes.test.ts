import { describe, expect, test } from "vitest";
import type { Drawing, RectShape, Shape } from "../shapes/shape.ts";
import { textWidth } from "../shapes/textWidth.ts";
import { patchesDrawing, patchMm } from "./patchesDrawing.ts";
import { recipeStrip } from "./recipeStrip.ts";
import { patchCases, positiveSteps, stripCases } from "./testing.ts";

const rects = ({ shapes }: Drawing, name: RegExp | string): readonly RectShape[] =>
  shapes.filter((one): one is RectShape => one.kind === "rect" && one.name?.match(name) !== null);

function expectInside({ shapes, width, height }: Drawing): void {
  for (const shape of shapes) {
    if (shape.kind === "rect") {
      expect(shape.x).toBeGreaterThanOrEqual(-0.5);
      expect(shape.x + shape.width).toBeLessThanOrEqual(width + 0.5);
      expect(shape.y + shape.height).toBeLessThanOrEqual(height + 0.5);
    }
    if (shape.kind !== "text") continue;
    const wide = textWidth({ text: shape.text, size: shape.size, isBold: shape.isBold });
    const from = shape.x - (shape.anchor === "middle" ? wide / 2 : shape.anchor === "end" ? wide : 0);
    expect(from).toBeGreaterThanOrEqual(-1);
    expect(from + wide).toBeLessThanOrEqual(width + 1);
    expect(shape.y).toBeLessThanOrEqual(height);
  }
}

describe("a recipe along its time", () => {
  const drawing = recipeStrip({ widthPx: 358, letterPx: 15, steps: positiveSteps });

  // 210 s before the rounds, 9 stays of 60 s, 435 s after: 1185 s in 354 px.
  test("each stay is as long as its time, the rounds come by turns, and all of it fills the width [by hand]", () => {
    const stays = rects(drawing, /^stay/);
    expect(stays).toHaveLength(8 + 3 * 3);
    for (const [place, timeS] of [120, 30, 60, 60, 60, 60].entries()) {
      expect(stays[place]?.width).toBeCloseTo((354 * timeS) / 1185, 1);
    }
    expect(stays.map(({ name }) => name?.slice(5)).join(" ")).toBe("1 2 3 4 5 6 4 5 6 4 5 6 7 8 9 10 11");
    const end = stays.at(-1);
    expect((end?.x ?? 0) + (end?.width ?? 0)).toBeCloseTo(356, 1);
  });

  test("light: filled until the last bleach round is over at 12 min 30, then open; the sentence says so [by hand]", () => {
    const [dark] = rects(drawing, "no white light");
    expect(dark?.width).toBeCloseTo((354 * 750) / 1185, 1);
    expect(drawing.says).toContain("peroxide 1 min, 3 times");
    expect(drawing.says).toContain("In all 19 min 45; white light from 12 min 30 on.");
  });

  test("a wash of 45 minutes is drawn broken and says so, and what goes before it keeps its scale", () => {
    const input = stripCases["recipe-negative-fibre"];
    if (input === undefined) throw new Error("no case");
    const made = recipeStrip(input);
    const [developer, stop] = rects(made, /^stay/);
    expect((developer?.width ?? 0) / (stop?.width ?? 1)).toBeCloseTo(150 / 45, 1);
    expect(made.shapes.some(({ name }) => name === "break")).toBe(true);
    expect(made.says).toMatch(/^To scale but for the last/);
    expect(drawing.shapes.some(({ name }) => name === "break")).toBe(false);
  });

  test.each(Object.entries(stripCases))("%s: everything lies inside", (_, input) => expectInside(recipeStrip(input)));

  test("no step, or one, is drawn without a broken number", () => {
    expect(recipeStrip({ widthPx: 358, letterPx: 15, steps: [] }).says).toBe("A recipe without steps.");
    const one = recipeStrip({ widthPx: 358, letterPx: 15, steps: positiveSteps.slice(0, 1) });
    expect(JSON.stringify(one)).not.toMatch(/null|NaN/);
  });
});

describe("control patches", () => {
  test.each(Object.entries(patchCases))("%s: everything lies inside, sheet and print in one scale", (_, input) => {
    const drawing = patchesDrawing(input);
    expectInside(drawing);
    const [sheet, print] = [rects(drawing, "sheet")[0], rects(drawing, "print")[0]];
    expect([sheet?.width, sheet?.height]).toEqual([print?.width, print?.height]);
    const scanned = rects(drawing, /^(scanned|laid)/);
    expect(scanned).toHaveLength(input.patches.length);
    const wideMm = Math.max(input.sheet?.widthMm ?? 130, input.patches.length * 20 + 5);
    for (const { width } of scanned) expect(width / (sheet?.width ?? 1)).toBeCloseTo(patchMm / wideMm, 2);
  });

  test("masked and lit stay on the print; what was cut off lies beside it, clear of it", () => {
    const drawing = patchesDrawing({ widthPx: 358, letterPx: 15, ...patchCases["patches-five-phone"] } as never);
    const [print] = rects(drawing, "print");
    const right = (print?.x ?? 0) + (print?.width ?? 0);
    for (const { x } of rects(drawing, /^laid/)) expect(x).toBeGreaterThan(right + 2);
    for (const { x, width } of rects(drawing, /^scanned/)) expect(x + width).toBeLessThan(right);
    expect(rects(drawing, /^laid/).map(({ name }: Shape) => name)).toEqual(["laid c", "laid d", "laid e"]);
    expect(drawing.says).toContain("For the scan c, d, e lie beside the print.");
    expect(patchesDrawing({ widthPx: 358, letterPx: 15, patches: [] }).says).toBe("A sheet without control patches.");
  });
});
