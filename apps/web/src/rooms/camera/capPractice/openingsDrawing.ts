import type { OpeningsOfHand } from "@captray/notebook/answers";

export const drawingWidth = 340;
const left = 52;
const right = 12;
const rowHeight = 34;
const head = 26;

export interface OpeningsDrawing {
  readonly height: number;
  readonly wantedX: number;
  readonly foot: number;
  readonly marks: readonly { readonly x: number; readonly words: string }[];
  readonly rows: readonly {
    readonly wantedS: number;
    readonly y: number;
    readonly dots: readonly { readonly key: number; readonly x: number; readonly struckOut: boolean }[];
    /** Where the next opening is expected, nine in ten. */
    readonly bracket: { readonly from: number; readonly to: number; readonly middle: number };
  }[];
}

/**
 * The openings about the wanted line: across, seconds too short (left) and too long (right), one row a wanted time.
 *
 * The scale takes in every opening that counts; one struck out that lies beyond stands at the edge.
 */
export function openingsDrawing({ openings, found }: Pick<OpeningsOfHand, "openings" | "found">): OpeningsDrawing {
  const times = [...new Set(openings.map(({ wantedS }) => wantedS))].sort((a, b) => a - b);
  const expected = (wantedS: number) => {
    const middle = found.biasS.value + (found.rate.value - 1) * wantedS;
    const scatterS = Math.hypot(found.motorSdS, found.weber * wantedS, found.biasS.sd, found.rate.sd * wantedS);
    return { from: middle - 1.645 * scatterS, to: middle + 1.645 * scatterS, middle };
  };
  const reach = Math.max(
    0.5,
    ...times.flatMap((wantedS) => [Math.abs(expected(wantedS).from), Math.abs(expected(wantedS).to)]),
    ...openings.filter(({ struckOut }) => !struckOut).map(({ wantedS, givenS }) => Math.abs(givenS - wantedS)),
  );
  const stepS = [0.25, 0.5, 1, 2, 5, 10].find((step) => reach / step <= 3) ?? 20;
  const reachS = Math.ceil(reach / stepS) * stepS;
  const middle = left + (drawingWidth - left - right) / 2;
  const perS = (drawingWidth - left - right) / 2 / reachS;
  const at = (errorS: number) => middle + Math.max(-reachS, Math.min(reachS, errorS)) * perS;
  const marks = [];
  for (let n = -Math.round(reachS / stepS); n <= Math.round(reachS / stepS); n++) {
    marks.push({ x: at(n * stepS), words: n === 0 ? "wanted" : signed(n * stepS) });
  }
  return {
    height: head + times.length * rowHeight + 8,
    wantedX: middle,
    foot: head + times.length * rowHeight,
    marks,
    rows: times.map((wantedS, row) => {
      const { from, to, middle: where } = expected(wantedS);
      return {
        wantedS,
        y: head + (row + 0.5) * rowHeight,
        dots: openings.flatMap((one, key) =>
          one.wantedS === wantedS ? [{ key, x: at(one.givenS - wantedS), struckOut: one.struckOut === true }] : [],
        ),
        bracket: { from: at(from), to: at(to), middle: at(where) },
      };
    }),
  };
}

function signed(seconds: number): string {
  const size = Number(Math.abs(seconds).toFixed(2));
  return `${seconds < 0 ? "−" : "+"}${size}`;
}
