import type { Shape } from "../shapes/shape.ts";
import { textWidth } from "../shapes/textWidth.ts";
import type { OpenStation, Station } from "./benchTypes.ts";
import { fitName } from "./fitName.ts";
import { type Box, rimPath, rimPoint } from "./rimPath.ts";
import { codeShapes, strokesPx, trayOutline, visitStrokes } from "./trayShapes.ts";

/** The largest letters of the time in the present tray. */
const mostFigurePx = 300;
const inset = 11;
const readWider = 1.38;

/** The station of the next move: its sheets, its name, the time left, and the clock along its inner rim. */
export function openTray({
  station,
  open,
  box,
  letterPx,
}: {
  readonly station: Station;
  readonly open: OpenStation;
  readonly box: Box;
  readonly letterPx: number;
}): readonly Shape[] {
  const rim: Box = {
    x: box.x + inset,
    y: box.y + inset,
    width: box.width - 2 * inset,
    height: box.height - 2 * inset,
  };
  const midX = box.x + box.width / 2;
  const shapes: Shape[] = [
    ...visitStrokes({ visits: station.visits, midX, topY: box.y - strokesPx, widthPx: box.width }),
    {
      kind: "path",
      d: trayOutline(box),
      stroke: "ink",
      width: 3,
      dashes: station.kind === "light" ? [6, 4] : undefined,
      name: `station ${station.name}`,
    },
    { kind: "path", d: `${rimPath({ box: rim, from: 0, to: 1 })}Z`, stroke: "rule", width: 1.5 },
  ];
  const left = Math.min(1, Math.max(0, open.leftShare));
  if (left > 0) {
    shapes.push({
      kind: "path",
      d: rimPath({ box: rim, from: 1 - left, to: 1 }),
      stroke: "ink",
      width: 9,
      name: "left",
    });
  }
  for (const share of open.rockShares) shapes.push(rocking({ rim, share, isDone: share <= 1 - left }));
  if (open.liftShare !== undefined) shapes.push(...lift({ rim, share: open.liftShare, letterPx }));

  const headPx = Math.max(letterPx * 1.25, Math.min(27, box.height * 0.13));
  const innerPx = box.width - 4 * inset;
  const codes = codeShapes({
    codes: open.codes,
    x: box.x + 2 * inset - 2,
    y: box.y + 2 * inset - 2,
    size: headPx * 0.78,
    roomPx: innerPx * 0.5,
  });
  const namePx = headPx;
  const label = fitName({
    name: station.name,
    // The face of sentences is so much wider.
    size: namePx * readWider,
    widthPx: innerPx - codes.widthPx - 10,
  });
  shapes.push(...codes.shapes, {
    kind: "text",
    text: label,
    x: box.x + box.width - 2 * inset + 1,
    y: box.y + 2 * inset + headPx * 0.86,
    anchor: "end",
    size: namePx,
    isBold: true,
    isRead: true,
    ink: "ink",
    name: "name",
  });
  const topY = box.y + 2 * inset + headPx * 1.05;
  const footY = box.y + box.height - 2 * inset - (open.liftShare === undefined ? 0 : letterPx * 0.9);
  const wide = textWidth({ text: open.figure, size: 1, isBold: true });
  // Digits are seven tenths of their size high.
  const size = Math.max(letterPx, Math.min(mostFigurePx, (innerPx + 4) / wide, (footY - topY) / 0.72));
  shapes.push({
    kind: "text",
    text: open.figure,
    x: midX,
    y: (topY + footY) / 2 + size * 0.352,
    anchor: "middle",
    size,
    isBold: true,
    ink: "ink",
    name: "time",
  });
  return shapes;
}

/** A rocking: a mark across the rim, or a triangle where it is still to come. */
function rocking({
  rim,
  share,
  isDone,
}: {
  readonly rim: Box;
  readonly share: number;
  readonly isDone: boolean;
}): Shape {
  const { x, y, side } = rimPoint({ box: rim, share });
  const upright = side === "far" || side === "near";
  if (isDone) {
    const d = upright ? `M${x.toFixed(2)} ${(y - 5).toFixed(2)}v10` : `M${(x - 5).toFixed(2)} ${y.toFixed(2)}h10`;
    return { kind: "path", d, stroke: "ink", width: 3.5, name: "rocking done" };
  }
  // It points at the rim from inside.
  const inX = side === "left" ? 1 : side === "right" ? -1 : 0;
  const inY = side === "far" ? 1 : side === "near" ? -1 : 0;
  const tip = [x + 8 * inX, y + 8 * inY] as const;
  const back = [x + 19 * inX, y + 19 * inY] as const;
  const [sideX, sideY] = upright ? [6, 0] : [0, 6];
  const d = `M${tip[0].toFixed(2)} ${tip[1].toFixed(2)}L${(back[0] - sideX).toFixed(2)} ${(back[1] - sideY).toFixed(2)}L${(back[0] + sideX).toFixed(2)} ${(back[1] + sideY).toFixed(2)}z`;
  return { kind: "path", d, stroke: "ink", width: 2, name: "rocking to come" };
}

/** An arrow at the moment the sheet is lifted out to drain, with its word. */
function lift({
  rim,
  share,
  letterPx,
}: {
  readonly rim: Box;
  readonly share: number;
  readonly letterPx: number;
}): readonly Shape[] {
  const { x, y, side } = rimPoint({ box: rim, share });
  const inX = side === "left" ? 1 : side === "right" ? -1 : 0;
  const footX = x + 14 * inX;
  const footY = side === "far" ? y + 30 : side === "near" ? y + 7 : y + 8;
  const d = `M${footX.toFixed(2)} ${footY.toFixed(2)}v-24m-6 8l6 -8l6 8`;
  const arrow: Shape = { kind: "path", d, stroke: "ink", width: 3, name: "lift" };
  if (rim.height < letterPx * 7) return [arrow];
  const isRight = side === "right";
  const words: Shape = {
    kind: "text",
    text: "lift",
    x: footX + (isRight || x - rim.x > letterPx * 3 ? -11 : 11),
    y: footY - 12,
    anchor: isRight || x - rim.x > letterPx * 3 ? "end" : "start",
    size: letterPx * 1.12,
    isBold: true,
    ink: "ink",
  };
  return [arrow, words];
}
