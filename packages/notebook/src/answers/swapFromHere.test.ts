import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { openForTest } from "../journal/testing.ts";
import { type Json, type Sheet, type StepDate, stepDates } from "../records/index.ts";
import { at, sheetOf, side } from "./holdersTesting.ts";
import { swapFromHere } from "./swapFromHere.ts";
import { idNumber } from "./testing.ts";

const opening = (givenS: number): Json => ({ plannedS: 12, givenS: { value: givenS, sd: 0.3 }, manner: "ticks" });
const planned = (timeS: number): Json => ({ timeS, ledger: [] });

const stain: Json = {
  id: idNumber(64),
  what: "stain",
  x: 0.2,
  y: 0.7,
  width: 0.1,
  height: 0.1,
  noticedAt: at(36),
};

const first: Record<string, Json> = {
  code: "W36",
  label: "flash 4 s for the shed door",
  ...side(11),
  loadedAt: at(1),
  sceneId: idNumber(1),
  planned: planned(12),
  exposedAt: at(10),
  [`openings.${idNumber(60)}.opening`]: opening(13),
  [`mishaps.${idNumber(61)}.what`]: "knocked",
  inProcessAt: at(30),
};
const second: Record<string, Json> = { code: "W37", label: "rope close", ...side(12), loadedAt: at(2) };

/** Both sheets in a notebook, swapped there. */
async function swapped(from: StepDate, a = first, b = second) {
  const notebook = await openForTest();
  const ids = [idNumber(50), idNumber(51)] as const;
  const sets = [a, b].map((set, one) => ({ id: ids[one] ?? "", kind: "sheet" as const, set }));
  await notebook.change(sets, "as they were written down").kept;
  const read = async () => [(await notebook.load(ids[0])) as Sheet, (await notebook.load(ids[1])) as Sheet] as const;
  const swap = async () => {
    const [one, other] = await read();
    const change = swapFromHere({ a: one, b: other, from, now: at(40) });
    if (change.length > 0) await notebook.change(change, "swapped").kept;
  };
  const before = await read();
  await swap();
  return { notebook, ids, before, after: await read(), read, swap };
}

describe("these two were swapped from here on", () => {
  test("from the exposure on: openings, mishap, ledger, scene and all later dates; holders and what the sheet is stay", async () => {
    const { after } = await swapped("exposedAt");
    const [one, other] = after;
    expect([one.exposedAt, one.openings, one.mishaps, one.planned, one.sceneId, one.inProcessAt]).toEqual([
      undefined,
      [],
      [],
      undefined,
      undefined,
      undefined,
    ]);
    expect(other).toMatchObject({
      code: "W37",
      label: "rope close",
      exposedAt: at(10),
      inProcessAt: at(30),
      ...side(12),
    });
    expect(other.openings.map((held) => held.opening?.givenS.value)).toEqual([13]);
    expect(other.mishaps.map(({ what }) => what)).toEqual(["knocked"]);
    expect(one).toMatchObject({ code: "W36", loadedAt: at(1), ...side(11) });
  });

  test("from the loading on the sides go too; from the trays on only what came after them", async () => {
    const [one, other] = (await swapped("loadedAt")).after;
    expect([one.holderSide, one.loadedAt, other.holderSide]).toEqual([side(12).holderSide, at(2), side(11).holderSide]);
    const late = (await swapped("inProcessAt")).after;
    expect([late[0].inProcessAt, late[1].inProcessAt]).toEqual([undefined, at(30)]);
    expect([late[0].openings.length, late[1].openings.length]).toEqual([1, 0]);
  });

  test("swapped on the drying line: what hangs where and what was seen on the print change sheets, the trays do not", async () => {
    const hung = { ...first, dryingAt: at(34), hangs: { on: "line", number: 3 }, faults: [stain] };
    const [one, other] = (await swapped("dryingAt", hung)).after;
    expect([one.dryingAt, one.hangs, one.faults, one.inProcessAt]).toEqual([undefined, undefined, undefined, at(30)]);
    expect(other).toMatchObject({ code: "W37", dryingAt: at(34), hangs: { on: "line", number: 3 }, faults: [stain] });
  });

  test("flash given before the loading stays with its sheet; flash owed after the exposure goes with the exposure", async () => {
    const before = { ...first, flashPlanned: { timeS: 4, when: "beforeLoading" }, flashedAt: at(0), flashGivenS: 4 };
    const [one, other] = (await swapped("loadedAt", before)).after;
    expect([one.flashGivenS, other.flashGivenS]).toEqual([4, undefined]);
    const owed = { ...first, flashPlanned: { timeS: 4, when: "afterExposure" } };
    const [, owing] = (await swapped("exposedAt", owed)).after;
    expect(owing.flashPlanned?.when).toBe("afterExposure");
  });

  test("one change, taken back at one press; the log keeps where the opening was", async () => {
    const { notebook, ids, before, after, read } = await swapped("exposedAt");
    expect(after).not.toEqual(before);
    const path = `openings.${idNumber(60)}.opening`;
    expect((await notebook.history(ids[0], path)).map(({ value }) => value)).toContainEqual(opening(13));
    expect((await notebook.history(ids[0], "exposedAt")).map(({ value }) => value)).toEqual([null, at(10)]);
    expect(await notebook.takeBack()).toMatchObject({ kind: "takenBack", left: [] });
    expect(await read()).toEqual(before);
  });

  test("twice is as it was, and nothing written down is lost, whatever was written [property]", async () => {
    const field = (name: string, values: readonly Json[]) =>
      fc
        .option(fc.constantFrom(...values), { nil: undefined })
        .map((value): [string, Json] | undefined => (value === undefined ? undefined : [name, value]));
    const dates = stepDates.map((step, place) => field(step, [at(place), at(place + 20)]));
    const sheetFields = (n: number) =>
      fc
        .tuple(
          ...dates,
          field("planned", [planned(9), planned(12)]),
          field("sceneId", [idNumber(1), idNumber(2)]),
          field("takenOutAt", [at(33)]),
          field("takenDownAt", [at(34), at(35)]),
          field("hangs", [{ on: "line", number: 3 }, { on: "glass" }]),
          field("faults", [[stain]]),
          field("pieces", [[{ letter: "a", cut: "quarter", place: { x: 0, y: 0, width: 0.5, height: 0.5 } }]]),
          field("rating", [2, 4]),
          field("flashGivenS", [4, 6]),
          field(
            "flashPlanned",
            ["beforeLoading", "inCamera", "afterExposure"].map((when) => ({ timeS: 4, when })),
          ),
          field(`openings.${idNumber(n)}.opening`, [opening(7), opening(8)]),
          field(`openings.${idNumber(n + 1)}.opening`, [opening(9)]),
          field(`mishaps.${idNumber(n + 2)}.what`, ["knocked"]),
        )
        .map((pairs) => Object.fromEntries(pairs.filter((pair) => pair !== undefined)) as Record<string, Json>);
    await fc.assert(
      fc.asyncProperty(sheetFields(60), sheetFields(70), fc.constantFrom(...stepDates), async (a, b, from) => {
        const { before, after, read, swap } = await swapped(from, { code: "W36", ...a }, { code: "W37", ...b });
        const all = (pair: readonly Sheet[]) =>
          stepDates
            .flatMap((step) => pair.map((one) => JSON.stringify([step, one[step] ?? null])))
            .concat(
              pair.flatMap(({ openings, mishaps }) => [...openings, ...mishaps].map((held) => JSON.stringify(held))),
            )
            .sort();
        expect(all(after)).toEqual(all(before));
        await swap();
        expect(await read()).toEqual(before);
      }),
      { seed: 20261203, numRuns: 150 },
    );
  });

  test("a sheet is not swapped with itself", () => {
    const one = sheetOf(36, first);
    expect(swapFromHere({ a: one, b: one, from: "loadedAt", now: at(40) })).toEqual([]);
  });
});
