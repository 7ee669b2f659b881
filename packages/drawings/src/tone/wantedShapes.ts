import type { Shape } from "../shapes/shape.ts";
import { textWidth } from "../shapes/textWidth.ts";
import { pointAt } from "./curveShapes.ts";
import type { Places } from "./placesOf.ts";
import type { ToneDrawingInput } from "./toneTypes.ts";

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Broken lines across for the densities aimed at, each with its words where the curve is not. */
export function wantedShapes(input: ToneDrawingInput, places: Places): Shape[] {
  const { left, right, y } = places;
  const shapes: Shape[] = [];
  const taken: Box[] = [];
  for (const [place, { words, density }] of input.wanted.entries()) {
    const at = y(density);
    const box = freeBox(input, places, { at, words, taken, isFirst: place === 0 });
    taken.push(box);
    shapes.push({
      kind: "path",
      d: `M${left} ${at}H${right}`,
      stroke: "ink",
      width: 1.3,
      dashes: [7, 5],
      name: `line ${words}`,
    });
    shapes.push({ kind: "rect", ...box, fill: "paper", name: `ground ${words}` });
    shapes.push({
      kind: "text",
      text: words,
      x: box.x + 3,
      y: box.y + box.height / 2 + input.letterPx / 3,
      anchor: "start",
      size: input.letterPx,
      ink: "ink",
      name: `wanted ${words}`,
    });
  }
  return shapes;
}

/** Left or right, above or below its line: the first place that neither the curve, its doubt nor other words need. */
function freeBox(
  { letterPx, curve, kind }: ToneDrawingInput,
  { left, right, top, axisY, x, y, fromStops, toStops }: Places,
  {
    at,
    words,
    taken,
    isFirst,
  }: { readonly at: number; readonly words: string; readonly taken: readonly Box[]; readonly isFirst: boolean },
): Box {
  const width = textWidth({ text: words, size: letterPx }) + 6;
  const height = letterPx * 1.25;
  // Highlights lie at the right, and leave the left free; with shadows it is the other way round.
  const sides = isFirst ? [left + 4, right - width] : [right - width, left + 4];
  const levels = isFirst && kind === "positive" ? [at + 4, at - 3 - height] : [at - 3 - height, at + 4];
  const perPx = (toStops - fromStops) / (right - x(fromStops));
  let best: { readonly box: Box; readonly cost: number } | undefined;
  for (const boxX of sides) {
    for (const boxY of levels) {
      const box = { x: boxX, y: boxY, width, height };
      let cost = boxY < top - 4 || boxY + height > axisY ? 50 : 0;
      if (taken.some((other) => overlaps(box, other))) cost += 100;
      for (let px = boxX; px <= boxX + width; px += 8) {
        const point = pointAt(curve, fromStops + (px - x(fromStops)) * perPx);
        if (point === undefined) continue;
        const [curveY, low, high] = [y(point.density), y(point.low), y(point.high)];
        if (curveY > boxY - 2 && curveY < boxY + height + 2) cost += 4;
        else if (Math.max(low, high) > boxY && Math.min(low, high) < boxY + height) cost += 0.5;
      }
      if (best === undefined || cost < best.cost) best = { box, cost };
    }
  }
  return best?.box ?? { x: left, y: at, width, height };
}

function overlaps(one: Box, other: Box): boolean {
  return (
    one.x < other.x + other.width &&
    other.x < one.x + one.width &&
    one.y < other.y + other.height &&
    other.y < one.y + one.height
  );
}
