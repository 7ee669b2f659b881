import { describe, expect, test } from "vitest";
import { bath, checkSet } from "../records/index.ts";
import { mixedBathSet } from "./mixedBathSet.ts";
import { mixingAdviceOf } from "./mixingAdviceOf.ts";
import { mixingFor } from "./mixingFor.ts";
import type { Mixing, MixingAsked, StockAsked } from "./mixingTypes.ts";
import { wasteOf } from "./wasteOf.ts";

const peroxide = (label: string): StockAsked => ({ what: "peroxide", name: "peroxide", label });
const citricJar: StockAsked = { what: "citric", name: "citric acid", formula: "C6H8O7.H2O" };
const vinegar: StockAsked = { what: "acetic", name: "white vinegar", label: "5 % w/v" };
const ask = (asked: Partial<MixingAsked>): Mixing =>
  mixingFor({
    role: "peroxide",
    wants: [{ what: "h2o2", percentWv: 3 }],
    volumeMl: 1000,
    stocks: [],
    room: [],
    ...asked,
  });
const poursOf = (mixing: Mixing) =>
  mixing.kind === "mix"
    ? mixing.pours.map((pour) => [pour.what, "amountG" in pour ? pour.amountG : pour.amountMl] as const)
    : mixing.kind;

describe("mixingFor", () => {
  test("12 % w/w to 500 mL of 6 % w/v: 239.808 mL, where the bare figures say 250 [handbook-densities, from memory; by hand]", () => {
    const mixing = ask({ wants: [{ what: "h2o2", percentWv: 6 }], volumeMl: 500, stocks: [peroxide("12 % w/w")] });
    expect(poursOf(mixing)).toEqual([
      ["water", expect.closeTo(260.192, 2)],
      ["peroxide", expect.closeTo(239.808, 2)],
    ]);
    expect(mixing.kind === "mix" && mixing.reached[0]?.naiveMl).toBe(250);
  });

  test("20 g/L of citric acid from a jar of the monohydrate is 21.875 g [by hand: 20 · 210.138 / 192.123]", () => {
    const mixing = ask({ role: "acid", wants: [{ what: "citric", percentWv: 2 }], stocks: [citricJar] });
    expect(poursOf(mixing)).toEqual([
      ["water", 1000],
      ["citric", expect.closeTo((20 * 210.138) / 192.123, 2)],
    ]);
  });

  test("1.5 % stop from vinegar of 5 %: 300 mL to the litre [by hand]", () => {
    const mixing = ask({ role: "stop", wants: [{ what: "acetic", percentWv: 1.5 }], stocks: [vinegar] });
    expect(poursOf(mixing)).toEqual([
      ["water", 700],
      ["acetic", 300],
    ]);
  });

  test("acid and peroxide in one tray: water, acid, topped up cold, peroxide last, then a vented label; it has six hours", () => {
    const mixing = ask({
      role: "acidAndPeroxide",
      wants: [
        { what: "citric", percentWv: 2 },
        { what: "h2o2", percentWv: 3 },
      ],
      stocks: [peroxide("6 % w/v"), citricJar],
    });
    if (mixing.kind !== "mix") throw new Error(mixing.kind);
    expect(mixing.steps.map(({ does }) => does)).toEqual(["water", "dissolve", "topUp", "peroxide", "label"]);
    expect(mixing.steps[2]).toMatchObject({ toMl: 500 });
    expect(mixing.steps[4]).toMatchObject({ isVented: true });
    expect(mixing.lastHours).toBe(6);
    // Each caution stands at one step at most, and help is never among them.
    const atSteps = mixing.steps.flatMap(({ cautions }) => cautions.map(({ id }) => id));
    expect(new Set(atSteps).size).toBe(atSteps.length);
    expect(atSteps).toContain("ox-metal");
    expect(mixing.cautions.at(-1)?.id).toBe("help");
  });

  test("1:5 is not guessed: both readings with what they pour, 166.7 and 200 mL to the litre [by hand]", () => {
    const mixing = ask({
      role: "developer",
      wants: [{ what: "metol" }, { what: "hydroquinone" }],
      stocks: [{ what: "developer", name: "developer", label: "1:5" }],
    });
    expect(mixing).toMatchObject({ kind: "ask", asks: "ratio", said: "1:5" });
    expect(mixing.kind === "ask" && mixing.readings).toEqual([
      { label: "1+5", meaning: "oneWith", stockMl: expect.closeTo(1000 / 6, 6) },
      { label: "1+4", meaning: "oneIn", stockMl: 200 },
    ]);
  });

  test("a bare 9 % is asked about with its results; a bare 3 % is taken for w/v, and said so", () => {
    const mixing = ask({ stocks: [peroxide("9 %")] });
    expect(mixing).toMatchObject({ kind: "ask", asks: "basis", what: "peroxide" });
    const ml = mixing.kind === "ask" ? mixing.readings.map(({ stockMl }) => Math.round(stockMl ?? 0)) : [];
    // 9 % w/w is 9.283 % w/v.
    expect(ml).toEqual([333, 323]);
    const bare = ask({ stocks: [peroxide("3 %")] });
    expect(bare.kind === "mix" && bare.warnings.map(({ kind }) => kind)).toContain("basisAssumed");
  });

  test.each([
    [
      "strong peroxide with vinegar",
      {
        role: "acidAndPeroxide",
        wants: [
          { what: "acetic", percentWv: 1 },
          { what: "h2o2", percentWv: 3 },
        ],
        stocks: [vinegar, peroxide("12 % w/w")],
      },
      "mixRefused",
    ],
    [
      "chlorine bleach in the room",
      { role: "acid", wants: [{ what: "citric", percentWv: 2 }], stocks: [citricJar], room: ["hypochlorite"] },
      "mixRefused",
    ],
    ["acetone in the room", { stocks: [peroxide("6 % w/v")], room: ["acetone"] }, "mixRefused"],
    ["150 % peroxide", { stocks: [peroxide("150 % w/w")] }, "strengthOutOfRange"],
    ["a bare 150 %", { stocks: [peroxide("150 %")] }, "strengthOutOfRange"],
    ["a bath stronger than its stock", { stocks: [peroxide("2 % w/v")] }, "targetStrongerThanStock"],
    ["a tray of less than nothing", { stocks: [peroxide("6 % w/v")], volumeMl: -1 }, "notPositive"],
    [
      "a salt that is not this salt",
      {
        role: "clear",
        wants: [{ what: "sulfite", percentWv: 2 }],
        stocks: [{ what: "sulfite", name: "jar", formula: "Na2CO3" }],
      },
      "notTheSameSalt",
    ],
  ] as const)("%s is refused", (_, asked, code) => {
    const mixing = ask(asked as unknown as Partial<MixingAsked>);
    expect(mixing.kind === "refused" ? mixing.code : mixing.kind).toBe(code);
  });

  test("stocks that together are more than the bath, and bleaches the tool gives no amounts for, are said", () => {
    const both = ask({
      role: "acidAndPeroxide",
      wants: [
        { what: "acetic", percentWv: 3 },
        { what: "h2o2", percentWv: 3 },
      ],
      stocks: [vinegar, peroxide("6 % w/v")],
    });
    expect(both).toMatchObject({ kind: "noRoom", stocksMl: expect.closeTo(1100, 6), volumeMl: 1000 });
    expect(ask({ wants: [{ what: "dichromate" }] })).toEqual({ kind: "notHere", what: "dichromate" });
    expect(ask({})).toEqual({ kind: "needs", what: "peroxide", need: "stock" });
  });

  test("volumes add up to the bath, water first and peroxide last [property]", () => {
    for (const volumeMl of [120, 374, 1000, 2500]) {
      for (const stock of [4, 6, 8.8, 12]) {
        const mixing = ask({
          role: "acidAndPeroxide",
          volumeMl,
          wants: [
            { what: "citric", percentWv: 2 },
            { what: "h2o2", percentWv: 3 },
          ],
          stocks: [peroxide(`${stock} % w/w`), citricJar],
        });
        if (mixing.kind !== "mix") throw new Error(mixing.kind);
        const liquid = mixing.pours.reduce((sum, pour) => sum + ("amountMl" in pour ? pour.amountMl : 0), 0);
        expect(liquid).toBeCloseTo(volumeMl, 6);
        const order = mixing.steps.map(({ does }) => does);
        expect(order[0]).toBe("water");
        expect(order.indexOf("peroxide")).toBe(order.length - 2);
      }
    }
  });
});

describe("the bath that was mixed", () => {
  const asked: MixingAsked = {
    role: "acidAndPeroxide",
    wants: [
      { what: "citric", percentWv: 2 },
      { what: "h2o2", percentWv: 3 },
    ],
    volumeMl: 1000,
    stocks: [peroxide("6 % w/v"), citricJar],
    room: [],
  };
  const mixing = mixingFor(asked);
  if (mixing.kind !== "mix") throw new Error(mixing.kind);
  const now = { at: Date.UTC(2025, 11, 1, 17, 40), offsetMin: 60 };

  test("is a sound record, and its last hour is six hours on", () => {
    const set = mixedBathSet({ asked, mixing, name: "bleach", now, baths: [] });
    expect(checkSet(bath, set)).toBe(true);
    expect(set).toMatchObject({
      lastHourAt: { at: now.at + 6 * 3_600_000 },
      halfLifeH: { ground: "prior", value: expect.closeTo(Math.sqrt(2 * 6), 9) },
    });
  });

  test("believes what strips in an earlier one taught, a little less surely", () => {
    const earlier = bath.assemble(
      "01KB9E20000000000000000001",
      new Map(
        Object.entries({
          ...mixedBathSet({ asked, mixing, name: "bleach", now, baths: [] }),
          strips: [
            { at: now, timeS: 60 },
            { at: { ...now, at: now.at + 2 * 3_600_000 }, timeS: 120 },
          ],
        }),
      ),
    );
    const later = { ...now, at: now.at + 86_400_000 };
    const set = mixedBathSet({ asked, mixing, name: "bleach", now: later, baths: [earlier] });
    const half = set.halfLifeH as { value: number; sdLn: number; ground: string };
    expect(half.ground).toBe("learnt");
    expect(half.value).toBeLessThan(2.6);
    expect(half.sdLn).toBeGreaterThan(0.3);
    expect(half.sdLn).toBeLessThan(0.6);
  });
});

describe("what belongs to the amounts", () => {
  test("tap water with 50 mg/L in 500 mL holds more chloride than a 4x5 sheet has silver: all of it may come back [by hand: 0.705 against 0.179 mmol]", () => {
    const advice = mixingAdviceOf({ role: "acid", volumeMl: 500, areaM2: 0.0129032, sheets: 1, waterChlorideMgL: 50 });
    expect(advice.halide?.fromWater.value).toBe(1);
    expect(mixingAdviceOf({ role: "stop", volumeMl: 500, areaM2: 0.0129032, sheets: 1 }).halide).toBeUndefined();
  });

  test("ten RC sheets of 8x10 in a litre bring 0.772 % of the bath before, twenty-five of fibre 4x5 in 500 mL 5.0 % [by hand]", () => {
    expect(mixingAdviceOf({ role: "stop", volumeMl: 1000, areaM2: 0.0516128, sheets: 10 }).carried?.rc).toBeCloseTo(
      1 - (1 - 0.000774192) ** 10,
      9,
    );
    expect(mixingAdviceOf({ role: "stop", volumeMl: 500, areaM2: 0.0129032, sheets: 25 }).carried?.fibre).toBeCloseTo(
      0.05,
      2,
    );
  });
});

describe("two waste vessels", () => {
  test("bleach and fixer never share one; sulfite goes with the fixer; developer and stop into neither", () => {
    const to = (role: "acidAndPeroxide" | "acid" | "fix" | "clear" | "firstDeveloper" | "stop") =>
      wasteOf({ bath: { role } });
    expect(to("acidAndPeroxide")).toMatchObject({ vessel: "usedBleach", refused: { usedFixer: "bleachMeetsFixer" } });
    expect(to("acid").vessel).toBe("usedBleach");
    expect(to("fix")).toMatchObject({ vessel: "usedFixer", refused: { usedBleach: "bleachMeetsFixer" } });
    expect(to("clear").vessel).toBe("usedFixer");
    expect(to("firstDeveloper").vessel).toBe("neither");
    expect(to("stop").refused.usedFixer).toBe("acidMeetsFixer");
  });

  test("what it holds rules, whatever it is called", () => {
    expect(wasteOf({ bath: { role: "stop", holds: [{ what: "h2o2", percentWv: 3 }] } }).vessel).toBe("usedBleach");
  });
});
