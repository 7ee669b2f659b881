import { checkSet, type FieldSet, type Json, newId, type Sheet, sheet as sheetKind } from "@captray/notebook/records";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { CapPlan } from "./capPlan.ts";
import { capFromSheet, capSets } from "./capRecord.ts";
import { type CapEvent, type CapState, givenSoFar, startCap, stepCap } from "./capState.ts";

const plan: CapPlan = { wantedS: 12.6, way: "ticks", biasS: 0, rate: 1 };
const at0 = 1_764_000_000_000;

/** A sheet that takes sets as the notebook does, and refuses what its kind would refuse. */
function paper() {
  const fields = new Map<string, Json>();
  let ids = 0;
  const random = () => ((ids++ * 7919) % 1000) / 1000;
  const id = newId({ now: at0, random });
  const made = {
    get sheet(): Sheet {
      return sheetKind.assemble(id, fields);
    },
    sets: 0,
    newId: () => newId({ now: at0 + ids, random }),
    keep(state: CapState, nowMs: number): FieldSet {
      const now = { at: Math.round(nowMs), offsetMin: 60 };
      const set = capSets({ state, sheet: made.sheet, practice: null, now, newId: made.newId });
      expect(checkSet(sheetKind, set)).toBe(true);
      for (const [path, value] of Object.entries(set)) fields.set(path, value);
      return set;
    },
  };
  return made;
}

function step(state: CapState, s: number, event: object, id = "x"): CapState {
  return stepCap({ state, event: { spareId: id, ...event, nowMs: at0 + s * 1000 } as CapEvent });
}

describe("capSets", () => {
  test("from the moment the cap is off the sheet says taken as planned; the press sets what was given", () => {
    const one = paper();
    const off = step(startCap({ plan, countIn: false }), 0, { kind: "press" }, one.newId());
    one.keep(off, at0);
    expect(one.sheet.openings[0]?.opening).toMatchObject({
      plannedS: 13,
      givenS: { value: 13 },
      manner: "takenAsPlanned",
    });
    expect(one.sheet.exposedAt).toEqual({ at: at0, offsetMin: 60 });
    one.keep(step(off, 13.6, { kind: "press" }), at0 + 13_600);
    expect(one.sheet.openings).toHaveLength(1);
    expect(one.sheet.openings[0]?.opening).toMatchObject({ givenS: { value: 13.6 }, manner: "ticks" });
  });

  test("the doubt of an opening is this hand's [√(0.10² + (0.05 × 13.6)²) = 0.6873 s: by hand]", () => {
    const one = paper();
    const off = step(startCap({ plan, countIn: false }), 0, { kind: "press" }, one.newId());
    one.keep(step(off, 13.6, { kind: "press" }), at0 + 13_600);
    expect(one.sheet.openings[0]?.opening?.givenS.sd).toBeCloseTo(0.6873, 4);
  });

  test("taken back, the sheet is not exposed; a mishap taken off is gone", () => {
    const one = paper();
    const off = step(startCap({ plan, countIn: false }), 0, { kind: "press" }, one.newId());
    const after = step(step(off, 13, { kind: "press" }), 14, { kind: "mishap", mishap: "knocked" });
    one.keep(after, at0 + 14_000);
    expect(one.sheet.mishaps.map(({ what }) => what)).toEqual(["knocked"]);
    const back = step(after, 15, { kind: "takeBack" });
    one.keep(back, at0 + 15_000);
    expect(one.sheet.mishaps).toEqual([]);
    one.keep(step(back, 16, { kind: "takeBack" }), at0 + 16_000);
    expect(one.sheet.openings).toEqual([]);
    expect(one.sheet.exposedAt ?? null).toBeNull();
  });

  test("kept at every step or only at the last, the sheet says the same, and a second time there is nothing to set [property]", () => {
    const event = fc.tuple(
      fc.constantFrom("press", "wait", "endHere", "stillOff", "goOn", "takeBack", "mishap", "correct"),
      fc.integer({ min: 400, max: 30_000 }),
    );
    fc.assert(
      fc.property(fc.array(event, { maxLength: 20 }), (events) => {
        const often = paper();
        const once = paper();
        let state = startCap({ plan, countIn: false });
        let ms = 0;
        for (const [kind, later] of events) {
          ms += later;
          state = step(state, ms / 1000, { kind, mishap: "lightLeak", byS: 0.5 }, often.newId());
          often.keep(state, at0 + ms);
          expect(often.keep(state, at0 + ms)).toEqual({});
        }
        once.keep(state, at0 + ms);
        const bare = ({ sheet }: { sheet: Sheet }) => ({
          openings: sheet.openings,
          mishaps: sheet.mishaps.map(({ what }) => what),
          exposedAt: sheet.exposedAt ?? null,
        });
        expect(bare(often)).toEqual(bare(once));
      }),
      { seed: 20261125, numRuns: 150 },
    );
  });
});

describe("capFromSheet", () => {
  const kept = (state: CapState, nowMs: number) => {
    const one = paper();
    one.keep(state, nowMs);
    return one.sheet;
  };
  const id = paper().newId();

  test("without the page's own memory an exposed sheet opens as it was kept", () => {
    const off = step(startCap({ plan, countIn: false }), 0, { kind: "press" }, id);
    const after = step(off, 13.6, { kind: "press" });
    const again = capFromSheet({ sheet: kept(after, at0 + 13_600), plan, countIn: false, nowMs: at0 + 9e6 });
    expect(again.openings).toEqual(after.openings);
    expect(again.phase).toEqual({ name: "after", endedMs: at0 + 13_600, by: "press" });
    expect(givenSoFar(again.openings)).toBe(13.6);
  });

  test("in mid-exposure it goes on from the sheet alone", () => {
    const off = step(startCap({ plan, countIn: false }), 0, { kind: "press" }, id);
    const again = capFromSheet({ sheet: kept(off, at0), plan, countIn: false, nowMs: at0 + 5000 });
    expect(again.phase).toMatchObject({ name: "off", openedMs: at0 });
    expect(givenSoFar(step(again, 13, { kind: "press" }).openings)).toBe(13);
  });

  test("a day later it stands as taken as planned", () => {
    const off = step(startCap({ plan, countIn: false }), 0, { kind: "press" }, id);
    const again = capFromSheet({ sheet: kept(off, at0), plan, countIn: false, nowMs: at0 + 86_400_000 });
    expect(again.phase).toMatchObject({ name: "after", by: "asPlanned" });
    expect(givenSoFar(again.openings)).toBe(13);
  });

  test("a blank sheet opens ready", () => {
    expect(capFromSheet({ sheet: paper().sheet, plan, countIn: true, nowMs: at0 })).toEqual(startCap({ plan }));
  });
});
