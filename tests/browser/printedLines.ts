import { inflateSync } from "node:zlib";

/** A straight stroke of a printed page, in mm from its top left. */
export interface PrintedLine {
  readonly from: readonly [xMm: number, yMm: number];
  readonly to: readonly [xMm: number, yMm: number];
  readonly lengthMm: number;
}

export interface PrintedPage {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly lines: readonly PrintedLine[];
}

type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

const mmOfPoint = 25.4 / 72;
const asItIs: Matrix = [1, 0, 0, 1, 0, 0];

/**
 * The strokes on the pages of a PDF, measured: its own drawing operators, carried through every change of scale.
 *
 * A unit of a PDF is 1/72 inch, and its y runs upwards from the foot; `cm` is put before the matrix that holds, `q` and `Q` keep and
 * restore it (ISO 32000-1, from memory; a page of known lines, printed in the test, says whether that is right).
 */
export function printedPages({ pdf }: { readonly pdf: Buffer }): readonly PrintedPage[] {
  const text = pdf.toString("latin1");
  const boxes = [...text.matchAll(/\/MediaBox\s*\[\s*([\d.]+) ([\d.]+) ([\d.]+) ([\d.]+)\s*\]/g)];
  const drawn = [...text.matchAll(/stream\r?\n/g)].flatMap((found) => {
    if (text.slice(found.index - 3, found.index) === "end") return [];
    const from = found.index + found[0].length;
    const content = inflated(pdf.subarray(from, text.indexOf("endstream", from)));
    return content !== undefined && /^\s*(q|[-.\d ]+ cm)\s/.test(content) && content.includes(" cm") ? [content] : [];
  });
  return boxes.map((box, place) => {
    const [, left, foot, right, top] = box.map(Number) as [number, number, number, number, number];
    const lines = strokesOf(drawn[place] ?? "").map(({ from, to }) => {
      const mm = ([x, y]: readonly [number, number]) => [(x - left) * mmOfPoint, (top - y) * mmOfPoint] as const;
      const [start, end] = [mm(from), mm(to)];
      return { from: start, to: end, lengthMm: Math.hypot(end[0] - start[0], end[1] - start[1]) };
    });
    return { widthMm: (right - left) * mmOfPoint, heightMm: (top - foot) * mmOfPoint, lines };
  });
}

function inflated(bytes: Buffer): string | undefined {
  try {
    return inflateSync(bytes).toString("latin1");
  } catch {
    return undefined; // a picture, or a stream that is not packed
  }
}

function strokesOf(content: string): { from: readonly [number, number]; to: readonly [number, number] }[] {
  const found: { from: readonly [number, number]; to: readonly [number, number] }[] = [];
  const path: typeof found = [];
  const kept: Matrix[] = [];
  let matrix = asItIs;
  let numbers: number[] = [];
  let at: readonly [number, number] = [0, 0];
  let start = at;
  // Words are set between BT and ET; nothing in them draws a line.
  for (const word of content.replace(/\bBT\b[\s\S]*?\bET\b/g, " ").split(/\s+/)) {
    if (/^[-+]?(\d+\.?\d*|\.\d+)$/.test(word)) {
      numbers.push(Number(word));
      continue;
    }
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = numbers;
    if (word === "q") kept.push(matrix);
    else if (word === "Q") matrix = kept.pop() ?? asItIs;
    else if (word === "cm") matrix = product([a, b, c, d, e, f], matrix);
    else if (word === "m") at = start = placed(a, b, matrix);
    else if (word === "l") {
      const to = placed(a, b, matrix);
      path.push({ from: at, to });
      at = to;
    } else if (word === "h") path.push({ from: at, to: start });
    else if (word === "S" || word === "s") found.push(...path);
    if (/^(S|s|f|f\*|F|B|b|n)$/.test(word)) path.length = 0;
    numbers = [];
  }
  return found;
}

function product(by: Matrix, held: Matrix): Matrix {
  const [a, b, c, d, e, f] = by;
  const [A, B, C, D, E, F] = held;
  return [a * A + b * C, a * B + b * D, c * A + d * C, c * B + d * D, e * A + f * C + E, e * B + f * D + F];
}

function placed(x: number, y: number, [a, b, c, d, e, f]: Matrix): readonly [number, number] {
  return [a * x + c * y + e, b * x + d * y + f];
}
