import fc from "fast-check";
import { expect, test } from "vitest";
import { formatWords } from "./formatWords.ts";
import { readFormat } from "./readFormat.ts";

test.each([
  ["13 × 18", 130, 180],
  ["13x18 cm", 130, 180],
  ["130 x 180 mm", 130, 180],
  ["130*180", 130, 180],
  ["9 × 12 cm", 90, 120],
  // The inch of 1959 is 25.4 mm by definition [common practice, no source].
  ["5x7 in", 127, 177.8],
  ["8,5 x 11 in", 215.9, 279.4],
])("%s is %d by %d mm", (text, widthMm, heightMm) => {
  expect(readFormat({ text }).format).toEqual({ widthMm, heightMm });
});

test.each(["13", "13 ×", "x 18", "big", "0 × 18", "13 × 18 × 2", "9000 × 12 cm"])(
  "“%s” is no format, and the answer says what one looks like",
  (text) => {
    const answer = readFormat({ text });
    expect(answer.kind).toBe("unreadable");
    expect(answer.kind === "unreadable" ? answer.message : "").toMatch(/×|between/);
  },
);

test("what is written is read again [property]", () => {
  const side = fc.integer({ min: 20, max: 1200 });
  fc.assert(
    fc.property(side, side, (widthMm, heightMm) => {
      const format = { widthMm, heightMm };
      expect(readFormat({ text: formatWords({ format }) }).format).toEqual(format);
    }),
    { seed: 33 },
  );
});
