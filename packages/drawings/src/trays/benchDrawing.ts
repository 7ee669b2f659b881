import type { Drawing, Shape } from "../shapes/shape.ts";
import { textWidth } from "../shapes/textWidth.ts";
import { type BenchRow, type BenchRows, benchRows } from "./benchRows.ts";
import type { BenchInput, Station } from "./benchTypes.ts";
import { openTray } from "./openTray.ts";
import type { Box } from "./rimPath.ts";
import { nameHeightPx, smallStation, strokesPx } from "./trayShapes.ts";

const gapPx = 7;
const rowGapPx = 4;
const leastOpenPx = 120;
const wantedOpenPx = 180;
const mostOpenPx = 460;
/** A small tray with a sheet in it, and one without; the light and a long name want more. */
const heldPx = 54;
const emptyPx = 36;
const narrowPx = 34;

/**
 * The bench in plan: a tray a station in the order the hand walks, the bleach round under one bracket, the row of the next
 * move open. It is no picture of a certain bench and has no scale; its clock, the inner rim of the large tray, is true.
 */
export function benchDrawing({ widthPx, heightPx, letterPx, stations, roundWords, open, says }: BenchInput): Drawing {
  const takesWhole = open !== undefined && (open.figure.length > 4 || widthPx < 330 || letterPx > 22);
  const all = benchRows({ stations, openId: open?.id, takesWhole });
  const bracketPx = Math.round(letterPx * 1.5) + 4;
  const wordsPx = nameHeightPx(letterPx);
  const bodyOf = (row: BenchRow) => (row.stations.some(({ lying }) => lying !== undefined) ? heldPx : emptyPx);
  const fixedOf = ({ rows, before, after }: BenchRows) =>
    rows.reduce(
      (sum, row) => sum + strokesPx + wordsPx + rowGapPx + (row.open === undefined ? bodyOf(row) : 0),
      (rows.some(({ isRound }) => isRound) ? bracketPx : 0) + (before > 0 ? wordsPx : 0) + (after > 0 ? wordsPx : 0),
    );
  // Where the time would grow too small to read from afar, empty rows far from it are left out.
  let shown = all;
  while (open !== undefined && heightPx - fixedOf(shown) < wantedOpenPx) {
    const fewer = withoutFarthest(shown);
    if (fewer === undefined) break;
    shown = fewer;
  }
  const { rows, before, after } = shown;
  const firstOfRound = rows.findIndex(({ isRound }) => isRound);
  const openPx = Math.min(mostOpenPx, Math.max(leastOpenPx, heightPx - fixedOf(shown)));

  const shapes: Shape[] = [];
  let y = 0;
  if (before > 0) {
    shapes.push(more({ text: `${before} before`, x: 0, y: y + letterPx, letterPx, anchor: "start" }));
    y += wordsPx;
  }
  for (const [place, row] of rows.entries()) {
    if (place === firstOfRound) {
      shapes.push(...bracket({ y, widthPx, letterPx, words: roundWords ?? "bleach round" }));
      y += bracketPx;
    }
    y += strokesPx;
    const height = row.open === undefined ? bodyOf(row) : openPx;
    for (const { station, box } of placed({ row, widthPx, y, height, letterPx })) {
      shapes.push(
        ...(open !== undefined && station.id === row.open?.id
          ? openTray({ station, open, box, letterPx })
          : smallStation({ station, box, letterPx })),
      );
    }
    y += height + wordsPx + rowGapPx;
  }
  if (after > 0) {
    shapes.push(more({ text: `${after} more`, x: widthPx, y: y + letterPx * 0.8, letterPx, anchor: "end" }));
    y += wordsPx;
  }
  return { width: widthPx, height: Math.max(1, y), shapes, says };
}

/** The same without the empty row that lies farthest from the open one; nothing where there is none to spare. */
function withoutFarthest({ rows, before, after }: BenchRows): BenchRows | undefined {
  const at = rows.findIndex(({ open }) => open !== undefined);
  const spare = rows
    .map((row, place) => ({ row, place, far: Math.abs(place - at) }))
    .filter(({ row }) => row.open === undefined && row.stations.every(({ lying }) => lying === undefined))
    .sort((a, b) => b.far - a.far)[0];
  if (spare === undefined || at < 0) return undefined;
  const count = spare.row.stations.length;
  return {
    rows: rows.filter((row) => row !== spare.row),
    before: before + (spare.place < at ? count : 0),
    after: after + (spare.place > at ? count : 0),
  };
}

/** The stations of a row beside each other: in an open row the others stand upright and narrow. */
function placed({
  row,
  widthPx,
  y,
  height,
  letterPx,
}: {
  readonly row: BenchRow;
  readonly widthPx: number;
  readonly y: number;
  readonly height: number;
  readonly letterPx: number;
}): readonly { readonly station: Station; readonly box: Box }[] {
  const edge = 2;
  const roomPx = widthPx - 2 * edge - gapPx * (row.stations.length - 1);
  const narrow = Math.max(narrowPx, Math.min(90, widthPx * 0.09));
  const weights = row.stations.map((station) => {
    if (row.open !== undefined) return station.id === row.open.id ? undefined : narrow;
    const words = textWidth({ text: station.name, size: letterPx }) + 4;
    return station.lying === undefined ? Math.min(150, Math.max(46, words)) : 190;
  });
  const given = weights.reduce<number>((sum, weight) => sum + (weight ?? 0), 0);
  const by = row.open === undefined ? roomPx / given : 1;
  let x = edge;
  return row.stations.map((station, place) => {
    const weight = weights[place];
    const width = weight === undefined ? roomPx - given : weight * by;
    const box = { x, y, width: Number(width.toFixed(2)), height };
    x = Number((x + width + gapPx).toFixed(2));
    return { station, box };
  });
}

function bracket({
  y,
  widthPx,
  letterPx,
  words,
}: {
  readonly y: number;
  readonly widthPx: number;
  readonly letterPx: number;
  readonly words: string;
}): readonly Shape[] {
  const size = letterPx * 1.18;
  const midX = widthPx / 2;
  const half = textWidth({ text: words, size, isBold: true }) / 2 + 10;
  const lineY = y + letterPx * 0.8;
  const d = `M2 ${lineY + 12}V${lineY}H${(midX - half).toFixed(2)}M${(midX + half).toFixed(2)} ${lineY}H${widthPx - 2}V${lineY + 12}`;
  return [
    { kind: "path", d, stroke: "ink", width: 2, name: "round" },
    { kind: "text", text: words, x: midX, y: lineY + size * 0.35, anchor: "middle", size, isBold: true, ink: "ink" },
  ];
}

function more({
  text,
  x,
  y,
  letterPx,
  anchor,
}: {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly letterPx: number;
  readonly anchor: "start" | "end";
}): Shape {
  return { kind: "text", text, x, y, anchor, size: letterPx, ink: "soft" };
}
