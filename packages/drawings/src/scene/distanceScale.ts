import type { Drawing, Shape } from "../shapes/shape.ts";
import { textWidth } from "../shapes/textWidth.ts";

export interface DistanceScaleInput {
  readonly widthPx: number;
  /** Of the smallest letters. */
  readonly letterPx: number;
  readonly nearMm: number;
  /** null: sharp to the horizon. */
  readonly farMm: number | null;
  /** What the camera is set to; null: a distant subject. */
  readonly focusMm: number | null;
  readonly lengthUnit: "mm" | "inch";
}

const footMm = 304.8;
const barPx = 16;
const gapPx = 5;
const leastBarPx = 3;

/**
 * What is sharp as a bar on a scale of distance, with a gap at the distance that is focused on.
 *
 * The scale is one of proportions: twice as far is everywhere as long. A bar that runs to the horizon leaves at the right edge as an arrow.
 */
export function distanceScale(input: DistanceScaleInput): Drawing {
  const { widthPx, letterPx, nearMm, farMm, focusMm } = input;
  const unitMm = input.lengthUnit === "mm" ? 1000 : footMm;
  const unit = input.lengthUnit === "mm" ? "m" : "ft";
  const inset = letterPx;
  const [fromMm, toMm] = ends(nearMm, farMm, unitMm);
  const perLog = (widthPx - 2 * inset) / Math.log(toMm / fromMm);
  const x = (mm: number) => inset + perLog * Math.log(mm / fromMm);
  const barY = letterPx * 1.5;
  const lineY = barY + barPx + 3;
  const right = widthPx - inset;

  const shapes: Shape[] = [
    { kind: "path", d: `M${inset} ${lineY}H${right}`, stroke: "ink", width: 1.5, name: "scale" },
  ];
  const text = { kind: "text", size: letterPx, y: lineY + 8 + letterPx } as const;
  let freeFrom = Number.NEGATIVE_INFINITY;
  for (const mark of marksBetween(fromMm / unitMm, toMm / unitMm)) {
    const at = x(mark * unitMm);
    shapes.push({ kind: "path", d: `M${fixed(at)} ${lineY}v7`, stroke: "ink", width: 1.2 });
    const words = freeFrom === Number.NEGATIVE_INFINITY ? `${mark} ${unit}` : String(mark);
    const half = textWidth({ text: words, size: letterPx }) / 2;
    const middle = Math.min(Math.max(at, half), widthPx - half);
    if (middle - half < freeFrom) continue;
    shapes.push({ ...text, text: words, x: fixed(middle), anchor: "middle", ink: "soft", name: `figure ${mark}` });
    freeFrom = middle + half + letterPx * 0.6;
  }
  shapes.push(
    ...barShapes(x(nearMm), farMm === null ? undefined : x(farMm), focusMm === null ? undefined : x(focusMm)),
  );
  shapes.push(...endWords());
  return { width: widthPx, height: fixed(text.y + letterPx * 0.4), shapes, says: says() };

  function barShapes(near: number, far: number | undefined, focus: number | undefined): Shape[] {
    const end = far ?? right - barPx / 2;
    const bar = (from: number, to: number, name: string): Shape => {
      const width = Math.max(to - from, leastBarPx);
      return {
        kind: "rect",
        x: fixed((from + to - width) / 2),
        y: barY,
        width: fixed(width),
        height: barPx,
        fill: "ink",
        name,
      };
    };
    // Where there is no room for a gap the bar alone says where it is sharp.
    const parts = focus !== undefined && focus - near > gapPx && end - focus > gapPx;
    const shapes: Shape[] = parts
      ? [bar(near, focus - gapPx / 2, "sharp before"), bar(focus + gapPx / 2, end, "sharp behind")]
      : [bar(near, end, "sharp")];
    if (far === undefined) {
      const tip = right + barPx / 4;
      shapes.push({
        kind: "polygon",
        points: [
          [end, barY - 3],
          [tip, barY + barPx / 2],
          [end, barY + barPx + 3],
        ],
        fill: "ink",
        name: "to the horizon",
      });
    }
    return shapes;
  }

  /** Near and far over their ends; where they would touch each other they move apart. */
  function endWords(): Shape[] {
    const one = distanceWords(nearMm, unitMm, farMm);
    const other = farMm === null ? "horizon" : distanceWords(farMm, unitMm, nearMm);
    const wide = (words: string) => textWidth({ text: words, size: letterPx });
    let first = x(nearMm);
    let second = farMm === null ? right : x(farMm);
    const apart = (wide(one) + wide(other)) / 2 + letterPx * 0.9;
    if (second - first < apart) [first, second] = [(first + second - apart) / 2, (first + second + apart) / 2];
    if (second + wide(other) / 2 > widthPx) second = widthPx - wide(other) / 2;
    first = Math.max(wide(one) / 2, Math.min(first, second - apart));
    const y = barY - letterPx * 0.45;
    const at = (words: string, middle: number, name: string): Shape => ({
      kind: "text",
      text: words,
      x: fixed(middle),
      y,
      anchor: "middle",
      size: letterPx,
      ink: "ink",
      name,
    });
    return [at(one, first, "near"), at(other, second, "far")];
  }

  function says(): string {
    const far = farMm === null ? "the horizon" : `${distanceWords(farMm, unitMm, nearMm)} ${unit}`;
    const focus = focusMm === null ? "" : `; focused at ${distanceWords(focusMm, unitMm, null)} ${unit}`;
    return `Scale of distance: sharp from ${distanceWords(nearMm, unitMm, farMm)} ${unit} to ${far}${focus}.`;
  }
}

/** Round numbers around what is sharp, with room at both sides. */
function ends(nearMm: number, farMm: number | null, unitMm: number): [number, number] {
  const far = farMm ?? nearMm * 6;
  const room = Math.max(Math.log(far / nearMm) * 0.6, Math.log(1.3));
  return [floorMark((nearMm / unitMm) * Math.exp(-room)) * unitMm, ceilMark((far / unitMm) * Math.exp(room)) * unitMm];
}

const steps = [1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8];

function marksBetween(from: number, to: number): number[] {
  const marks: number[] = [];
  for (let decade = Math.floor(Math.log10(from)); decade <= Math.ceil(Math.log10(to)); decade++) {
    for (const step of steps) {
      const mark = Number((step * 10 ** decade).toPrecision(2));
      if (mark >= from * 0.9999 && mark <= to * 1.0001) marks.push(mark);
    }
  }
  return marks;
}

function floorMark(value: number): number {
  return marksBetween(value / 12, value).at(-1) ?? value;
}

function ceilMark(value: number): number {
  return marksBetween(value, value * 12)[0] ?? value;
}

/** No more digits than tell the two ends apart: 1.31 and 1.43, 27.6, 140. */
function distanceWords(mm: number, unitMm: number, otherMm: number | null): string {
  const value = mm / unitMm;
  const apart = otherMm === null ? value : Math.abs(value - otherMm / unitMm);
  const place = Math.floor(Math.log10(Math.min(apart, value * 0.2)));
  const decimals = Math.min(3, Math.max(0, 1 - place));
  return value.toFixed(value >= 100 ? 0 : decimals);
}

function fixed(px: number): number {
  return Math.round(px * 100) / 100;
}
