import { describe, expect, test } from "vitest";
import type { Json } from "../records/index.ts";
import { planOf } from "./planOf.ts";
import { stepTestIndex } from "./stepTestIndex.ts";
import { stepTestPlan } from "./stepTestPlan.ts";
import { areasOf, dial, idNumber, recordOf, someKit } from "./testing.ts";

function testOf(seconds: readonly number[]) {
  const fields: Record<string, Json> = { question: "step", sheetIds: [idNumber(40)] };
  for (const [order, timeS] of seconds.entries()) {
    fields[`levels.${idNumber(50 + order)}.order`] = order;
    fields[`levels.${idNumber(50 + order)}.plannedS`] = timeS;
  }
  return recordOf("test", idNumber(8), fields);
}

const timeOf = (kit: ReturnType<typeof someKit>) => {
  const plan = planOf(kit);
  if (plan.kind !== "plan") throw new Error("no plan");
  return plan.answer.timeS;
};

describe("stepTestPlan", () => {
  test("five strips a stop apart about the advised time, each opening the difference in whole ticks [by hand]", () => {
    const kit = someKit({});
    const plan = stepTestPlan({ kit, steps: 5, stopsApart: 1, manner: "openings" });
    if (plan.kind !== "plan") throw new Error(plan.kind);
    const timeS = timeOf(kit);
    const wanted = [0.25, 0.5, 1, 2, 4].map((factor) => Math.round(timeS * factor));
    for (const [place, strip] of plan.strips.entries()) {
      expect(Math.abs(strip.totalS - (wanted[place] ?? 0))).toBeLessThanOrEqual(1);
    }
    expect(plan.strips.reduce((sum, { countS }) => sum + countS, 0)).toBe(plan.strips.at(-1)?.totalS);
  });

  test("several openings are doubted more than one with a card moved on, but for the first strip [√n σ]", () => {
    const strips = (manner: "openings" | "cardMoved") => {
      const plan = stepTestPlan({
        kit: someKit({
          hand: { toTicks: { biasS: { value: 0, sd: 0 }, motorSdS: 0.2, weber: 0, openings: 9, by: "cap" } },
        }),
        steps: 4,
        stopsApart: 1,
        manner,
      });
      return plan.kind === "plan" ? plan.strips : [];
    };
    expect(strips("openings")[0]?.sdStops).toBe(strips("cardMoved")[0]?.sdStops);
    expect((strips("openings")[3]?.sdStops ?? 0) / (strips("cardMoved")[3]?.sdStops ?? 1)).toBeCloseTo(2, 9);
  });

  test("half a second advised is too short for strips in whole ticks, and that is said", () => {
    const kit = someKit({ exposureIndex: { value: { value: 40, sdStops: 0.5 } } });
    expect(stepTestPlan({ kit, steps: 5, stopsApart: 1, manner: "openings" })).toMatchObject({ tooShort: true });
    expect(stepTestPlan({ kit: someKit({}), steps: 3, stopsApart: 1, manner: "cardMoved" })).toMatchObject({
      kind: "plan",
    });
  });

  test("without a reading it says what is missing", () => {
    const kit = { ...someKit({}), exposureIndex: undefined };
    expect(stepTestPlan({ kit, steps: 5, stopsApart: 1, manner: "openings" })).toEqual({
      kind: "missing",
      missing: ["exposureIndex"],
    });
  });
});

describe("stepTestIndex", () => {
  test.each([
    ["a box nobody tested", {}],
    ["a paper of exponent 0.9", { reciprocity: { exponent: 0.9, fromS: 1 } }],
    [
      "a paper with a table",
      {
        reciprocityTable: [
          { meteredS: 1, neededS: 1 },
          { meteredS: 10, neededS: 14 },
          { meteredS: 100, neededS: 220 },
        ],
      },
    ],
  ] as const)("%s: planned again with the index found, the scene asks for the seconds of that strip", (_, box) => {
    const kit = someKit({
      paperBox: box as unknown as Record<string, Json>,
      lens: { transmission: { value: 0.8, sdStops: 0.1 } },
    });
    const advised = timeOf(kit);
    const strips = testOf([advised / 2, advised, advised * 2]);
    for (const strip of [1, 2, 2.5, 3]) {
      const found = stepTestIndex({ kit, test: strips, strip });
      if (found.kind !== "found" || kit.exposureIndex === undefined) throw new Error(found.kind);
      const again = timeOf({
        ...kit,
        exposureIndex: { ...kit.exposureIndex, value: found.value, found: found.found },
      });
      // A table is followed by its slope at the advised time: 3 % within a stop of it.
      expect(Math.abs(again / found.timeS - 1)).toBeLessThan("reciprocityTable" in box ? 0.05 : 1e-9);
      expect(found.value.sdStops).toBeCloseTo(0.3, 9);
      expect(found.found.timesS).toEqual([found.timeS]);
    }
  });

  test("a strip a stop longer than advised is half the index, glass and light charged alike before [by hand]", () => {
    const kit = someKit({
      scene: { light: { source: "illuminantA" } },
      exposureIndex: {
        value: { value: 2, sdStops: 0.3 },
        found: { how: "ownSheets", source: "illuminantA", glass: "standard", transmission: 0.9 },
      },
    });
    const advised = timeOf(kit);
    const found = stepTestIndex({ kit, test: testOf([advised, 2 * advised]), strip: 2 });
    expect(found.kind === "found" ? found.value.value : Number.NaN).toBeCloseTo(1, 9);
  });

  test("placed a stop above mid, the board still is to print mid grey: the same index as placed on mid [by hand]", () => {
    const strips = testOf([6, 12]);
    const indexAt = (stops: number) => {
      const kit = someKit({ scene: { place: { areaId: idNumber(100), stops } } });
      const found = stepTestIndex({ kit, test: strips, strip: 2 });
      return found.kind === "found" ? found.value.value : Number.NaN;
    };
    expect(indexAt(1)).toBeCloseTo(indexAt(0), 9);
  });

  test("the scene read anew since the test was given does not move its index: what was asked then holds", () => {
    const then = someKit({});
    const asked = planOf(then);
    if (asked.kind !== "plan") throw new Error(asked.kind);
    const darker = someKit({ scene: areasOf([["hull", dial(1 / 4, "1/4")]]) });
    const strips = testOf([6, 12]);
    const of = (kit: typeof then, planned?: typeof asked.input) => {
      const found = stepTestIndex({ kit, test: strips, strip: 2, planned });
      return found.kind === "found" ? found.value.value : Number.NaN;
    };
    expect(of(darker, asked.input)).toBeCloseTo(of(then), 9);
    // Two stops less light, were the reading of today believed.
    expect(of(darker) / of(then)).toBeCloseTo(4, 6);
  });

  test("strips two stops apart leave twice the doubt", () => {
    const found = stepTestIndex({ kit: someKit({}), test: testOf([3, 12, 48]), strip: 2 });
    expect(found.kind === "found" ? found.value.sdStops : Number.NaN).toBeCloseTo(0.6, 9);
  });
});
