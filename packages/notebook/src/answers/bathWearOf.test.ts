import { describe, expect, test } from "vitest";
import { openForTest } from "../journal/testing.ts";
import type { Json } from "../records/index.ts";
import { fillDemo } from "../starters/index.ts";
import { bathPassesOf } from "./bathPassesOf.ts";
import { bathsOnHand } from "./bathsOnHand.ts";
import { bathWearOf } from "./bathWearOf.ts";
import { sittingIsOver } from "./sittingIsOver.ts";
import { idNumber, recordOf } from "./testing.ts";

/** 1 December 2025, 18:40 at the boatyard. */
const mixedAt = Date.UTC(2025, 11, 1, 17, 40);
const hours = (h: number) => mixedAt + h * 3_600_000;
const moment = (at: number): Json => ({ at, offsetMin: 60 });
const told = (value: number): Json => ({ value, sdLn: 0, ground: "told" });
const bathWith = (fields: Record<string, Json>) =>
  recordOf("bath", idNumber(1), {
    name: "bleach",
    role: "acidAndPeroxide",
    volumeMl: 1000,
    mixedAt: moment(mixedAt),
    lastHourAt: moment(hours(6)),
    ...fields,
  });
/** Four sheets of 13 × 18 cm. */
const four = { areaM2: 4 * 0.0234, sheets: 4 };

describe("bathWearOf", () => {
  test("2 h of a half-life of 4 h and 0.258064 m² in a litre at 0.5 m²/L: 1.01613 halvings, 0.494442 left [by hand]", () => {
    const bath = bathWith({ halfLifeH: told(4), halfAreaM2L: told(0.5) });
    const wear = bathWearOf({ bath, atMs: hours(2), passed: [{ at: hours(1), areaM2: 0.258064, sheets: 5 }] });
    expect(wear.strength.value).toBeCloseTo(0.494442, 6);
    expect(wear.timeFactor.value).toBeCloseTo(2.02248, 5);
    expect(wear).toMatchObject({ verdict: "longer", reasons: ["area", "age"], sheets: 5 });
  });

  test("bleach of 18:40 with four sheets is good until about 22:00, and its doubt is drawn wide [by hand: 4 h · (1 − 0.0936 / 0.5)]", () => {
    const wear = bathWearOf({
      bath: bathWith({ halfLifeH: { value: 4, sdLn: 0.7, ground: "told" }, halfAreaM2L: told(0.5) }),
      atMs: hours(1),
      passed: [{ at: hours(1), ...four }],
    });
    const good = wear.goodUntilMs;
    expect(((good?.value ?? 0) - mixedAt) / 3_600_000).toBeCloseTo(4 * (1 - 0.0936 / 0.5), 0);
    expect(good?.low).toBeLessThan(hours(2));
    expect(good?.high).toBe(hours(6));
    expect(wear.verdict).toBe("longer");
  });

  test("from its last hour on it is over whatever it has done, and is not offered; discarded it does not stand there", () => {
    const fresh = bathWith({ halfLifeH: told(100), halfAreaM2L: told(100) });
    expect(bathWearOf({ bath: fresh, atMs: hours(5.99) }).verdict).toBe("use");
    expect(bathWearOf({ bath: fresh, atMs: hours(6) })).toMatchObject({ verdict: "over", reasons: ["pastLastHour"] });
    const [one] = bathsOnHand({ baths: [fresh], atMs: hours(6) });
    expect(one).toMatchObject({ isOffered: false, endsWithSitting: true });
    const gone = bathWith({ discardedAt: moment(hours(3)), discardedInto: "usedBleach" });
    expect(bathWearOf({ bath: gone, atMs: hours(4) }).verdict).toBe("discarded");
    expect(bathsOnHand({ baths: [gone], atMs: hours(4) })).toEqual([]);
  });

  test("what nobody wrote down is a wide range from common practice, not nothing", () => {
    const { mixedAt: _, volumeMl: __, ...rest } = bathWith({});
    const wear = bathWearOf({
      bath: rest as ReturnType<typeof bathWith>,
      atMs: hours(1),
      passed: [{ at: 0, ...four }],
    });
    expect(wear.reasons).toEqual(expect.arrayContaining(["ageUnknown", "volumeUnknown"]));
    expect(wear.strength.high).toBeLessThan(0.95);
    expect(wear.strength.low).toBeLessThan(0.45);
    expect(wear.goodUntilMs).toBeUndefined();
  });

  test("a first developer is replaced where another bath is only given longer", () => {
    const at = { halfLifeH: told(8), halfAreaM2L: told(1), lastHourAt: null as Json };
    const of = (role: string) => bathWearOf({ bath: bathWith({ ...at, role }), atMs: hours(9) }).verdict;
    expect([of("firstDeveloper"), of("developer"), of("secondDeveloper")]).toEqual(["replace", "longer", "longer"]);
  });

  test("gas at the entry of a sheet ends a bleach, not a stop", () => {
    const foams = (role: string) =>
      bathWearOf({ bath: bathWith({ role, bubblesAt: moment(hours(0.2)) }), atMs: hours(0.3) });
    expect(foams("acidAndPeroxide")).toMatchObject({ verdict: "longer", reasons: ["bubbles"] });
    expect(foams("stop").verdict).toBe("use");
  });

  test("strips correct what is believed: twice the time after two hours without paper is a half-life near two hours, and surer", () => {
    const strips: Json = [
      { at: moment(mixedAt), timeS: 60 },
      { at: moment(hours(2)), timeS: 120 },
      { at: moment(hours(3)), timeS: 170 },
    ];
    const wear = bathWearOf({ bath: bathWith({ strips }), atMs: hours(3) });
    expect(wear.ground).toBe("learnt");
    expect(wear.halves?.halfLifeH.value).toBeGreaterThan(1.7);
    expect(wear.halves?.halfLifeH.value).toBeLessThan(2.3);
    expect(wear.halves?.halfLifeH.sdLn).toBeLessThan(0.2);
    // Without paper nothing was learnt of the area.
    expect(wear.halves?.halfAreaM2L.sdLn).toBeGreaterThan(0.55);
    expect(wear.timeFactor.value).toBeCloseTo(170 / 60, 0);
  });

  test("water does not wear", () => {
    const wear = bathWearOf({ bath: bathWith({ role: "water", lastHourAt: null }), atMs: hours(50) });
    expect(wear).toMatchObject({ verdict: "use", reasons: ["lasts"], goodUntilMs: undefined });
  });

  test("older and more used is never stronger [property]", () => {
    let before = 1;
    for (let step = 0; step <= 12; step++) {
      const passed = [{ at: mixedAt, areaM2: 0.02 * step, sheets: step }];
      const { strength } = bathWearOf({ bath: bathWith({}), atMs: hours(step / 3), passed });
      expect(strength.value).toBeLessThanOrEqual(before);
      expect(strength.low).toBeLessThanOrEqual(strength.value);
      expect(strength.high).toBeGreaterThanOrEqual(strength.value);
      before = strength.value;
    }
  });
});

test("a sheet counts once for a bath of its run, however many rounds it took; a lane that has not begun does not", () => {
  const bath = bathWith({});
  const [box, first, second, waiting, lane, later] = [2, 3, 4, 5, 6, 7].map(idNumber);
  const paper = recordOf("paperBox", box as never, { size: { widthMm: 130, heightMm: 180 } });
  const event = (press: string, laneId: Json, sinceStartMs: number): Json => ({
    press,
    laneId,
    sinceStartMs,
    wallMs: mixedAt + sinceStartMs,
  });
  const run = recordOf("run", idNumber(8), {
    startedAt: moment(mixedAt),
    bathIds: [bath.id],
    [`lanes.${lane}.sheetIds`]: [first, second] as Json,
    [`lanes.${later}.sheetIds`]: [waiting] as Json,
    [`events.${idNumber(9)}.event`]: event("start", lane as Json, 60_000),
    [`events.${idNumber(10)}.event`]: event("another", lane as Json, 400_000),
  });
  const cards = [first, second, waiting].map((id) => ({ id, links: { paperBoxId: box } })) as never;
  const passed = bathPassesOf({ bath, runs: [run], cards, notebook: { peek: () => paper } });
  expect(passed).toEqual([{ at: mixedAt + 60_000, areaM2: 2 * 0.0234, sheets: 2 }]);
});

test("the invented notebook: the bleach of an evening did the sheet of its run, once in three rounds, and was discarded", async () => {
  const notebook = await openForTest();
  await fillDemo({ notebook });
  const baths = notebook.shelf("bath").filter(({ role }) => role === "peroxide");
  const [first] = baths;
  if (first === undefined) throw new Error("no bath");
  const passed = bathPassesOf({ bath: first, runs: notebook.shelf("run"), cards: notebook.cards(), notebook });
  expect(passed.map(({ areaM2, sheets }) => [areaM2, sheets])).toEqual([[0.0234, 1]]);
  const wear = bathWearOf({ bath: first, atMs: first.discardedAt?.at ?? 0, passed });
  expect(wear).toMatchObject({ verdict: "discarded", ground: "learnt" });
  const onHand = bathsOnHand({ baths: notebook.shelf("bath"), atMs: first.discardedAt?.at ?? 0 });
  expect(onHand.some(({ bath }) => bath.id === first.id)).toBe(false);
});

test("a sitting is over once every run with its bath is, and is not before the first", () => {
  const bath = bathWith({});
  const run = (n: number, fields: Record<string, Json>) =>
    recordOf("run", idNumber(n), { bathIds: [bath.id], startedAt: moment(mixedAt), ...fields });
  const over = run(20, { endedAt: moment(hours(1)) });
  expect(sittingIsOver({ bath, runs: [] })).toBe(false);
  expect(sittingIsOver({ bath, runs: [over, run(21, {})] })).toBe(false);
  expect(sittingIsOver({ bath, runs: [over, run(22, { endedAt: moment(hours(2)), bathIds: [] })] })).toBe(true);
});
