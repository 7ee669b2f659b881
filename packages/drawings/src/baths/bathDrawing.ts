import type { Drawing, Shape } from "../shapes/shape.ts";
import { textWidth } from "../shapes/textWidth.ts";

export interface BathDrawingInput {
  readonly widthPx: number;
  readonly letterPx: number;
  /** What ends the bath: hours of the day, or sheets. */
  readonly scale: {
    readonly from: number;
    readonly to: number;
    readonly ticks: readonly { readonly at: number; readonly words: string }[];
  };
  /** How far it has come on that scale. */
  readonly filledTo: number;
  /** What stands at that place: “now”. */
  readonly nowWords?: string | undefined;
  /** A stroke each: the sheets that went through. */
  readonly strokes: readonly number[];
  /** Where it ends: the middle, and the nine in ten; a bath that lasts has none. */
  readonly end?:
    | { readonly value: number; readonly low: number; readonly high: number; readonly words: string }
    | undefined;
  /** The numbers in a sentence. */
  readonly says: string;
}

/** From the page's edge to the floor of the tray, and how far its walls lean out. */
const inset = 18;
const lean = 10;
const rimPx = 12;
const hatchPx = 5;

/**
 * A tray in section over the scale that ends it: what of it is used up is hatched, a stroke for each sheet, and over it the bracket
 * within which it is worn.
 */
export function bathDrawing(input: BathDrawingInput): Drawing {
  const { widthPx, letterPx, scale, filledTo, strokes, end } = input;
  const top = 18;
  const deep = Math.max(20, letterPx + 5);
  const surface = top + rimPx;
  const floor = surface + deep;
  const left = inset;
  const right = widthPx - inset;
  const span = scale.to - scale.from || 1;
  const xOf = (value: number) =>
    fixed(left + ((Math.min(scale.to, Math.max(scale.from, value)) - scale.from) / span) * (right - left));
  const wall = (y: number) => (lean * (floor - y)) / (floor - top);
  const now = xOf(filledTo);

  const line = (d: string, width: number, name: string, dashes?: readonly number[]): Shape => ({
    kind: "path",
    d,
    stroke: "ink",
    width,
    name,
    dashes,
  });
  const word = (text: string, x: number, anchor: "start" | "end", name: string): Shape => ({
    kind: "text",
    text,
    x: fixed(x),
    y: fixed(floor - (deep - letterPx * 0.72) / 2),
    anchor,
    size: letterPx,
    isBold: true,
    ink: "ink",
    name,
  });

  const shapes: Shape[] = [
    line(
      `M${fixed(left - wall(top))} ${top}L${left} ${fixed(floor)}H${fixed(right)}L${fixed(right + wall(top))} ${top}`,
      2.2,
      "tray",
    ),
    ...(now - left > 1 ? [line(hatching(), 1, "used")] : []),
    line(`M${fixed(left - wall(surface))} ${surface}H${fixed(right + wall(surface))}`, 1, "surface"),
    ...strokes.flatMap((at): Shape[] => {
      const x = xOf(at);
      return [
        {
          kind: "path",
          d: `M${x} ${surface - 6}V${fixed(floor - 1)}`,
          stroke: "paper",
          width: 7,
          name: "sheet ground",
        },
        line(`M${x} ${surface - 5}V${fixed(floor - 1)}`, 4, "sheet"),
      ];
    }),
    ...(input.nowWords === undefined ? [] : [line(`M${now} ${top + 2}V${fixed(floor + 6)}`, 3, "now")]),
    ...ending(),
    ...nowWord(),
    ...ticks(),
  ];
  return { width: widthPx, height: fixed(floor + 11 + letterPx * 1.25), shapes, says: input.says };

  /** Strokes upright to the right, cut off where the used part ends and where the wall stands. */
  function hatching(): string {
    const height = floor - 1 - surface;
    let d = "";
    for (let foot = left - height; foot < now; foot += hatchPx) {
      // Along the stroke x = foot + rise, y = floor − 1 − rise.
      const from = Math.max(0, (left - foot) / (1 + lean / (floor - top)));
      const to = Math.min(height, now - foot);
      if (to - from < 0.5) continue;
      d += `M${fixed(foot + from)} ${fixed(floor - 1 - from)}L${fixed(foot + to)} ${fixed(floor - 1 - to)}`;
    }
    return d === "" ? `M${left} ${fixed(floor - 1)}h0` : d;
  }

  function ending(): Shape[] {
    if (end === undefined) return [];
    const [x, low, high] = [xOf(end.value), xOf(end.low), xOf(end.high)];
    const wide = textWidth({ text: end.words, size: letterPx, isBold: true });
    const fits = x + 7 + wide <= right;
    return [
      line(`M${low} 12H${high}M${low} 7v10M${high} 7v10M${x} 4v16`, 1.6, "end"),
      line(`M${x} 20V${fixed(floor)}`, 1.6, "end line", [4, 3]),
      // With no room at its right it stands before the line, unless what is used up reaches there.
      ...(fits || x - 7 - wide > now
        ? [word(end.words, fits ? x + 7 : x - 7, fits ? "start" : "end", "end words")]
        : []),
    ];
  }

  function nowWord(): Shape[] {
    if (input.nowWords === undefined) return [];
    const wide = textWidth({ text: input.nowWords, size: letterPx, isBold: true });
    const next = end === undefined || xOf(end.value) < now ? right : xOf(end.value);
    return now + 7 + wide + 3 <= next ? [word(input.nowWords, now + 7, "start", "now words")] : [];
  }

  function ticks(): Shape[] {
    const widest = Math.max(0, ...scale.ticks.map(({ words }) => textWidth({ text: words, size: letterPx })));
    const apart =
      scale.ticks.length < 2 ? widthPx : Math.abs(xOf(scale.ticks[1]?.at ?? 0) - xOf(scale.ticks[0]?.at ?? 0));
    const every = Math.max(1, Math.ceil((widest + 8) / Math.max(1, apart)));
    return scale.ticks.flatMap(({ at, words }, place): Shape[] => {
      const x = xOf(at);
      if (place % every !== 0) return [];
      const half = textWidth({ text: words, size: letterPx }) / 2;
      return [
        line(`M${x} ${fixed(floor)}v8`, 1.2, "tick"),
        {
          kind: "text",
          text: words,
          x: fixed(Math.min(widthPx - half, Math.max(half, x))),
          y: fixed(floor + 11 + letterPx),
          anchor: "middle",
          size: letterPx,
          ink: "soft",
          name: "tick words",
        },
      ];
    });
  }
}

function fixed(value: number): number {
  return Number(value.toFixed(2));
}
