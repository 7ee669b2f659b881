import { describe, expect, test } from "vitest";
import type { Shape } from "../shapes/shape.ts";
import { type LightTestStage, lightTestDrawing } from "./lightTestDrawing.ts";

const bands = ["0", "1 min", "3 min", "7 min"];

function drawn(stage: LightTestStage, widthPx = 320, letterPx = 15) {
  return lightTestDrawing({ widthPx, letterPx, stage, bands });
}
function rect(shapes: readonly Shape[], name: string) {
  const found = shapes.find((shape) => shape.name === name);
  if (found?.kind !== "rect") throw new Error(name);
  return found;
}
/** The box that a path of straight lines takes. */
function boxOf(shapes: readonly Shape[], name: string) {
  const found = shapes.find((shape) => shape.name === name);
  if (found?.kind !== "path") throw new Error(name);
  const [, x1 = 0, y1 = 0, x2 = 0, y2 = 0] = (/^M([\d.]+) ([\d.]+)H([\d.]+)V([\d.]+)/.exec(found.d) ?? []).map(Number);
  return { x1, y1, x2, y2, d: found.d };
}

describe("a sheet that tries a light", () => {
  test("the card covers the other half and the strip between, never the half that has its grey", () => {
    const left = drawn("greyLeft").shapes;
    const right = drawn("greyRight").shapes;
    const sheet = rect(left, "sheet");
    const middle = sheet.x + sheet.width / 2;
    const [onLeft, onRight] = [boxOf(left, "card"), boxOf(right, "card")];
    expect(onLeft.x1).toBeLessThan(middle);
    expect(onLeft.x2).toBeCloseTo(sheet.x + sheet.width, 1);
    expect(onRight.x1).toBeCloseTo(sheet.x, 1);
    expect(onRight.x2).toBeGreaterThan(middle);
    // What is left open is the same on either side, and the strip between is open in neither.
    expect(onLeft.x1 - sheet.x).toBeCloseTo(sheet.x + sheet.width - onRight.x2, 1);
    expect(onLeft.x1).toBeLessThan(onRight.x2);
  });

  test("under the light the first of four bands is covered; hatching stays inside the card", () => {
    const { shapes } = drawn("light");
    const sheet = rect(shapes, "sheet");
    const card = boxOf(shapes, "card");
    expect(card.y2 - card.y1).toBeCloseTo(sheet.height / 4, 1);
    const places = [...card.d.matchAll(/[ML]([\d.]+) ([\d.]+)/g)];
    expect(places.length).toBeGreaterThan(20);
    for (const [, x, y] of places) {
      expect(Number(x)).toBeGreaterThanOrEqual(card.x1 - 0.02);
      expect(Number(x)).toBeLessThanOrEqual(card.x2 + 0.02);
      expect(Number(y)).toBeGreaterThanOrEqual(card.y1 - 0.02);
      expect(Number(y)).toBeLessThanOrEqual(card.y2 + 0.02);
    }
  });

  test("nothing leaves the picture, and every stage says itself", () => {
    for (const stage of ["greyLeft", "light", "greyRight", "whole"] as const) {
      for (const letterPx of [15, 30]) {
        const { width, height, shapes, says } = drawn(stage, 320, letterPx);
        const sheet = rect(shapes, "sheet");
        expect(sheet.x + sheet.width).toBeLessThanOrEqual(width);
        expect(sheet.y + sheet.height).toBeLessThanOrEqual(height);
        expect(says).toMatch(/^[A-Z].+\.$/);
      }
    }
    expect(drawn("whole").says).toContain("covered, 1 min, 3 min, 7 min");
  });
});
