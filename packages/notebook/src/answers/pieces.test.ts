import { describe, expect, test } from "vitest";
import { checkSet, type FieldSet, type Json, type Sheet, sheet as sheetRecord, sheetState } from "../records/index.ts";
import { cutSheet, type SheetCut } from "./cutSheet.ts";
import { faultsOf } from "./faultsOf.ts";
import { at, sheetOf } from "./holdersTesting.ts";
import { pieceSets } from "./pieceSets.ts";
import { piecesOf } from "./piecesOf.ts";
import { idNumber } from "./testing.ts";

const exposed = { loadedAt: at(1), exposedAt: at(10) };

/** The sheet after these sets, as the journal would build it. */
function withSets(sheet: Sheet, sets: readonly { readonly set: FieldSet }[]): Sheet {
  const { id, kind: _, openings: __, mishaps: ___, ...fields } = sheet;
  const held: Record<string, Json> = { ...(fields as Record<string, Json>) };
  for (const { set } of sets) {
    expect(checkSet(sheetRecord, set)).toBe(true);
    Object.assign(held, set);
  }
  return sheetRecord.assemble(id, new Map(Object.entries(held)));
}

function cut(how: SheetCut, sheet = sheetOf(36, exposed)): Sheet {
  const made = cutSheet({ sheet, cut: how });
  if (made.kind !== "cut") throw new Error(made.kind);
  return withSets(sheet, made.sets);
}

describe("a sheet cut up", () => {
  test("quarters a to d cover the sheet, each with the exposure of the sheet and a state of its own", () => {
    const sheet = cut({ how: "quarters" });
    const pieces = piecesOf({ sheet });
    expect(pieces.map(({ code, state }) => [code, state])).toEqual([
      ["W36a", "exposed"],
      ["W36b", "exposed"],
      ["W36c", "exposed"],
      ["W36d", "exposed"],
    ]);
    expect(pieces.reduce((sum, { piece: { place } }) => sum + place.width * place.height, 0)).toBeCloseTo(1, 12);
  });

  test("strips lie side by side or one under the other", () => {
    const places = (along: "across" | "down") =>
      piecesOf({ sheet: cut({ how: "strips", along, count: 4 }) }).map(({ piece: { place } }) => [place.x, place.y]);
    expect(places("across")).toEqual([
      [0, 0],
      [0.25, 0],
      [0.5, 0],
      [0.75, 0],
    ]);
    expect(places("down").map(([x, y]) => [y, x])).toEqual(places("across"));
  });

  test("control patches come off an edge, also of a sheet in quarters, with the letters that are left", () => {
    const sheet = cut({ how: "patches", edge: "bottom", patches: ["black", "bleachOnly"] }, cut({ how: "quarters" }));
    const patches = piecesOf({ sheet }).slice(4);
    expect(patches.map(({ code, piece }) => [code, piece.patch, piece.place.x])).toEqual([
      ["W36e", "black", 0],
      ["W36f", "bleachOnly", 0.5],
    ]);
    for (const { piece } of patches) expect(piece.place.y + piece.place.height).toBeCloseTo(1, 12);
  });

  test("cut after the trays, a piece has been where its sheet was; before them it has its own way", () => {
    const hung = cut(
      { how: "halves", along: "down" },
      sheetOf(39, { ...exposed, inProcessAt: at(20), dryingAt: at(40) }),
    );
    expect(piecesOf({ sheet: hung }).map(({ state }) => state)).toEqual(["drying", "drying"]);
    const [a] = piecesOf({ sheet: cut({ how: "halves", along: "down" }) });
    expect(a?.piece.inProcessAt).toBeUndefined();
  });

  test("a sheet in pieces is not cut again, and no cut asks for more letters than there are", () => {
    const sheet = cut({ how: "quarters" });
    expect(cutSheet({ sheet, cut: { how: "halves", along: "down" } })).toEqual({ kind: "alreadyCut" });
    const whole = sheetOf(37, exposed);
    for (const count of [0, -3, Number.NaN, 27, 1e9]) {
      expect(cutSheet({ sheet: whole, cut: { how: "strips", along: "down", count } })).toEqual({
        kind: "tooMany",
        most: 26,
      });
    }
    expect(piecesOf({ sheet: whole })).toEqual([]);
  });
});

describe("a piece goes its own way", () => {
  const go = (sheet: Sheet, letter: string, step: Parameters<typeof pieceSets>[0]["step"], minute: number | null) =>
    withSets(sheet, pieceSets({ sheet, letter, step, at: minute === null ? null : at(minute) }));

  test("the sheet is in the trays with its first piece, and dry, measured, kept with its last", () => {
    let sheet = cut({ how: "halves", along: "across" });
    sheet = go(sheet, "a", "inProcessAt", 20);
    expect([sheetState(sheet), ...piecesOf({ sheet }).map(({ state }) => state)]).toEqual([
      "inProcess",
      "inProcess",
      "exposed",
    ]);
    sheet = go(sheet, "b", "inProcessAt", 25);
    expect(sheet.inProcessAt).toEqual(at(20));
    sheet = go(go(sheet, "a", "dryingAt", 40), "b", "dryingAt", 45);
    sheet = go(sheet, "a", "takenDownAt", 80);
    expect(sheetState(sheet)).toBe("drying");
    sheet = go(sheet, "b", "takenDownAt", 90);
    expect([sheetState(sheet), sheet.takenDownAt]).toEqual(["dry", at(90)]);
    sheet = go(sheet, "a", "measuredAt", 100);
    expect(sheetState(sheet)).toBe("dry");
    sheet = go(go(sheet, "b", "discardedAt", 110), "a", "keptAt", 120);
    expect([sheetState(sheet), ...piecesOf({ sheet }).map(({ state }) => state)]).toEqual([
      "kept",
      "kept",
      "discarded",
    ]);
  });

  test("a date taken back takes the sheet's with it, unless the sheet had one of its own", () => {
    let sheet = go(cut({ how: "halves", along: "across" }), "a", "inProcessAt", 20);
    sheet = go(sheet, "a", "inProcessAt", null);
    expect(sheetState(sheet)).toBe("exposed");
    const own = cut({ how: "halves", along: "across" }, sheetOf(38, { ...exposed, inProcessAt: at(15) }));
    expect(go(go(own, "a", "inProcessAt", 20), "a", "inProcessAt", null).inProcessAt).toEqual(at(15));
  });

  test("a letter that is not there sets nothing", () => {
    const sheet = cut({ how: "quarters" });
    expect(pieceSets({ sheet, letter: "q", step: "dryingAt", at: at(5) })).toEqual([]);
  });
});

test("a fault belongs to the piece its middle lies on, the smaller of two", () => {
  const fault = (n: number, x: number, y: number): Json => ({
    id: idNumber(n),
    what: "stain",
    x,
    y,
    width: 0.1,
    height: 0.1,
    noticedAt: at(50),
  });
  const base = sheetOf(36, { ...exposed, faults: [fault(70, 0.2, 0.2), fault(71, 0.7, 0.95), fault(72, 0.7, 0.6)] });
  const sheet = cut({ how: "patches", edge: "bottom", patches: ["black"] }, cut({ how: "quarters" }, base));
  expect(faultsOf({ sheet }).map(({ letter }) => letter)).toEqual(["a", "e", "d"]);
  expect(piecesOf({ sheet }).map(({ faults }) => faults.length)).toEqual([1, 0, 0, 1, 1]);
  expect(faultsOf({ sheet: base }).map(({ letter }) => letter)).toEqual([undefined, undefined, undefined]);
});
