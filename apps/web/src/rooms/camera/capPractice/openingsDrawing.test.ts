import { openingsOfHand } from "@captray/notebook/answers";
import { kinds, newId, type Practised } from "@captray/notebook/records";
import { expect, test } from "vitest";
import { openingsDrawing } from "./openingsDrawing.ts";

const at = { at: 0, offsetMin: 0 };
const openings: Practised[] = [
  { wantedS: 4, givenS: 4.2, at },
  { wantedS: 2, givenS: 1.9, at },
  { wantedS: 4, givenS: 9, at, struckOut: true },
  { wantedS: 13, givenS: 13.6, at },
];
const id = newId({ now: 0, random: () => 0 });
const hand = kinds.hand.assemble(id, new Map([["capToTicks", openings as never]]));
const drawn = openingsDrawing(openingsOfHand({ hand, way: "ticks", by: "cap" }));

test("one row a wanted time, short ones first; each dot as far from the wanted line as the hand was out [positions read back]", () => {
  expect(drawn.rows.map(({ wantedS }) => wantedS)).toEqual([2, 4, 13]);
  const perS = ((drawn.marks.at(-1)?.x ?? 0) - drawn.wantedX) / Number(drawn.marks.at(-1)?.words.slice(1));
  const errorAt = (row: number, dot: number) => ((drawn.rows[row]?.dots[dot]?.x ?? 0) - drawn.wantedX) / perS;
  expect(errorAt(0, 0)).toBeCloseTo(-0.1, 9);
  expect(errorAt(1, 0)).toBeCloseTo(0.2, 9);
  expect(errorAt(2, 0)).toBeCloseTo(0.6, 9);
});

test("one struck out far away stands at the edge, marked, and does not squeeze the others", () => {
  const struck = drawn.rows[1]?.dots[1];
  expect(struck).toMatchObject({ struckOut: true, x: drawn.marks.at(-1)?.x });
});

test("brackets grow with the time, and hold their middle", () => {
  const widths = drawn.rows.map(({ bracket }) => bracket.to - bracket.from);
  expect(widths[0]).toBeLessThan(widths[2] ?? 0);
  for (const { bracket } of drawn.rows) expect((bracket.from + bracket.to) / 2).toBeCloseTo(bracket.middle, 6);
});
