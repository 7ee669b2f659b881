import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { expectAlike, expectRefusal, seeded } from "../../fixtures/chemistry/checking.ts";
import { type BathPart, bathPours } from "./bathPours.ts";
import { bathPrior } from "./bathPrior.ts";
import { bathVolume } from "./bathVolume.ts";
import { type BathWearInput, bathWear } from "./bathWear.ts";
import { halideAdvice } from "./halideAdvice.ts";
import { readRatio } from "./readRatio.ts";
import { readStrength } from "./readStrength.ts";

const citric: BathPart = { kind: "solid", what: "citric", gramsPerL: 20, have: "C6H8O7.H2O" };
const peroxide = (have: number, want: number): BathPart => ({
  kind: "solution",
  what: "peroxide",
  have: { value: have, basis: "percentWw" },
  want: { value: want, basis: "percentWv" },
});
const acetic = (have: number, want: number): BathPart => ({
  kind: "solution",
  what: "acetic",
  have: { value: have, basis: "percentWv" },
  want: { value: want, basis: "percentWv" },
});

describe("what to weigh and pour", () => {
  const bleach = bathPours({ volumeMl: 750, beside: [], parts: [peroxide(9, 3), citric] });
  if (bleach.kind !== "pours") throw new Error("refused");

  test("a mixed bleach: water and acid first, peroxide last [common practice; amounts by hand]", () => {
    expect(bleach.pours.map(({ what }) => what)).toEqual(["water", "C6H8O7.H2O", "peroxide"]);
    // 20 g/L of the dry acid as monohydrate, 30 g/L out of 9 % of density 1.0314.
    expectAlike(bleach.pours[1]?.amount.value, 15 * (210.138 / 192.123));
    expectAlike(bleach.pours[2]?.amount.value, 22.5 / 0.09 / 1.0314);
    expectAlike(bleach.waterMl, 750 - 22.5 / 0.09 / 1.0314);
    expectAlike(bleach.firstWaterMl, 0.75 * bleach.waterMl);
    expect(bleach.steps.at(-2)).toContain("Last of all");
    expect(bleach.advice).toEqual(["deionisedWater", "peroxideLast", "lastHour"]);
  });

  test("the cautions are those of the bottle in hand, what the bath holds those of the bath", () => {
    expect(bleach.cautions[0]?.id).toBe("ox-eye8");
    expect(bleach.holds.find(({ substance }) => substance === "h2o2")?.percentWw).toBeCloseTo(2.97, 2);
  });

  test.each<[string, BathPart[], string, number | null]>([
    ["a bath stronger than its bottle", [citric, peroxide(3, 6)], "targetStrongerThanStock", 1],
    ["a tray of 20 % peroxide", [peroxide(35, 20)], "mixRefused", 0],
    ["strong acetic acid with peroxide", [acetic(80, 2), peroxide(9, 3)], "mixRefused", 1],
    ["acid on sulfite", [{ kind: "solid", what: "Na2SO3", gramsPerL: 20, have: "Na2SO3" }, citric], "mixRefused", 1],
    ["another salt", [{ kind: "solid", what: "Na2SO3", gramsPerL: 20, have: "KBr" }], "notTheSameSalt", 0],
    ["pure peroxide by weight", [{ kind: "solid", what: "H2O2", gramsPerL: 20, have: "H2O2" }], "mixRefused", 0],
    [
      "stocks that overfill the tray",
      [{ kind: "stock", name: "developer", parts: 0 }, acetic(5, 4)],
      "targetStrongerThanStock",
      null,
    ],
    ["minus parts", [{ kind: "stock", name: "developer", parts: -1 }], "negative", 0],
  ])("%s is refused with a way on", (_, parts, code, part) => {
    const answer = bathPours({ volumeMl: 750, parts });
    expect(answer).toMatchObject({ kind: "refused", code, part });
    if (answer.kind === "refused") expect(answer.way).toMatch(/\.$/);
  });

  test("no volume is no bath", () => {
    expectRefusal(() => bathPours({ volumeMl: 0, parts: [] }), "notPositive", "volumeMl");
  });

  test("liquids and water fill the volume [property]", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 50, max: 4000, noNaN: true }),
        fc.double({ min: 0.5, max: 6, noNaN: true }),
        (volumeMl, want) => {
          const answer = bathPours({
            volumeMl,
            parts: [peroxide(12, want), citric, { kind: "stock", name: "wetting", parts: 99 }],
          });
          if (answer.kind !== "pours") throw new Error(answer.code);
          const ml = answer.pours
            .filter(({ amount }) => amount.unit === "mL")
            .reduce((sum, { amount }) => sum + amount.value, 0);
          expectAlike(ml, volumeMl);
        },
      ),
      seeded,
    );
  });
});

describe("how much", () => {
  test("8x10 in with 20 mm around and 10 mm deep is 715 mL [common practice: about 715]", () => {
    expect(bathVolume({ widthMm: 203.2, heightMm: 254 }).volumeMl).toBeCloseTo(715, 0);
  });

  test("the paper of the evening may ask for more than the tray [by hand]", () => {
    const answer = bathVolume({ widthMm: 101.6, heightMm: 127, areaM2: 1.2, areaM2L: 0.8 });
    expect(answer).toMatchObject({ volumeMl: 1500, by: "area" });
    expect(bathVolume({ widthMm: 101.6, heightMm: 127, areaM2: 0.01, areaM2L: 0.8 }).by).toBe("tray");
  });
});

describe("what stands on a label", () => {
  test.each<[string, object]>([
    ["20 vol", { kind: "strength", value: 20, basis: "volumes" }],
    ["10 Volumes", { kind: "strength", value: 10, basis: "volumes" }],
    ["3% w/v", { kind: "strength", value: 3, basis: "percentWv" }],
    ["11,9 % (".replace(" (", " w/w"), { kind: "strength", value: 11.9, basis: "percentWw" }],
    ["30 g/L", { kind: "strength", value: 30, basis: "gramsPerL" }],
    ["0.5 M", { kind: "strength", value: 0.5, basis: "molar" }],
    ["5 g/100 ml", { kind: "strength", value: 5, basis: "percentWv" }],
    ["1+4", { kind: "ratio", parts: 4 }],
    ["vinegar", { kind: "unreadable", at: 0 }],
    ["12 % proof", { kind: "unreadable", at: 3 }],
    ["", { kind: "unreadable", at: 0 }],
  ])("%j", (text, wanted) => {
    expect(readStrength({ text, what: "peroxide" })).toMatchObject(wanted);
  });

  test("a bare 12 % and a bare 12 are asked about, never guessed", () => {
    const percent = readStrength({ text: "12 %", what: "peroxide" });
    expect(percent).toMatchObject({ kind: "askBasis", readings: [{ basis: "percentWv" }, { basis: "percentWw" }] });
    const bare = readStrength({ text: "12", what: "peroxide" });
    expect(bare).toMatchObject({ kind: "askBasis" });
    if (bare.kind === "askBasis") expect(bare.apart).toBeGreaterThan(3);
    // At 3 % the two differ by less than 2 %, at 35 % by 13 %: 1.0094 and 1.1327 by the table.
    const apart = (text: string) => {
      const read = readStrength({ text, what: "peroxide" });
      return read.kind === "askBasis" ? read.apart : null;
    };
    expect(apart("3 %")).toBeLessThan(1.02);
    expect(apart("35 %")).toBeCloseTo(1.1327, 4);
  });

  test("a bare 1:5 is asked about with both ways of writing it", () => {
    expect(readStrength({ text: "1:5" })).toMatchObject({
      kind: "askRatio",
      readings: [{ text: "1+5" }, { text: "1+4" }],
    });
    expect(readRatio({ text: "1:1" })).toMatchObject({ readings: [{ parts: 1 }, { parts: 0 }] });
  });

  test("volumes are read of peroxide only", () => {
    expect(readStrength({ text: "20 vol", what: "acetic" }).kind).toBe("unreadable");
  });
});

describe("halide in the bleach", () => {
  const sheet = { areaM2: 0.0129032, bathMl: 500, sheets: 1 } as const;

  test("a tray of tap water of 50 mg/L holds more chloride than a 4x5 sheet silver [peer: runners/chemistry.py]", () => {
    const { fromWater, advice } = halideAdvice({ ...sheet, paperBase: "rc", waterChlorideMgL: 50, rinsedTo: 0 });
    expect(fromWater).toMatchObject({ value: 1, high: 1 });
    expect(advice).toContain("deionisedWater");
  });

  test("unrinsed, an RC sheet brings about 2 % and a fibre sheet about 10 % [peer: runners/chemistry.py, 15 and 80 mL/m²]", () => {
    const rc = halideAdvice({ ...sheet, paperBase: "rc", waterChlorideMgL: 0 });
    const fibre = halideAdvice({ ...sheet, paperBase: "fibre", waterChlorideMgL: 0 });
    expect(rc.fromDeveloper.value).toBeCloseTo(0.0181288 * (Math.sqrt(250) / 15), 5);
    expect(fibre.fromDeveloper.value).toBeCloseTo(0.0966867 * (Math.sqrt(6000) / 80), 4);
    expect(fibre.advice).toEqual(["rinseMore"]);
  });

  test("deionised and well rinsed there is nothing to do; unknown water is a wide range, not nothing", () => {
    const clean = halideAdvice({ ...sheet, paperBase: "rc", waterChlorideMgL: 0, rinsedTo: 0.05 });
    expect(clean.advice).toEqual(["nothingToDo"]);
    const unknown = halideAdvice({ ...sheet, paperBase: "rc", sheets: 20 });
    expect(unknown.fromWater.low).toBeGreaterThan(0);
    expect(unknown.fromWater.high / unknown.fromWater.low).toBeGreaterThan(3);
  });

  test("what is no sheet, no paper or no share is refused", () => {
    expectRefusal(() => halideAdvice({ ...sheet, paperBase: "glass" as "rc" }), "unknownWord", "paperBase");
    expectRefusal(() => halideAdvice({ ...sheet, paperBase: "rc", rinsedTo: 2 }), "outOfRange", "rinsedTo");
    expectRefusal(() => halideAdvice({ ...sheet, paperBase: "rc", sheets: 0 }), "notPositive", "sheets");
  });
});

describe("how worn a bath is", () => {
  const wear = (more: Partial<BathWearInput> = {}) =>
    bathWear({ role: "developer", ageH: 2, areaM2: 0.4, volumeL: 1, ...more });

  test("with halves that are known it is the plain model [peer: runners/chemistry.py]", () => {
    const { halvings, timeFactor } = bathWear({
      role: "peroxide",
      ageH: 2,
      areaM2: 0.258064,
      volumeL: 1,
      halfLifeH: { value: 4, sdLn: 0 },
      halfAreaM2L: { value: 0.5, sdLn: 0 },
    });
    expectAlike(halvings, { value: 1.016128, low: 1.016128, high: 1.016128 });
    expectAlike(timeFactor.value, 2 ** 1.016128);
  });

  test("a doubt of 0.7 in one half is a factor of 3.16 either way, nine in ten [by hand: e^(1.645 · 0.7)]", () => {
    const { halvings } = wear({ areaM2: 0 });
    // ±1 %: the grid ends at 3.6 standard deviations.
    expectAlike(halvings.high / halvings.value, Math.exp(1.645 * 0.7), 0.01);
    expectAlike(halvings.value / halvings.low, Math.exp(1.645 * 0.7), 0.01);
  });

  test("fresh is used, tired takes longer, spent is replaced", () => {
    expect(wear({ ageH: 0, areaM2: 0 })).toMatchObject({ verdict: "use", reasons: ["fresh"], wornShare: 0 });
    expect(wear({ ageH: 5, areaM2: 0.4 }).verdict).toBe("longer");
    expect(wear({ ageH: 5, areaM2: 2 })).toMatchObject({ verdict: "replace" });
    expect(wear({ ageH: 5, areaM2: 2 }).reasons[0]).toBe("area");
  });

  test("a first developer is replaced where an ordinary one is only given longer", () => {
    const tired = { ageH: 4, areaM2: 1 };
    expect(wear(tired).verdict).toBe("longer");
    expect(wear({ ...tired, role: "firstDeveloper" })).toMatchObject({ verdict: "replace" });
  });

  test("peroxide mixed with acid has a last hour, whatever it did, and none once nobody knows its age", () => {
    const mixed = { role: "acidAndPeroxide", areaM2: 0, volumeL: 1 } as const;
    expect(bathWear({ ...mixed, ageH: 0.5 })).toMatchObject({ verdict: "use", lastHourInH: 5.5 });
    expect(bathWear({ ...mixed, ageH: 6 })).toMatchObject({ verdict: "replace", reasons: ["pastLastHour", "age"] });
    expect(bathWear({ ...mixed, ageH: null })).toMatchObject({ verdict: "replace" });
    expect(bathWear({ ...mixed, ageH: 5.2, halfLifeH: { value: 40, sdLn: 0.1 } }).reasons).toContain("nearLastHour");
  });

  test("bubbles at the entry make a fresh bath doubtful", () => {
    expect(bathWear({ role: "peroxide", ageH: 0, areaM2: 0, volumeL: 1, bubbles: true })).toMatchObject({
      verdict: "longer",
      reasons: ["bubbles"],
    });
  });

  test("what nobody knows is a range, not nothing", () => {
    const unknown = wear({ ageH: null, areaM2: null });
    expect(unknown.reasons).toEqual(["ageUnknown", "areaUnknown"]);
    expect(unknown.halvings.low).toBeGreaterThan(0);
    expect(unknown.halvings.high / unknown.halvings.low).toBeGreaterThan(4);
    expect(unknown.wornInH).toBeNull();
    for (const one of [wear({ ageH: null, areaM2: 0 }), wear({ ageH: 0, areaM2: null })]) {
      expect(one.halvings.low).toBeGreaterThan(0);
    }
  });

  test("until worn: half a life from half of it, none beyond, less with paper [by hand]", () => {
    const known = { halfLifeH: { value: 8, sdLn: 0 }, halfAreaM2L: { value: 1, sdLn: 0 } };
    expectAlike(wear({ ...known, ageH: 4, areaM2: 0 }).wornInH, { value: 4, low: 4, high: 4 });
    expectAlike(wear({ ...known, ageH: 2, areaM2: 0.5 }).wornInH?.value, 2);
    expect(wear({ ...known, ageH: 9, areaM2: 0 }).wornInH?.value).toBe(0);
  });

  test("a strip moves what is believed towards what was seen, and narrows it", () => {
    const before = wear();
    const slow = wear({ strips: [{ ageH: 1.5, areaM2: 0.3, timeFactor: 2.2 }] });
    const quick = wear({ strips: [{ ageH: 1.5, areaM2: 0.3, timeFactor: 1 }] });
    expect(slow.halvings.value).toBeGreaterThan(before.halvings.value);
    expect(quick.halvings.value).toBeLessThan(before.halvings.value);
    for (const after of [slow, quick]) {
      expect(after.halvings.high / after.halvings.low).toBeLessThan(before.halvings.high / before.halvings.low);
    }
    expect(slow.reasons).toContain("stripsSaid");
  });

  test("many sure strips outvote the prior: the plain model comes back [by hand: n = 0.8 · t/2 h]", () => {
    const strips = [1, 2, 3].map((hours) => ({ ageH: hours, areaM2: 0, timeFactor: 2 ** (hours / 10), sdLn: 0.02 }));
    const { halvings, learnt } = wear({ ageH: 5, areaM2: 0, strips });
    expect(halvings.value).toBeCloseTo(0.5, 1);
    expect(Math.abs(Math.log(learnt.halfLifeH.value / 10))).toBeLessThan(0.1);
  });

  test("older, or with more paper, it is never fresher [property]", () => {
    const amount = fc.double({ min: 0, max: 12, noNaN: true });
    fc.assert(
      fc.property(amount, amount, amount, (ageH, areaM2, more) => {
        const base = wear({ ageH, areaM2 }).halvings;
        for (const later of [wear({ ageH: ageH + more, areaM2 }), wear({ ageH, areaM2: areaM2 + more })]) {
          expect(later.halvings.value).toBeGreaterThanOrEqual(base.value - 1e-12);
          expect(later.halvings.high).toBeGreaterThanOrEqual(base.high - 1e-12);
        }
      }),
      { ...seeded, numRuns: 60 },
    );
  });

  test("what cannot be is refused", () => {
    expectRefusal(() => wear({ ageH: -1 }), "negative", "ageH");
    expectRefusal(() => wear({ volumeL: 0 }), "notPositive", "volumeL");
    expectRefusal(() => wear({ role: "soup" as "stop" }), "unknownWord", "role");
    expectRefusal(
      () => wear({ strips: [{ ageH: 1, areaM2: 0, timeFactor: 0 }] }),
      "notPositive",
      "strips/0/timeFactor",
    );
    expectRefusal(() => wear({ strips: [{ ageH: -1, areaM2: 0, timeFactor: 1 }] }), "negative", "strips/0/ageH");
  });

  test("every prior is a doubt of a factor of two, and only the mixed bleach has a last hour [common practice]", () => {
    for (const role of [
      "developer",
      "stop",
      "acid",
      "peroxide",
      "acidAndPeroxide",
      "clear",
      "fix",
      "washAid",
    ] as const) {
      const { halfLifeH, halfAreaM2L, lastHourH } = bathPrior({ role });
      expect([halfLifeH.sdLn, halfAreaM2L.sdLn]).toEqual([0.7, 0.7]);
      expect(lastHourH === null).toBe(role !== "acidAndPeroxide");
    }
  });
});
