import { OutOfDomain } from "@captray/science/errors";
import type { Drawing, Shape } from "../shapes/shape.ts";
import { checkLine, checkLineAcrossMm, checkLineMm } from "./checkLine.ts";
import { marginMm, type PaperName, paperSizes } from "./paperSizes.ts";

export interface TrueScalePageInput {
  readonly paper: PaperName;
  /** What is to come out true to size: lengths in mm. */
  readonly piece: Drawing;
  /** A broken line to cut along, where the paper is larger than the piece needs. */
  readonly isCut?: boolean | undefined;
}

/** The room a piece has on a paper, mm: all but the margins and the check line. */
function roomOn({ paper }: { readonly paper: PaperName }): {
  readonly widthMm: number;
  readonly heightMm: number;
} {
  const { widthMm, heightMm } = paperSizes[paper];
  const across = checkLineAcrossMm;
  return runsDown(paper)
    ? { widthMm: widthMm - 2 * marginMm - across, heightMm: heightMm - 2 * marginMm }
    : { widthMm: widthMm - 2 * cutMarginMm, heightMm: heightMm - 2 * cutMarginMm - 2 * across };
}

/**
 * A page that prints true to size: the piece, a margin that printers reach, and a line of 100 mm to measure.
 *
 * The drawing is the whole paper in mm. Printed with no margin and no fitting, 1 of it is 1 mm; whether the printer did so the line tells.
 *
 * @throws {OutOfDomain} outOfRange (the piece does not fit the paper)
 */
export function trueScalePage({ paper, piece, isCut = false }: TrueScalePageInput): Drawing {
  const size = paperSizes[paper];
  const room = roomOn({ paper });
  if (piece.width > room.widthMm + 1e-9)
    throw new OutOfDomain("outOfRange", { widthMm: piece.width, most: room.widthMm });
  if (piece.height > room.heightMm + 1e-9)
    throw new OutOfDomain("outOfRange", { heightMm: piece.height, most: room.heightMm });
  const edge = runsDown(paper) ? marginMm : cutMarginMm;
  const line = runsDown(paper)
    ? checkLine({
        xMm: size.widthMm - marginMm - checkLineAcrossMm + 1.5,
        yMm: (size.heightMm - checkLineMm) / 2,
        runs: "down",
      })
    : checkLine({ xMm: edge, yMm: size.heightMm - edge - checkLineAcrossMm, runs: "along" });
  return {
    width: size.widthMm,
    height: size.heightMm,
    shapes: [
      ...(isCut && !runsDown(paper) ? [cutRound(piece, edge)] : []),
      ...piece.shapes.map((shape) => moved(shape, edge, edge)),
      ...line,
    ],
    says: `${piece.says} On ${size.name}, with a line of 100 mm to measure.`,
  };
}

/** On large paper a piece has room to be cut out with a margin of its own. */
const cutMarginMm = 15;

/** On the smallest paper only its long side has room for 100 mm and two margins. */
function runsDown(paper: PaperName): boolean {
  return paperSizes[paper].widthMm < checkLineMm + 4 * marginMm;
}

function cutRound({ width, height }: Drawing, edge: number): Shape {
  return {
    kind: "path",
    d: `M${edge - marginMm} ${edge - marginMm}h${width + 2 * marginMm}v${height + 2 * marginMm}h${-width - 2 * marginMm}Z`,
    stroke: "ink",
    width: 0.2,
    dashes: [2, 1.5],
    name: "cut here",
  };
}

/** The same shape further right and down; the relative steps of a path stay as they are. */
function moved(shape: Shape, right: number, down: number): Shape {
  switch (shape.kind) {
    case "path":
      return { ...shape, d: shape.d.replace(/([MLHVCSQT])([^A-Za-z]*)/g, shifted) };
    case "polygon":
      return { ...shape, points: shape.points.map(([x, y]) => [x + right, y + down] as const) };
    default:
      return { ...shape, x: shape.x + right, y: shape.y + down };
  }

  function shifted(_: string, command: string, numbers: string): string {
    const by = command === "H" ? [right, right] : command === "V" ? [down, down] : [right, down];
    const places = numbers.match(/-?\d*\.?\d+/g) ?? [];
    return command + places.map((place, index) => Number(place) + (by[index % 2] ?? 0)).join(" ");
  }
}
