import { expect, test } from "vitest";
import marks from "../../fixtures/notation/f-number-marks.json" with { type: "json" };
import texts from "../../fixtures/notation/f-numbers.json" with { type: "json" };
import unreadable from "../../fixtures/notation/unreadable.json" with { type: "json" };
import { markOfFNumber } from "./markOfFNumber.ts";
import { parseFNumber } from "./parseFNumber.ts";

test.each(texts)("$text is $fNumber, marked: $marked [iso-517 second hand; by hand]", ({ text, fNumber, marked }) => {
  const read = markOfFNumber({ text });
  // The table prints eight figures.
  expect(read.fNumber / fNumber).toBeCloseTo(1, 7);
  expect(read.marked).toBe(marked);
  expect(parseFNumber({ text })).toBe(read.fNumber);
});

test("the rings of full, third and half stops step evenly [iso-517 second hand]", () => {
  for (const [ring, perStop] of [[marks.full, 1] as const, [marks.thirds, 3] as const, [marks.halves, 2] as const]) {
    ring.forEach((mark, index) => {
      if (perStop === 2 && marks.readInThirds.includes(mark)) return;
      const stops = 2 * Math.log2(parseFNumber({ text: `f/${mark}` }));
      expect(stops * perStop).toBeCloseTo(index, 9);
    });
  }
});

test("each mark of third stops means the exact number of a published list [nominal-and-exact]", () => {
  expect(marks.thirds.length).toBe(marks.exactThirds.length);
  marks.thirds.forEach((mark, index) => {
    // The list prints two decimals.
    expect(Math.abs(parseFNumber({ text: `f/${mark}` }) - (marks.exactThirds[index] ?? 0))).toBeLessThan(0.0051);
  });
});

test("1.2 and 13, marks of two series, are read as thirds [by hand]", () => {
  expect(parseFNumber({ text: "1.2" })).toBeCloseTo(2 ** (1 / 3), 12);
  expect(parseFNumber({ text: "13" })).toBeCloseTo(2 ** (11 / 3), 12);
});

test("22 taken as marked and not as 22: 0.081136763 stop [by hand]", () => {
  expect(2 * Math.log2(parseFNumber({ text: "f/22" }) / 22)).toBeCloseTo(0.081136763, 8);
});

test.each(unreadable.fNumbers)("$text cannot be read from sign $at [grammar by hand]", ({ text, at }) => {
  expect(() => parseFNumber({ text })).toThrow(
    expect.objectContaining({ code: "unreadable", key: "text", facts: expect.objectContaining({ text, at }) }),
  );
});
