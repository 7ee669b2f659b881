import type { Drawing, Shape } from "../shapes/shape.ts";
import { textWidth } from "../shapes/textWidth.ts";

export interface LensSectionInput {
  readonly widthPx: number;
  /** Of the smallest letters. */
  readonly letterPx: number;
  readonly focalLengthMm: number;
  /** Diameter of the entrance pupil, or of a pinhole. */
  readonly pupilMm: number;
  readonly sort: "lens" | "single" | "pinhole";
  /** Of a single glass: where its card stands; 0 at the glass, in front of it or behind. */
  readonly card?: { readonly side: "front" | "behind"; readonly distanceMm: number } | undefined;
  /** Beside the pupil: “pupil 18.4 mm ±0.5”. */
  readonly pupilWords: string;
  /** Under the drawing: “210 mm, to scale”. */
  readonly lengthWords: string;
}

/** Where the stop stands, and how far the paper is from the right edge. */
const stopX = 48;
const rightPx = 50;
/** Room for the words over the axis, and the least half of a barrel. */
const leastHalf = 32;
const bend = 8;

/**
 * A lens in section over the sheet it draws on: stop, pupil and focal length in one scale, the glass only a sketch.
 *
 * Two rays run from the edges of the pupil to the paper, so that a slow lens looks slow.
 */
export function lensSection(input: LensSectionInput): Drawing {
  const { widthPx, letterPx, focalLengthMm, pupilMm, sort } = input;
  const paperX = widthPx - rightPx;
  const perMm = (paperX - stopX) / focalLengthMm;
  const pupil = (perMm * pupilMm) / 2;
  const half = Math.max(leastHalf, pupil + 12);
  const top = letterPx + 8;
  const axisY = fixed(top + half + 10);
  const under = axisY + Math.max(half + 8, 46) + 10;

  const line = (d: string, width: number, name?: string): Shape => ({ kind: "path", d, stroke: "ink", width, name });
  const text = (words: string, x: number, y: number, anchor: "start" | "middle" | "end", name: string): Shape => ({
    kind: "text",
    text: words,
    x: fixed(x),
    y: fixed(y),
    anchor,
    size: letterPx,
    ink: "ink",
    name,
  });
  const gap = Math.max(pupil, 0.6);
  const shapes: Shape[] = [
    {
      kind: "path",
      d: `M4 ${axisY}H${fixed(widthPx - 4)}`,
      stroke: "ink",
      width: 1,
      dashes: [14, 4, 3, 4],
      name: "axis",
    },
    ...glasses(),
    line(
      `M${stopX} ${fixed(axisY - half)}V${fixed(axisY - gap)}M${stopX} ${fixed(axisY + half)}V${fixed(axisY + gap)}`,
      3,
      "stop",
    ),
    line(`M${fixed(paperX)} ${fixed(axisY - 46)}V${fixed(axisY + 46)}`, 2.5, "paper"),
    line(`M${stopX} ${fixed(axisY - gap)}L${fixed(paperX)} ${axisY}L${stopX} ${fixed(axisY + gap)}`, 1, "rays"),
    ...dimension(),
    ...pupilLabel(),
    text("paper", paperX - 6, axisY - 46 + letterPx * 0.4, "end", "paper word"),
  ];
  return { width: widthPx, height: fixed(under + letterPx * 0.6), shapes, says: says() };

  function glasses(): Shape[] {
    if (sort === "pinhole") return [];
    const barrel = `M${stopX - 34} ${fixed(axisY - half)}H${stopX + 34}M${stopX - 34} ${fixed(axisY + half)}H${stopX + 34}`;
    if (sort === "single") {
      const away = (input.card?.distanceMm ?? 0) * perMm;
      const at = input.card === undefined ? stopX - 8 : input.card.side === "front" ? stopX + away : stopX - away;
      return [glass(Math.min(Math.max(at, 12), paperX - 12))];
    }
    return [line(barrel, 3, "barrel"), glass(stopX - 20), glass(stopX + 20)];
  }

  function glass(x: number): Shape {
    const y = half - 6;
    const side = (sign: number) =>
      `M${fixed(x)} ${fixed(axisY - y)}Q${fixed(x + sign * 2 * bend)} ${axisY} ${fixed(x)} ${fixed(axisY + y)}`;
    return line(`${side(-1)}${side(1)}`, 1.8, "glass");
  }

  function dimension(): Shape[] {
    const wide = textWidth({ text: input.lengthWords, size: letterPx }) + 16;
    const middle = (stopX + paperX) / 2;
    const ends = `M${stopX} ${fixed(under - 6)}v12M${fixed(paperX)} ${fixed(under - 6)}v12`;
    const from = middle - wide / 2;
    const to = middle + wide / 2;
    // Where the words take the whole length the ends alone are drawn.
    const bar = from > stopX ? `M${stopX} ${under}H${fixed(from)}M${fixed(to)} ${under}H${fixed(paperX)}` : "";
    return [
      line(`${bar}${ends}`, 1.3, "focal length"),
      text(input.lengthWords, middle, under + letterPx * 0.35, "middle", "focal length words"),
    ];
  }

  function pupilLabel(): Shape[] {
    const x = stopX + 74;
    return [
      line(`M${stopX + 1} ${fixed(axisY - gap)}L${x} ${fixed(top - 4)}`, 1, "pupil line"),
      text(input.pupilWords, x + 4, top, "start", "pupil words"),
    ];
  }

  function says(): string {
    const what = { lens: "Lens", single: "Single glass", pinhole: "Pinhole" }[sort];
    return `${what} in section: ${input.pupilWords}, drawn to scale with ${input.lengthWords.replace(/, to scale$/, "")} to the paper.`;
  }
}

function fixed(value: number): number {
  return Number(value.toFixed(2));
}
