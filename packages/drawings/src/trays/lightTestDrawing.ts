import type { Drawing, Shape } from "../shapes/shape.ts";
import { textWidth } from "../shapes/textWidth.ts";

/** What lies over the sheet: while one side has its grey, while the light is on, or nothing, as it comes out. */
export type LightTestStage = "greyLeft" | "light" | "greyRight" | "whole";

export interface LightTestDrawingInput {
  readonly widthPx: number;
  /** Of the smallest letters. */
  readonly letterPx: number;
  readonly stage: LightTestStage;
  /** The bands from the top, the covered one first: "0", "1 min" … */
  readonly bands: readonly string[];
}

const sides = { greyLeft: "left", greyRight: "right" } as const;
/** Height by width of the sheet. */
const upright = 1.25;
/** The strip between the halves, that never has any grey. */
const stripShare = 0.16;

/** How a sheet is masked to try a light: grey on the left before the light, on the right after it, bands of time across, bare paper between. */
export function lightTestDrawing({ widthPx, letterPx, stage, bands }: LightTestDrawingInput): Drawing {
  const names = Math.max(0, ...bands.map((text) => textWidth({ text, size: letterPx })));
  const left = fixed(names + letterPx * 0.5);
  const width = fixed(widthPx - left - 2);
  const top = fixed(letterPx * 1.6);
  const height = fixed(width * upright);
  const bandPx = height / Math.max(1, bands.length);
  const half = (width * (1 - stripShare)) / 2;
  const right = left + width;
  const shapes: Shape[] = [
    { kind: "rect", x: left, y: top, width, height, stroke: "ink", strokeWidth: 2, name: "sheet" },
    line(left + half, top, left + half, top + height, "edge left"),
    line(right - half, top, right - half, top + height, "edge right"),
    ...bands.flatMap((text, place): Shape[] => {
      const y = top + place * bandPx;
      const at = { x: fixed(left - letterPx * 0.4), y: fixed(y + bandPx / 2 + letterPx * 0.35), size: letterPx };
      const name: Shape = { kind: "text", text, anchor: "end", isBold: true, ink: "ink", name: `band ${place}`, ...at };
      return place === 0 ? [name] : [line(left, y, right, y, `line ${place}`), name];
    }),
    ...covered(),
    ...heads(),
  ];
  return { width: widthPx, height: fixed(top + height + 2), shapes, says: sentence() };

  function line(x1: number, y1: number, x2: number, y2: number, name: string): Shape {
    const d = `M${fixed(x1)} ${fixed(y1)}L${fixed(x2)} ${fixed(y2)}`;
    return { kind: "path", d, stroke: "ink", width: 1, dashes: [4, 3], name };
  }

  /** The card, hatched: what it covers stays dark. */
  function covered(): readonly Shape[] {
    if (stage === "whole") return [];
    if (stage === "light") return [card(left, top, right, top + bandPx)];
    const from = stage === "greyLeft" ? left + half : left;
    const to = stage === "greyLeft" ? right : right - half;
    return [card(from, top, to, top + height)];
  }

  function card(x1: number, y1: number, x2: number, y2: number): Shape {
    const step = Math.max(6, letterPx * 0.5);
    let d = `M${fixed(x1)} ${fixed(y1)}H${fixed(x2)}V${fixed(y2)}H${fixed(x1)}Z`;
    // Strokes from lower left to upper right, cut at the edges of the card.
    for (let sum = step; sum < x2 - x1 + (y2 - y1); sum += step) {
      const fromX = Math.max(x1, x1 + sum - (y2 - y1));
      const toX = Math.min(x2, x1 + sum);
      d += `M${fixed(fromX)} ${fixed(y1 + sum - (fromX - x1))}L${fixed(toX)} ${fixed(y1 + sum - (toX - x1))}`;
    }
    return { kind: "path", d, stroke: "ink", width: 1, name: "card" };
  }

  function heads(): readonly Shape[] {
    const words = {
      greyLeft: ["grey now", ""],
      light: ["light on", ""],
      greyRight: ["", "grey now"],
      whole: ["grey first", "light first"],
    }[stage];
    return words.flatMap((text, place): Shape[] => {
      if (text === "") return [];
      const wide = textWidth({ text, size: letterPx });
      const middle = stage === "light" ? left + width / 2 : place === 0 ? left + half / 2 : right - half / 2;
      // At the edge of the picture a word wider than its half moves in.
      const x = Math.min(Math.max(middle, wide / 2), widthPx - wide / 2);
      if (stage === "whole" && wide > half * 1.15) return [];
      return [{ kind: "text", text, x: fixed(x), y: letterPx, anchor: "middle", size: letterPx, ink: "soft" }];
    });
  }

  function sentence(): string {
    const times = bands.slice(1).join(", ");
    if (stage === "light") {
      return `The light is on. The card lies over the uppermost band and moves down over the next at ${times}.`;
    }
    if (stage === "whole") {
      return `The sheet as it comes out: on the left grey came first and the light after it, on the right the light came first, between them bare paper; bands from the top: covered, ${times}.`;
    }
    const side = sides[stage];
    const other = side === "left" ? "right" : "left";
    return `Grey on the ${side} half. The card covers the ${other} half and the strip between.`;
  }
}

function fixed(value: number): number {
  return Number(value.toFixed(2));
}
