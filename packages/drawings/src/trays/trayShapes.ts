import type { Shape } from "../shapes/shape.ts";
import { textWidth } from "../shapes/textWidth.ts";
import type { Station, Visit } from "./benchTypes.ts";
import { fitName } from "./fitName.ts";
import { type Box, rimPath } from "./rimPath.ts";

/** Heights over and under a tray: the strokes of its visits, and its name. */
export const strokesPx = 17;
const strokeStepPx = 10;
const mostStrokes = 9;

export function nameHeightPx(letterPx: number): number {
  return Math.round(letterPx * 1.35);
}

/** The outline of a tray: trays have round corners. */
export function trayOutline({ x, y, width, height }: Box): string {
  const r = 3;
  return `M${x + r} ${y}h${width - 2 * r}a${r} ${r} 0 0 1 ${r} ${r}v${height - 2 * r}a${r} ${r} 0 0 1 ${-r} ${r}h${-(width - 2 * r)}a${r} ${r} 0 0 1 ${-r} ${-r}v${-(height - 2 * r)}a${r} ${r} 0 0 1 ${r} ${-r}z`;
}

/** One stroke a visit: full, half, to come. More than there is room for are not drawn. */
export function visitStrokes({
  visits,
  midX,
  topY,
  widthPx,
}: {
  readonly visits: readonly Visit[];
  readonly midX: number;
  readonly topY: number;
  readonly widthPx: number;
}): readonly Shape[] {
  const shown = visits.slice(0, Math.max(1, Math.min(mostStrokes, Math.floor(widthPx / strokeStepPx))));
  const fromX = midX - ((shown.length - 1) * strokeStepPx) / 2;
  return shown.flatMap((visit, place): readonly Shape[] => {
    const x = fromX + place * strokeStepPx;
    if (visit === "done") {
      return [{ kind: "path", d: `M${x} ${topY}v12`, stroke: "ink", width: 4, name: "visit done" }];
    }
    const frame: Shape = {
      kind: "rect",
      x: x - 2.5,
      y: topY,
      width: 5,
      height: 12,
      stroke: "ink",
      strokeWidth: 1.5,
      name: visit === "now" ? "visit now" : "visit to come",
    };
    return visit === "now"
      ? [frame, { kind: "path", d: `M${x} ${topY + 6}v6`, stroke: "ink", width: 4, name: "half" }]
      : [frame];
  });
}

/** The codes of the sheets in a tray, each in a filled box, as many as there is room for; then how many more. */
export function codeShapes({
  codes,
  x,
  y,
  size,
  roomPx,
}: {
  readonly codes: readonly string[];
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly roomPx: number;
}): { readonly shapes: readonly Shape[]; readonly widthPx: number } {
  const shapes: Shape[] = [];
  let right = x;
  for (const [place, code] of codes.entries()) {
    const left = codes.length - place;
    const last = left === 1;
    const wide = textWidth({ text: code, size, isBold: true }) + size * 0.6;
    const more = `+${left}`;
    const moreWide = last ? 0 : textWidth({ text: more, size, isBold: true }) + 4;
    if (right + wide + moreWide > x + roomPx && (place > 0 || right + wide > x + roomPx)) {
      const word = place === 0 ? `${codes.length}` : more;
      shapes.push({
        kind: "text",
        text: word,
        x: right,
        y: y + size * 1.02,
        anchor: "start",
        size,
        isBold: true,
        ink: "ink",
      });
      return { shapes, widthPx: right - x + textWidth({ text: word, size, isBold: true }) };
    }
    shapes.push(
      { kind: "rect", x: right, y, width: wide, height: size * 1.34, fill: "ink", name: `sheet ${code}` },
      {
        kind: "text",
        text: code,
        x: right + wide / 2,
        y: y + size * 1.02,
        anchor: "middle",
        size,
        isBold: true,
        ink: "paper",
      },
    );
    right += wide + 5;
  }
  return { shapes, widthPx: Math.max(0, right - x - 5) };
}

/** A station drawn small: its tray, what lies in it, its strokes and its name. */
export function smallStation({
  station,
  box,
  letterPx,
}: {
  readonly station: Station;
  readonly box: Box;
  readonly letterPx: number;
}): readonly Shape[] {
  const { name, kind, visits, lying } = station;
  const midX = box.x + box.width / 2;
  const isHeld = lying !== undefined;
  const label = fitName({ name, size: letterPx, widthPx: box.width + 6, isBold: isHeld });
  const inner: Box = { x: box.x + 5, y: box.y + 5, width: box.width - 10, height: box.height - 10 };
  const shapes: Shape[] = [
    ...visitStrokes({ visits, midX, topY: box.y - strokesPx, widthPx: box.width }),
    {
      kind: "path",
      d: trayOutline(box),
      stroke: "ink",
      width: isHeld ? 3.5 : 2,
      dashes: kind === "light" ? [6, 4] : undefined,
      name: `station ${name}`,
    },
  ];
  if (kind === "light" && !isHeld) shapes.push(...lampShapes({ midX, midY: box.y + box.height / 2, most: box }));
  if (kind === "tray") {
    shapes.push({ kind: "path", d: `${rimPath({ box: inner, from: 0, to: 1 })}Z`, stroke: "rule", width: 1.2 });
  }
  if (lying !== undefined) shapes.push(...lyingShapes({ lying, box, inner, letterPx }));
  if (label !== "") {
    const y = box.y + box.height + letterPx * 1.12;
    shapes.push({
      kind: "text",
      text: label,
      x: midX,
      y,
      anchor: "middle",
      size: letterPx,
      isBold: isHeld,
      ink: "ink",
    });
  }
  return shapes;
}

function lyingShapes({
  lying,
  box,
  inner,
  letterPx,
}: {
  readonly lying: NonNullable<Station["lying"]>;
  readonly box: Box;
  readonly inner: Box;
  readonly letterPx: number;
}): readonly Shape[] {
  const { codes, figure, leftShare } = lying;
  const shapes: Shape[] = [];
  if (leftShare > 0) {
    const d = rimPath({ box: inner, from: 1 - leftShare, to: 1 });
    shapes.push({ kind: "path", d, stroke: "ink", width: 4.5, name: "left" });
  }
  const roomPx = box.width - 24;
  const size = Math.max(letterPx, Math.min(20, (box.height - 24) * 0.75));
  // The time comes first; the sheets have what is left beside it.
  const perPx = figure === undefined ? 0 : textWidth({ text: figure, size: 1, isBold: true });
  const leastPx = figure === undefined || perPx * letterPx > roomPx ? 0 : perPx * letterPx + 8;
  const y = box.y + (box.height - size * 1.34) / 2;
  const sheets = codeShapes({ codes, x: box.x + 12, y, size, roomPx: roomPx - leastPx });
  if (figure === undefined || leastPx === 0) return [...shapes, ...sheets.shapes];
  const figureSize = Math.max(letterPx, Math.min(36, box.height * 0.66, (roomPx - sheets.widthPx - 8) / perPx));
  return [
    ...shapes,
    ...sheets.shapes,
    {
      kind: "text",
      text: figure,
      x: box.x + box.width - 13,
      y: box.y + box.height / 2 + figureSize * 0.355,
      anchor: "end",
      size: figureSize,
      isBold: true,
      ink: "ink",
      name: "time",
    },
  ];
}

/** A lamp with its rays: the place of white light. */
function lampShapes({
  midX,
  midY,
  most,
}: {
  readonly midX: number;
  readonly midY: number;
  readonly most: { readonly width: number; readonly height: number };
}): readonly Shape[] {
  const by = Math.max(0.5, Math.min(most.height / 34, most.width / 60, 3));
  const p = (x: number, y: number) => `${(midX + x * by).toFixed(2)} ${(midY + y * by).toFixed(2)}`;
  const rays = `M${p(-13, -2)}L${p(-22, -2)}M${p(13, -2)}L${p(22, -2)}M${p(-10, 7)}L${p(-17, 12)}M${p(10, 7)}L${p(17, 12)}`;
  return [
    { kind: "circle", x: midX, y: midY - 2 * by, radius: 6 * by, fill: "paper", stroke: "ink", strokeWidth: 2 },
    {
      kind: "path",
      d: `M${p(-3, 5)}L${p(-3, 10)}L${p(3, 10)}L${p(3, 5)}${rays}`,
      stroke: "ink",
      width: 2,
      name: "lamp",
    },
  ];
}
