import { type Fault, type FaultKind, faultKinds, sheet } from "@captray/notebook/records";
import fc from "fast-check";
import { expect, test } from "vitest";
import { changeFault, crossMoved, type FaultChange, markFault } from "./faultMarking.ts";

const id = "01JA0000000000000000000001" as Fault["id"];
const noticedAt = { at: 1_764_000_000_000, offsetMin: 60 };
const mark = (what: FaultKind, at = { x: 0.5, y: 0.5 }, high = 1.4) =>
  markFault({ faults: [], what, at, id, noticedAt, high });

/** The sheet's own schema of the field: what cannot be kept is not made here. */
const keepable = (faults: readonly Fault[]) => sheet.fieldAt("faults")?.safeParse(faults).success;

test("every kind can be marked anywhere, on paper of any shape, and kept [property]", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...faultKinds),
      fc.double({ min: -1, max: 2, noNaN: true }),
      fc.double({ min: -1, max: 2, noNaN: true }),
      fc.double({ min: 0.2, max: 5, noNaN: true }),
      fc.array(
        fc.oneof(
          fc.constantFrom<FaultChange>({ do: "larger" }, { do: "smaller" }, { do: "turn" }, { do: "say", words: "" }),
          fc.record({ do: fc.constant("say" as const), words: fc.string({ maxLength: 40 }) }),
        ),
        { maxLength: 30 },
      ),
      (what, x, y, high, changes) => {
        let faults = mark(what, { x, y }, high);
        for (const change of changes) faults = changeFault({ faults, id, change, high });
        expect(keepable(faults)).toBe(true);
      },
    ),
    { seed: 20261125, numRuns: 300 },
  );
});

test("the mark has the same size in millimetres whichever way the sheet lies", () => {
  const [upright] = mark("stain", undefined, 1.4);
  const [flat] = mark("stain", undefined, 1 / 1.4);
  // 0.14 of the shorter side either way: of the width upright, of the height on its side.
  expect([upright?.width, (upright?.height ?? 0) * 1.4]).toEqual([0.14, expect.closeTo(0.14, 3)]);
  expect([(flat?.width ?? 0) * 1.4, flat?.height]).toEqual([expect.closeTo(0.14, 3), 0.14]);
});

test("turned twice it lies as before; larger and smaller undo each other", () => {
  const before = mark("scratch");
  const twice = (a: FaultChange, b: FaultChange) =>
    changeFault({ faults: changeFault({ faults: before, id, change: a, high: 1.4 }), id, change: b, high: 1.4 });
  const [was] = before;
  for (const after of [twice({ do: "turn" }, { do: "turn" }), twice({ do: "larger" }, { do: "smaller" })]) {
    expect(after[0]?.width).toBeCloseTo(was?.width ?? 0, 3);
    expect(after[0]?.height).toBeCloseTo(was?.height ?? 0, 3);
  }
  const [turned] = changeFault({ faults: before, id, change: { do: "turn" }, high: 1.4 });
  expect((turned?.height ?? 0) * 1.4).toBeCloseTo(was?.width ?? 0, 3);
});

test("words taken out leave no empty words; the other faults are the same objects", () => {
  const two = [...mark("dust"), { ...(mark("fog")[0] as Fault), id: "01JA0000000000000000000002" as Fault["id"] }];
  const said = changeFault({ faults: two, id, change: { do: "say", words: "from the slide" }, high: 1.4 });
  expect([said[0]?.words, said[1]]).toEqual(["from the slide", two[1]]);
  expect(said[1]).toBe(two[1]);
  expect(changeFault({ faults: said, id, change: { do: "say", words: "" }, high: 1.4 })[0]).toEqual(two[0]);
});

test("the cross goes by arrows, finely with Shift, and never off the sheet", () => {
  expect(crossMoved({ cross: { x: 0.5, y: 0.5 }, key: "ArrowRight", isFine: false })).toEqual({ x: 0.55, y: 0.5 });
  expect(crossMoved({ cross: { x: 0.5, y: 0.5 }, key: "ArrowUp", isFine: true })).toEqual({ x: 0.5, y: 0.49 });
  expect(crossMoved({ cross: { x: 0.99, y: 0 }, key: "ArrowRight", isFine: false })).toEqual({ x: 1, y: 0 });
  expect(crossMoved({ cross: { x: 0.5, y: 0.5 }, key: "Tab", isFine: false })).toBeUndefined();
});
