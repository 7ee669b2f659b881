import type { Drawing, Shape } from "../shapes/shape.ts";
import { textWidth } from "../shapes/textWidth.ts";
import { type Edge, faultShapes, type MarkBox } from "./faultShapes.ts";
import { type DrawnFault, faultWords } from "./faultWords.ts";
import { placeWords } from "./placeWords.ts";

/** A fault as it lies on the sheet: its middle and its size, as shares of the sheet. */
export interface FaultOnSheet {
  readonly what: DrawnFault;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A piece as it was cut: its upper left corner and its size, as shares of the sheet. */
export interface PieceOnSheet {
  readonly letter: string;
  readonly place: MarkBox;
}

export interface SheetDrawingInput {
  /** The room there is. */
  readonly widthPx: number;
  readonly mostHeightPx: number;
  /** Of the smallest letters. */
  readonly letterPx: number;
  /** “W31” or “W31b”. */
  readonly code: string;
  /** Width by height; where it is not known, of 5 by 7. */
  readonly sizeMm?: { readonly widthMm: number; readonly heightMm: number } | undefined;
  readonly faults: readonly FaultOnSheet[];
  readonly pieces?: readonly PieceOnSheet[] | undefined;
  /** Drawn thicker: the fault in hand, by its place in the list. */
  readonly chosen?: number | undefined;
  /** Where the next mark goes. */
  readonly cross?: { readonly x: number; readonly y: number } | undefined;
}

/** Marks are never drawn smaller than this, or their shape is lost. */
const leastMarkPx = 20;
const edge = 2;

/** A sheet as it is looked at, with its pieces and the faults seen on it, each with its number in the list. */
export function sheetDrawing(input: SheetDrawingInput): Drawing {
  const { letterPx, code, faults, pieces = [], chosen, cross } = input;
  const { width, height } = sizeOf(input);
  const numbers = numberBoxes();
  const shapes: Shape[] = [
    {
      kind: "rect",
      x: edge / 2,
      y: edge / 2,
      width: width - edge,
      height: height - edge,
      fill: "paper",
      stroke: "ink",
      strokeWidth: edge,
      name: "sheet",
    },
    ...pieces.flatMap(pieceShapes),
    ...faults.flatMap((fault, place) =>
      faultShapes(fault.what, markBox(fault), nearestEdge(fault), `fault ${place + 1}`).map((shape) =>
        place === chosen ? thicker(shape) : shape,
      ),
    ),
    ...faults.flatMap((_, place) => numberShapes(place)),
    ...(cross === undefined ? [] : crossShapes(cross)),
  ];
  return { width, height, shapes, says: says() };

  function markBox({ x, y, width: across, height: down }: FaultOnSheet): MarkBox {
    const [w, h] = [Math.max(leastMarkPx, across * width), Math.max(leastMarkPx, down * height)];
    return {
      x: within(x * width - w / 2, edge + 1, width - w - edge - 1),
      y: within(y * height - h / 2, edge + 1, height - h - edge - 1),
      width: Math.min(w, width - 2 * edge - 2),
      height: Math.min(h, height - 2 * edge - 2),
    };
  }

  function pieceShapes({ letter, place }: PieceOnSheet): Shape[] {
    const box = {
      x: fixed(place.x * width),
      y: fixed(place.y * height),
      width: fixed(place.width * width),
      height: fixed(place.height * height),
    };
    return [
      {
        kind: "path",
        d: `M${box.x} ${box.y}h${box.width}v${box.height}h${-box.width}Z`,
        stroke: "ink",
        width: 1.5,
        dashes: [8, 5],
        name: `piece ${letter}`,
      },
      {
        kind: "text",
        text: letter,
        x: fixed(box.x + 8),
        y: fixed(box.y + letterPx + 4),
        anchor: "start",
        size: letterPx * 1.2,
        isBold: true,
        ink: "ink",
        name: `letter ${letter}`,
      },
    ];
  }

  /** Beside its mark, where no other number stands: right above it first. */
  function numberBoxes(): readonly MarkBox[] {
    const placed: MarkBox[] = [];
    for (const [place, fault] of faults.entries()) {
      const mark = markBox(fault);
      const size = {
        width: textWidth({ text: String(place + 1), size: letterPx, isBold: true }) + 6,
        height: letterPx + 4,
      };
      const tries = [
        [mark.x + mark.width + 2, mark.y - 2],
        [mark.x - size.width - 2, mark.y - 2],
        [mark.x + mark.width + 2, mark.y + mark.height - size.height],
        [mark.x - size.width - 2, mark.y + mark.height - size.height],
        [mark.x + mark.width / 2 - size.width / 2, mark.y + mark.height + 2],
        [mark.x + mark.width / 2 - size.width / 2, mark.y - size.height - 2],
      ].map(([x = 0, y = 0]) => ({ ...size, x, y }));
      const fits = tries.find((one) => inside(one) && !placed.some((other) => meet(one, other)));
      const [first = { ...size, x: 0, y: 0 }] = tries;
      const chosenOne = fits ?? {
        ...size,
        x: within(first.x, edge, width - size.width - edge),
        y: within(first.y, edge, height - size.height - edge),
      };
      placed.push(chosenOne);
    }
    return placed;
  }

  function inside(box: MarkBox): boolean {
    return box.x >= edge && box.y >= edge && box.x + box.width <= width - edge && box.y + box.height <= height - edge;
  }

  function numberShapes(place: number): Shape[] {
    const box = numbers[place];
    if (box === undefined) return [];
    return [
      {
        kind: "rect",
        x: fixed(box.x),
        y: fixed(box.y),
        width: fixed(box.width),
        height: fixed(box.height),
        fill: "paper",
        name: `ground of ${place + 1}`,
      },
      {
        kind: "text",
        text: String(place + 1),
        x: fixed(box.x + box.width / 2),
        y: fixed(box.y + box.height / 2 + letterPx * 0.35),
        anchor: "middle",
        size: letterPx,
        isBold: true,
        ink: "ink",
        name: `number ${place + 1}`,
      },
    ];
  }

  function crossShapes({ x, y }: { readonly x: number; readonly y: number }): Shape[] {
    const [a, b] = [fixed(within(x * width, 4, width - 4)), fixed(within(y * height, 4, height - 4))];
    const [gap, arm] = [6, 20];
    const d = `M${a - arm} ${b}h${arm - gap}M${a + gap} ${b}h${arm - gap}M${a} ${b - arm}v${arm - gap}M${a} ${b + gap}v${arm - gap}`;
    return [{ kind: "path", d, stroke: "hand", width: 3, name: "cross" }];
  }

  function says(): string {
    const cut = pieces.length === 0 ? "" : `, cut into ${pieces.map(({ letter }) => letter).join(", ")}`;
    const seen = faults.map((one, place) => `${place + 1} ${faultWords[one.what]}, ${placeWords(one)}`);
    const marked = seen.length === 0 ? "no fault marked" : seen.join("; ");
    return `Sheet ${code}${cut}: ${marked}.`;
  }
}

function sizeOf({ widthPx, mostHeightPx, sizeMm }: SheetDrawingInput): {
  readonly width: number;
  readonly height: number;
} {
  const high = sizeMm === undefined ? 7 / 5 : sizeMm.heightMm / sizeMm.widthMm;
  const width = Math.max(40, Math.min(widthPx, mostHeightPx / high));
  return { width: fixed(width), height: fixed(width * high) };
}

/** The edge that the light of a leak most likely came in by. */
function nearestEdge({ x, y }: FaultOnSheet): Edge {
  const far: readonly (readonly [Edge, number])[] = [
    ["left", x],
    ["right", 1 - x],
    ["top", y],
    ["bottom", 1 - y],
  ];
  return far.reduce((near, one) => (one[1] < near[1] ? one : near))[0];
}

function thicker(shape: Shape): Shape {
  if (shape.kind === "path") return { ...shape, width: shape.width * 2 };
  return shape.kind === "circle" ? { ...shape, radius: shape.radius * 1.8 } : shape;
}

function meet(a: MarkBox, b: MarkBox): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

function within(value: number, least: number, most: number): number {
  return Math.max(least, Math.min(value, Math.max(least, most)));
}

function fixed(value: number): number {
  return Number(value.toFixed(2));
}
