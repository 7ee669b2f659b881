import type { Drawing, Shape } from "../shapes/shape.ts";
import { textWidth } from "../shapes/textWidth.ts";

export interface FieldCardInput {
  /** Lens and stop, box, kind. */
  readonly title: string;
  /** Recipe, light, and how the meter is set: one or two lines. */
  readonly under: string;
  /** The head of the first column: what is read off the meter, over what stands at the bed. */
  readonly corner: readonly [reading: string, bed: string];
  readonly columns: readonly {
    readonly distance: string;
    readonly mark: string;
    readonly isOwn?: boolean | undefined;
  }[];
  readonly rows: readonly { readonly reading: string; readonly isOwn?: boolean | undefined }[];
  /** By row, then by column: a time as it is spoken, or a word where there is none. */
  readonly cells: readonly (readonly { readonly text: string; readonly isTime: boolean }[])[];
  /** Sentences of the foot, the weightiest first; what finds no room is left out, and `more` says so. */
  readonly foot: readonly string[];
  readonly more: string;
  /** What is to be pencilled in. */
  readonly blanks: readonly string[];
}

/** What a card takes up on A6 beside margins and check line. */
export const fieldCardMm = { width: 89, height: 138 } as const;

/** The smallest letters: their x-height is 2.4 mm in the face of all figures (0.527 of the size). */
export const fieldCardLetterMm = 4.6;

const { width, height } = fieldCardMm;
const letter = fieldCardLetterMm;
const pitch = 5.3;
const headColumn = 14;
/** To pencil in: both sides of a holder. */
const blankRows = 2;
const blankRow = 7;

/**
 * The cap times of one lens, stop, box, recipe and light on a card: the meter's reading down, the bed mark across.
 *
 * Lengths in mm. Letters are black and never smaller than the eye reads at arm's length in poor light; the reading and the mark of the
 * scene that the card was made from have a thick frame, and words stand where a cap can give no time.
 */
export function fieldCard(input: FieldCardInput): Drawing {
  const { columns, rows, cells } = input;
  const shapes: Shape[] = [];
  const text = { kind: "text", anchor: "start", size: letter, ink: "ink", x: 0 } as const;

  const titleSize = fitted(input.title, 5.8);
  shapes.push({ ...text, text: input.title, y: 4.8, size: titleSize, isBold: true, name: "title" });
  let y = 4.8;
  for (const line of wrapped(input.under, width).slice(0, 2)) {
    y += pitch;
    shapes.push({ ...text, text: line, y });
  }
  y += 1.8;
  shapes.push({ kind: "path", d: `M0 ${fixed(y)}h${width}`, stroke: "ink", width: 0.8, name: "bar" });

  const cellWidth = (width - headColumn) / Math.max(1, columns.length);
  const middle = (column: number) => headColumn + cellWidth * (column + 0.5);
  const top = y;
  const firstRow = top + 2 * pitch + 1.6;
  for (const [line, words] of input.corner.entries())
    shapes.push({ ...text, text: words, y: top + (line + 1) * pitch, size: fitted(words, letter, headColumn - 1) });
  for (const [place, { distance, mark }] of columns.entries()) {
    const at = { ...text, anchor: "middle", x: fixed(middle(place)) } as const;
    shapes.push({ ...at, text: distance, y: top + pitch, size: fitted(distance, letter, cellWidth - 0.6) });
    shapes.push({ ...at, text: mark, y: top + 2 * pitch, isBold: true, name: `mark ${distance}` });
  }

  const blanksTop = height - pitch - blankRows * blankRow;
  const rowHeight = Math.min(5.6, (blanksTop - firstRow - 4 * pitch) / Math.max(1, rows.length));
  shapes.push({
    kind: "path",
    d: `M0 ${fixed(firstRow)}h${width}`,
    stroke: "ink",
    width: 0.35,
    name: "under the heads",
  });
  for (const [row, { reading }] of rows.entries()) {
    const base = firstRow + rowHeight * (row + 0.5) + letter * 0.34;
    shapes.push({
      ...text,
      text: reading,
      y: fixed(base),
      isBold: true,
      size: fitted(reading, letter, headColumn - 1),
    });
    for (const [column, cell] of (cells[row] ?? []).entries()) {
      const name = `cell ${reading}, ${columns[column]?.distance ?? ""}`;
      const size = fitted(cell.text, letter, cellWidth - 0.6);
      shapes.push({ ...text, anchor: "middle", text: cell.text, x: fixed(middle(column)), y: fixed(base), size, name });
    }
    const under = fixed(firstRow + rowHeight * (row + 1));
    shapes.push({ kind: "path", d: `M0 ${under}h${width}`, stroke: "ink", width: 0.15 });
  }
  const lastRow = firstRow + rowHeight * rows.length;
  for (let column = 0; column < columns.length; column++) {
    const x = fixed(headColumn + cellWidth * column);
    shapes.push({ kind: "path", d: `M${x} ${fixed(top)}V${fixed(lastRow)}`, stroke: "ink", width: 0.15 });
  }
  const ownColumn = columns.findIndex(({ isOwn }) => isOwn === true);
  const ownRow = rows.findIndex(({ isOwn }) => isOwn === true);
  const frame = { kind: "rect", stroke: "ink", strokeWidth: 0.7, name: "own" } as const;
  if (ownColumn >= 0 && ownRow >= 0)
    shapes.push({
      ...frame,
      x: fixed(headColumn + cellWidth * ownColumn),
      y: fixed(firstRow + rowHeight * ownRow),
      width: fixed(cellWidth),
      height: fixed(rowHeight),
    });

  y = lastRow + 0.6;
  for (const line of footLines(input, Math.floor((blanksTop - lastRow - 1) / pitch))) {
    y += pitch;
    shapes.push({ ...text, text: line, y: fixed(y) });
  }
  const blankWidth = width / Math.max(1, input.blanks.length);
  for (const [place, words] of input.blanks.entries()) {
    const x = fixed(blankWidth * place);
    shapes.push({ ...text, text: words, x, y: fixed(blanksTop + letter * 0.8) });
    for (let row = 1; row <= blankRows; row++) {
      const d = `M${x} ${fixed(blanksTop + pitch + blankRow * row - 1)}h${fixed(blankWidth - 2)}`;
      shapes.push({ kind: "path", d, stroke: "ink", width: 0.25, name: `blank ${words}` });
    }
  }
  return { width, height, shapes, says: saysOf(input) };
}

/** The sentences that find room, whole; where one is left out, the last line says so. */
function footLines({ foot, more }: FieldCardInput, most: number): readonly string[] {
  for (let kept = foot.length; kept > 0; kept--) {
    const said = kept === foot.length ? foot : [...foot.slice(0, kept), more];
    const lines = wrapped(said.join(" "), width);
    if (lines.length <= most) return lines;
  }
  return wrapped(foot[0] ?? "", width).slice(0, Math.max(0, most));
}

function wrapped(words: string, within: number): readonly string[] {
  const lines: string[] = [];
  for (const word of words.split(" ")) {
    const longer = lines.length === 0 ? word : `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && textWidth({ text: longer, size: letter }) <= within) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/** The size asked for, or the largest smaller one that fits. */
function fitted(text: string, size: number, within: number = width): number {
  const wide = textWidth({ text, size, isBold: true });
  return wide <= within ? size : fixed((size * within) / wide);
}

function fixed(mm: number): number {
  return Number(mm.toFixed(3));
}

function saysOf({ title, under, rows, columns, cells }: FieldCardInput): string {
  const lines = rows.map(
    ({ reading }, row) =>
      `${reading}: ${(cells[row] ?? []).map(({ text }, column) => `${text} at ${columns[column]?.distance ?? ""}`).join(", ")}`,
  );
  return `Field card. ${title}. ${under}. ${lines.join(". ")}.`;
}
