import { cutSheet } from "@captray/notebook/answers";
import { type Json, type Sheet, sheet as sheetRecord } from "@captray/notebook/records";
import { expect, test } from "vitest";
import { canBeWhole, cutOf, cutRefused, firstCut, piecesView } from "./piecesView.ts";

const at = (hour: number) => ({ at: Date.UTC(2025, 11, 1, hour), offsetMin: 0 });
const nowMs = Date.UTC(2025, 11, 2);
const whole: Record<string, Json> = { code: "W36", exposedAt: at(14) };
const sheet = (fields: Record<string, Json> = {}): Sheet =>
  sheetRecord.assemble("01JA0000000000000000000001", new Map(Object.entries({ ...whole, ...fields })));
const cut = (choice: Partial<typeof firstCut>, of = sheet()) =>
  cutSheet({ sheet: of, cut: cutOf({ ...firstCut, ...choice }) });
const piecesIn = (made: ReturnType<typeof cut>): Json => {
  if (made.kind !== "cut") throw new Error(made.kind);
  return made.sets[0]?.set.pieces ?? null;
};

test("a sheet in quarters: a row each, where it lay, and into the trays next", () => {
  const rows = piecesView({ sheet: sheet({ pieces: piecesIn(cut({ how: "quarters" })) }), nowMs });
  expect(rows.map(({ code, what, state }) => [code, what, state])).toEqual([
    ["W36a", "quarter, upper left", "exposed"],
    ["W36b", "quarter, upper right", "exposed"],
    ["W36c", "quarter, lower left", "exposed"],
    ["W36d", "quarter, lower right", "exposed"],
  ]);
  expect(rows[0]?.next.map(({ word }) => word)).toEqual(["In the trays", "Discarded"]);
});

test("control patches are called by what they tell", () => {
  const made = cut({ how: "patches", edge: "left", patches: ["black", "bleachOnly"] });
  expect(piecesView({ sheet: sheet({ pieces: piecesIn(made) }), nowMs }).map(({ what }) => what)).toEqual([
    "control patch, black, upper left edge",
    "control patch, bleached only, lower left edge",
  ]);
});

test("a piece that hangs: its dates, and what can come", () => {
  const [a] = piecesIn(cut({ how: "halves", along: "down" })) as { readonly letter: string }[];
  const pieces = [{ ...a, inProcessAt: at(19), dryingAt: at(20) }] as unknown as Json;
  const [row] = piecesView({ sheet: sheet({ pieces }), nowMs });
  expect(row?.dates.map(({ word, when }) => `${word} ${when}`)).toEqual([
    "In the trays 1 Dec, 19:00",
    "Drying 1 Dec, 20:00",
  ]);
  expect([row?.state, row?.next.map(({ word }) => word)]).toEqual([
    "drying",
    ["Taken down, dry", "Measured", "Kept", "Discarded"],
  ]);
  expect(canBeWhole({ sheet: sheet({ pieces }) })).toBe(false);
  expect(canBeWhole({ sheet: sheet({ pieces: [a] as unknown as Json }) })).toBe(true);
  expect(canBeWhole({ sheet: sheet() })).toBe(false);
});

test("a cut that cannot be made has its sentence", () => {
  const inQuarters = sheet({ pieces: piecesIn(cut({ how: "quarters" })) });
  expect(cutRefused({ made: cut({ how: "halves" }, inQuarters) })).toBe(
    "It is in pieces already: only control patches can still be cut off the rest.",
  );
  expect(cutRefused({ made: cut({ how: "strips", count: 0 }) })).toBe("One piece at least, and 26 at most.");
  expect(cutRefused({ made: cut({ how: "patches", patches: [] }) })).toBe("One piece at least, and 26 at most.");
  expect(cutRefused({ made: cut({ how: "quarters" }) })).toBeUndefined();
});
