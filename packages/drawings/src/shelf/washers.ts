import type { Drawing, Shape } from "../shapes/shape.ts";

export interface Washer {
  readonly holeMm: number;
  /** Beside the hole: “f/11, hole 19.1 mm”. */
  readonly words: string;
}

export interface WashersInput {
  readonly washers: readonly Washer[];
  /** Across the card: what the barrel takes. */
  readonly cardMm: number;
  /** The room there is. */
  readonly widthMm: number;
}

const letterMm = 4;
const gapMm = 6;

/** Cards with holes to cut, in mm true to size: the outer ring to cut along, the hole, its middle, and what it is. */
export function washers({ washers: all, cardMm, widthMm }: WashersInput): Drawing {
  const widest = Math.max(cardMm, ...all.map(({ holeMm }) => holeMm + 8));
  const stepX = widest + gapMm;
  const stepY = widest + letterMm + gapMm;
  const perRow = Math.max(1, Math.floor((widthMm + gapMm) / stepX));
  const shapes = all.flatMap(({ holeMm, words }, place): Shape[] => {
    const x = (place % perRow) * stepX + widest / 2;
    const y = Math.floor(place / perRow) * stepY + widest / 2;
    const at = { kind: "circle", x, y, fill: "paper", stroke: "ink" } as const;
    const cross = 1.5;
    return [
      { ...at, radius: widest / 2, strokeWidth: 0.15, name: `card ${place + 1}` },
      { ...at, radius: holeMm / 2, strokeWidth: 0.3, name: `hole ${place + 1}` },
      {
        kind: "path",
        d: `M${x - cross} ${y}h${2 * cross}M${x} ${y - cross}v${2 * cross}`,
        stroke: "ink",
        width: 0.15,
      },
      {
        kind: "text",
        text: words,
        x,
        y: y + widest / 2 + letterMm + 0.5,
        anchor: "middle",
        size: letterMm,
        ink: "ink",
        name: `words ${place + 1}`,
      },
    ];
  });
  return {
    width: Math.min(all.length, perRow) * stepX - gapMm,
    height: Math.ceil(all.length / perRow) * stepY,
    shapes,
    says: `Cards to cut, true to size: ${all.map(({ words }) => words).join("; ")}.`,
  };
}
