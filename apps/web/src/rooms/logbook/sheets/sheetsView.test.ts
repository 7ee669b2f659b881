import type { SheetCard } from "@captray/notebook/journal";
import { type AnyRecord, kinds, newId, type RecordId } from "@captray/notebook/records";
import { describe, expect, test } from "vitest";
import { sheetsView } from "./sheetsView.ts";

const noon = Date.UTC(2026, 11, 1, 12);
let made = 0;
const id = (): RecordId => newId({ now: noon + made++, random: () => 0.5 });
const sceneId = id();
const boxId = id();
const records = new Map<string, AnyRecord>([
  [sceneId, kinds.scene.assemble(sceneId, new Map([["subject", "jug by the upturned skiff"]]))],
  [boxId, kinds.paperBox.assemble(boxId, new Map([["name", "box C"]]))],
]);

const card = (given: Partial<SheetCard>): SheetCard => ({
  id: id(),
  code: "W31",
  state: "exposed",
  dates: { exposedAt: { at: noon, offsetMin: 60 } },
  mishaps: [],
  links: {},
  searchText: "w31",
  ...given,
});

const jug = card({ code: "W31", searchText: "w31 jug skiff", links: { sceneId }, givenS: 13.6, result: "positive" });
const rope = card({
  code: "W32",
  searchText: "w32 rope",
  state: "blank",
  dates: {},
  plannedS: 9,
  links: { paperBoxId: boxId },
  result: "negative",
});
const door = card({ code: "W30", searchText: "w30 shed door", state: "kept", mishaps: ["knocked"], givenS: 13 });
const cards = [rope, jug, door];
const found = (words: string) =>
  sheetsView({ cards, words, most: 50, peek: (one) => records.get(one), nowMs: noon }).rows.map(({ code }) => code);

describe("sheetsView", () => {
  test("a line says what it was for, when, its state, what went wrong and what was given", () => {
    const { rows, all } = sheetsView({ cards, words: "", most: 50, peek: (one) => records.get(one), nowMs: noon });
    expect(all).toBe(3);
    expect(rows.map(({ what, more, time, given }) => ({ what, more, time, given }))).toEqual([
      { what: "paper negative, box C", more: "blank, laid out", time: "plan 9 s", given: false },
      { what: "jug by the upturned skiff", more: "1 Dec, exposed", time: "13.6 s", given: true },
      { what: "sheet", more: "1 Dec, kept, knocked", time: "13 s", given: true },
    ]);
  });

  test("every word looked for must be there, in any order and case", () => {
    expect(found("SKIFF jug")).toEqual(["W31"]);
    expect(found("skiff rope")).toEqual([]);
    expect(found("  ")).toEqual(["W32", "W31", "W30"]);
  });

  test("states, mishaps and kinds are found by their words", () => {
    expect(found("knocked")).toEqual(["W30"]);
    expect(found("blank")).toEqual(["W32"]);
    expect(found("direct positive")).toEqual(["W31"]);
  });

  test("an older year is said", () => {
    const { rows } = sheetsView({
      cards: [jug],
      words: "",
      most: 5,
      peek: () => undefined,
      nowMs: Date.UTC(2028, 0, 1),
    });
    expect(rows[0]?.more).toBe("1 Dec 2026, exposed");
  });

  test("of ten thousand only the lines asked for are laid out, and the count is told", () => {
    const many = Array.from({ length: 10_000 }, (_, i) =>
      card({ code: `W${i}`, searchText: `w${i} ${i % 3 === 0 ? "rope" : "hull"}` }),
    );
    const view = sheetsView({ cards: many, words: "rope", most: 60, peek: () => undefined, nowMs: noon });
    expect([view.rows.length, view.found, view.all]).toEqual([60, 3334, 10_000]);
  });
});
