import type { ToneDrawingInput } from "./toneTypes.ts";

/** Where stops and densities lie on the drawing, and its fixed lines. */
export interface Places {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  /** Where the exposure axis lies. */
  readonly axisY: number;
  readonly fromStops: number;
  readonly toStops: number;
  readonly mostDensity: number;
  readonly x: (stops: number) => number;
  readonly y: (density: number) => number;
}

/** Lays out the plot under the dimension lines. Inner helper: positions instead of one object. */
export function placesOf(input: ToneDrawingInput, topPx: number): Places {
  const { kind, perDensityPx, curve } = input;
  const { left, right, fromStops, toStops, x } = acrossOf(input);
  const mostDensity = Math.min(2.7, Math.max(2.05, ...curve.map((point) => point.high + 0.03)));
  const top = topPx + 10;
  const span = mostDensity * perDensityPx;
  return {
    left,
    right,
    top,
    axisY: top + span,
    fromStops,
    toStops,
    mostDensity,
    x,
    y: (density) => {
      const within = Math.min(mostDensity, Math.max(0, density));
      return kind === "positive" ? top + within * perDensityPx : top + span - within * perDensityPx;
    },
  };
}

export interface Across {
  readonly left: number;
  readonly right: number;
  readonly fromStops: number;
  readonly toStops: number;
  readonly x: (stops: number) => number;
}

/** The exposure axis alone; the cap time's scale below shares it. */
export function acrossOf(
  input: Pick<ToneDrawingInput, "widthPx" | "letterPx" | "curve" | "fromStops" | "toStops">,
): Across {
  const left = Math.round(input.letterPx * 3.6);
  const right = input.widthPx - 6;
  const fromStops = input.fromStops ?? input.curve[0]?.stops ?? -5;
  const toStops = Math.max(fromStops + 1, input.toStops ?? input.curve.at(-1)?.stops ?? 4);
  const first = left + 8;
  return {
    left,
    right,
    fromStops,
    toStops,
    x: (stops) => first + ((stops - fromStops) * (right - first)) / (toStops - fromStops),
  };
}
