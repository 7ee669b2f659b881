import type { Shape } from "../shapes/shape.ts";
import { textWidth } from "../shapes/textWidth.ts";
import { acrossOf } from "./placesOf.ts";
import type { ToneDrawingInput } from "./toneTypes.ts";

const gapPx = 18;
const besidePx = 8;

/** Dimension lines above the plot; words that do not fit their bracket stand at its left, else at its right, else above it. */
export function dimensionShapes(input: ToneDrawingInput): { readonly shapes: Shape[]; readonly height: number } {
  const { letterPx, dimensions, widthPx } = input;
  const across = acrossOf(input);
  const clamp = (x: number) => Math.min(across.right, Math.max(across.x(across.fromStops), x));
  const shapes: Shape[] = [];
  let top = 0;
  const row = letterPx * 1.6;
  for (const { words, from, to } of dimensions) {
    const [left, right] = [clamp(across.x(Math.min(from, to))), clamp(across.x(Math.max(from, to)))];
    const wide = textWidth({ text: words, size: letterPx });
    const text = { kind: "text", text: words, size: letterPx, ink: "ink", name: `dimension ${words}` } as const;
    let middle = top + row / 2;
    const base = () => middle + letterPx / 3;
    let line = `M${left} ${middle}H${right}`;
    if (right - left >= wide + 2 * gapPx + 2 * besidePx) {
      const centre = (left + right) / 2;
      line = `M${left} ${middle}H${centre - wide / 2 - besidePx}M${centre + wide / 2 + besidePx} ${middle}H${right}`;
      shapes.push({ ...text, x: centre, y: base(), anchor: "middle" });
    } else if (left - besidePx - wide >= 0) {
      shapes.push({ ...text, x: left - besidePx, y: base(), anchor: "end" });
    } else if (right + besidePx + wide <= widthPx) {
      shapes.push({ ...text, x: right + besidePx, y: base(), anchor: "start" });
    } else {
      const centre = Math.max(wide / 2, Math.min(widthPx - wide / 2, (left + right) / 2));
      shapes.push({ ...text, x: centre, y: base(), anchor: "middle" });
      top += row;
      middle = top + row / 2;
      line = `M${left} ${middle}H${right}`;
    }
    shapes.push({
      kind: "path",
      d: `${line}M${left} ${middle - 5}v10M${right} ${middle - 5}v10`,
      stroke: "ink",
      width: 1.4,
      name: `span ${words}`,
    });
    top += row;
  }
  return { shapes, height: top };
}
