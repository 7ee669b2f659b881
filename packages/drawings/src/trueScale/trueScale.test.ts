import { describe, expect, test } from "vitest";
import type { Drawing, Shape, TextShape } from "../shapes/shape.ts";
import { textWidth } from "../shapes/textWidth.ts";
import { fieldCard, fieldCardLetterMm, fieldCardMm } from "./fieldCard.ts";
import { paperSizes } from "./paperSizes.ts";
import { cardInput, trueScaleCases } from "./testing.ts";
import { trueScalePage } from "./trueScalePage.ts";

const papers = ["a6", "a4", "letter"] as const;
const card = fieldCard(cardInput);

function shapesOf<K extends Shape["kind"]>(drawing: Drawing, kind: K): readonly Extract<Shape, { kind: K }>[] {
  return drawing.shapes.filter((shape): shape is Extract<Shape, { kind: K }> => shape.kind === kind);
}

/** How far a word reaches to the left and the right. */
function reach({ text, x, size, anchor, isBold }: TextShape): readonly [from: number, to: number] {
  const width = textWidth({ text, size, isBold });
  const from = anchor === "start" ? x : anchor === "middle" ? x - width / 2 : x - width;
  return [from, from + width];
}

describe("a page true to size", () => {
  test.each([
    ["a6", 105, 148],
    ["a4", 210, 297],
    ["letter", 215.9, 279.4],
  ] as const)(
    "%s is %d by %d mm [ISO 216 sizes as they are sold; Letter 8½ by 11 in: common practice]",
    (paper, widthMm, heightMm) => {
      const page = trueScalePage({ paper, piece: card });
      expect([page.width, page.height]).toEqual([widthMm, heightMm]);
      expect(paperSizes[paper]).toMatchObject({ widthMm, heightMm });
    },
  );

  test.each(papers)("on %s the check line is 100 mm, and nothing lies nearer than 5 mm to an edge", (paper) => {
    const page = trueScalePage({ paper, piece: card, isCut: true });
    const line = shapesOf(page, "path").find(({ name }) => name === "check line");
    expect(line?.d).toMatch(/[hv]100$/);
    for (const { d } of shapesOf(page, "path")) {
      const [, x, y, way, by] = /^M([\d.]+) ([\d.]+)(?:([hv])([\d.]+)$)?/.exec(d) ?? [];
      const [right, low] = [Number(x) + (way === "h" ? Number(by) : 0), Number(y) + (way === "v" ? Number(by) : 0)];
      expect(Math.min(Number(x), Number(y), page.width - right, page.height - low)).toBeGreaterThanOrEqual(5 - 1e-9);
    }
    for (const text of shapesOf(page, "text")) {
      const [from, to] = text.turnDeg === undefined ? reach(text) : [text.x, text.x];
      expect(from).toBeGreaterThanOrEqual(5 - 1e-9);
      expect(to).toBeLessThanOrEqual(page.width - 5 + 1e-9);
    }
    expect(
      page.shapes.some((shape) => shape.kind === "text" && shape.text.includes("print at 100 %, without fitting")),
    ).toBe(true);
  });

  test("a piece keeps its lengths wherever it is laid [property]", () => {
    const piece: Drawing = {
      width: 40,
      height: 30,
      says: "A square.",
      shapes: [
        { kind: "path", d: "M1 2H31V22L1 22Z", stroke: "ink", width: 0.2, name: "square" },
        { kind: "path", d: "M1.5 2.5h-1v3", stroke: "ink", width: 0.2, name: "steps" },
        {
          kind: "polygon",
          points: [
            [0, 0],
            [3, 4],
          ],
          fill: "ink",
        },
      ],
    };
    const page = trueScalePage({ paper: "a4", piece });
    expect(page.shapes.map((shape) => (shape.kind === "path" ? shape.d : "")).slice(0, 2)).toEqual([
      "M16 17H46V37L16 37Z",
      "M16.5 17.5h-1v3",
    ]);
    expect(shapesOf(page, "polygon")[0]?.points).toEqual([
      [15, 15],
      [18, 19],
    ]);
  });

  test("a piece that the paper has no room for is refused with the room there is", () => {
    const wide = { ...card, width: 95 };
    expect(() => trueScalePage({ paper: "a6", piece: wide })).toThrow(expect.objectContaining({ code: "outOfRange" }));
    expect(() => trueScalePage({ paper: "a4", piece: { ...wide, height: 290 } })).toThrow();
    expect(trueScalePage({ paper: "letter", piece: wide }).width).toBe(215.9);
  });
});

describe("the field card", () => {
  test("every letter of it has an x-height of 2.4 mm or more, 0.527 of its size [face's own table, as measured]", () => {
    const sizes = shapesOf(card, "text").map(({ size, text }) => [text, size * 0.527] as const);
    expect(sizes.filter(([, xHeight]) => xHeight < 2.4)).toEqual([]);
    expect(fieldCardLetterMm * 0.527).toBeGreaterThan(2.4);
  });

  test("each time stands in the cell of its reading and its mark, and no word reaches into the next", () => {
    const step = (fieldCardMm.width - 14) / cardInput.columns.length;
    for (const [row, { reading }] of cardInput.rows.entries()) {
      for (const [column, { distance }] of cardInput.columns.entries()) {
        const cell = shapesOf(card, "text").find(({ name }) => name === `cell ${reading}, ${distance}`);
        expect(cell?.text).toBe(cardInput.cells[row]?.[column]?.text);
        const [from, to] = cell === undefined ? [0, 0] : reach(cell);
        expect(from).toBeGreaterThanOrEqual(14 + step * column);
        expect(to).toBeLessThanOrEqual(14 + step * (column + 1));
      }
    }
    const rowsY = cardInput.rows.map(
      ({ reading }) => shapesOf(card, "text").find(({ name }) => name?.startsWith(`cell ${reading},`))?.y ?? 0,
    );
    expect(rowsY).toEqual(rowsY.toSorted((a, b) => a - b));
  });

  test("the reading and the mark it was made from have the thick frame", () => {
    const [own] = shapesOf(card, "rect");
    const cell = shapesOf(card, "text").find(({ name }) => name === "cell 1/15, 1.37 m");
    expect(own?.x).toBeLessThan(cell?.x ?? 0);
    expect((own?.x ?? 0) + (own?.width ?? 0)).toBeGreaterThan(cell?.x ?? 0);
    expect((own?.y ?? 0) + (own?.height ?? 0)).toBeGreaterThan(cell?.y ?? 0);
  });

  test("nothing runs over another line: base lines of the foot stay above the blanks, and all of it on the card", () => {
    for (const shape of shapesOf(card, "text")) {
      expect(shape.y).toBeLessThan(fieldCardMm.height);
      expect(reach(shape)[1]).toBeLessThanOrEqual(fieldCardMm.width + 1e-9);
    }
  });

  test("a foot too long for it says where the rest is; an empty one, one row and one column are still a card", () => {
    const long = fieldCard({
      ...cardInput,
      foot: Array.from({ length: 30 }, (_, n) => `Sentence number ${n} of a long foot.`),
    });
    expect(shapesOf(long, "text").some(({ text }) => text.includes(cardInput.more.split(" ")[0] ?? ""))).toBe(true);
    for (const drawing of [trueScaleCases["field-card-a6"], trueScaleCases["field-card-a4"]]) {
      expect(JSON.stringify(drawing)).not.toMatch(/null|NaN/);
    }
    const bare = fieldCard({ ...cardInput, foot: [], blanks: [], rows: [], cells: [], columns: [] });
    expect(JSON.stringify(bare)).not.toMatch(/null|NaN/);
  });
});
