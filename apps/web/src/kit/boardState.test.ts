import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type BoardKind, boardKeys, typeOnBoard } from "./boardState.ts";

const kinds: readonly BoardKind[] = ["time", "fNumber", "ev", "mm", "number", "several"];

describe("the number board [none: our own drawing]", () => {
  test("keys are added where the caret stands: 2|8 and 4 give 24|8", () => {
    const field = { text: "28", start: 1, end: 1 };
    expect(typeOnBoard({ field, key: { face: "4", spoken: "4" } })).toEqual({ text: "248", start: 2, end: 2 });
  });

  test("what is marked gives way", () => {
    const field = { text: "1/60", start: 2, end: 4 };
    expect(typeOnBoard({ field, key: { face: "8", spoken: "8" } }).text).toBe("1/8");
  });

  test("a suffix adds to what stands there; distant takes its place", () => {
    const field = { text: "9", start: 1, end: 1 };
    const [distant, inch] = boardKeys({ kind: "mm" });
    expect(inch && typeOnBoard({ field, key: inch }).text).toBe("9 in");
    expect(distant && typeOnBoard({ field, key: distant }).text).toBe("distant");
  });

  test("rubbing out takes back one key of one sign [property]", () => {
    fc.assert(
      fc.property(fc.string(), fc.nat(), fc.constantFrom(..."0123456789."), (text, place, sign) => {
        const at = text.length === 0 ? 0 : place % (text.length + 1);
        const field = { text, start: at, end: at };
        const typed = typeOnBoard({ field, key: { face: sign, spoken: sign } });
        expect(typeOnBoard({ field: typed, key: "rub out" })).toEqual(field);
      }),
      { seed: 30 },
    );
  });

  test("at the left end there is nothing to rub out", () => {
    const field = { text: "8", start: 0, end: 0 };
    expect(typeOnBoard({ field, key: "rub out" })).toEqual(field);
  });

  test("never more than four keys of its own: the board has room for four", () => {
    for (const kind of kinds) expect(boardKeys({ kind }).length).toBeLessThanOrEqual(4);
  });
});
