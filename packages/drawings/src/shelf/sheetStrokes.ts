import type { Drawing, Shape } from "../shapes/shape.ts";

export interface SheetStrokesInput {
  readonly widthPx: number;
  readonly left: number;
  /** As the box was bought; the sheets used are short strokes. */
  readonly full?: number | undefined;
}

const most = 250;
const stepPx = 13.2;
/** Between one five and the next. */
const morePx = 5.5;
const rowPx = 34;
const inset = 4;

/** What is in a box, one stroke a sheet, in fives: those left tall and thick, those used short and thin. */
export function sheetStrokes({ widthPx, left, full }: SheetStrokesInput): Drawing {
  const all = Math.min(most, Math.max(left, full ?? 0));
  const fivePx = 5 * stepPx + morePx;
  const fivesARow = Math.max(1, Math.floor((widthPx - 2 * inset + stepPx + morePx) / fivePx));
  // A row holds whole fives; a narrow page has more rows.
  const perRow = 5 * fivesARow;
  const shapes = Array.from({ length: all }, (_, place): Shape => {
    const inRow = place % perRow;
    const x = Number((inset + inRow * stepPx + Math.floor(inRow / 5) * morePx).toFixed(2));
    const y = Math.floor(place / perRow) * rowPx;
    return place < left
      ? { kind: "path", d: `M${x} ${y + 4}v26`, stroke: "ink", width: 4, name: "left" }
      : { kind: "path", d: `M${x} ${y + 22}v8`, stroke: "ink", width: 1.5, name: "used" };
  });
  const rows = Math.max(1, Math.ceil(all / perRow));
  const count = `${left} ${left === 1 ? "sheet" : "sheets"}`;
  return {
    width: widthPx,
    height: rows * rowPx,
    shapes,
    says: full === undefined ? count : `${left} of ${Math.max(full, left)} sheets left`,
  };
}
