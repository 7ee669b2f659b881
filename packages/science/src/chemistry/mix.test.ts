import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { expectAlike, expectRefusal, seeded } from "../../fixtures/chemistry/checking.ts";
import { mix } from "./mix.ts";
import type { MixCompany, MixInput, MixStrength } from "./mixTypes.ts";

const peroxide = (have: number, want: number, more: Partial<MixStrength> = {}): MixInput => ({
  strength: {
    what: "peroxide",
    have: { value: have, basis: "percentWw" },
    want: { value: want, basis: "percentWv" },
    volumeMl: 600,
    ...more,
  },
});
const acetic = (have: number, want: number): MixInput => ({
  strength: {
    what: "acetic",
    have: { value: have, basis: "percentWv" },
    want: { value: want, basis: "percentWv" },
    volumeMl: 1000,
  },
});
const amounts = (input: MixInput) =>
  mix(input).pours.map((pour) => ("amountMl" in pour ? pour.amountMl : pour.amountG));

describe("ratios", () => {
  test("1+7 to 800 mL is 700 of water and 100 of stock [iso-78-2, by hand]", () => {
    expect(mix({ ratio: { text: "1+7", volumeMl: 800 } }).pours).toEqual([
      { what: "water", amountMl: 700 },
      { what: "stock", amountMl: 100 },
    ]);
  });

  test.each([
    ["1 + 1,5", 200],
    [" 1+1.5 ", 200],
    ["1+0", 500],
  ])("%j is read: %d of 500 mL is stock", (text, stockMl) => {
    expect(mix({ ratio: { text, volumeMl: 500 } }).pours[1]).toEqual({ what: "stock", amountMl: stockMl });
  });

  test("1:7 is asked about, with both results [common practice: it is read both ways]", () => {
    expect(() => mix({ ratio: { text: "1:7", volumeMl: 840 } })).toThrow(
      expect.objectContaining({
        code: "ratioAmbiguous",
        key: "ratio/text",
        facts: expect.objectContaining({ readings: ["1+7 is 105 mL of stock", "1+6 is 120 mL of stock"] }),
      }),
    );
  });

  test.each(["", "7", "1/7", "2+7", "1+", "1+seven", "1++7", "1+7+2", "1:0", "1+-7"])("%j is no ratio", (text) => {
    expectRefusal(() => mix({ ratio: { text, volumeMl: 500 } }), "unreadable", "ratio/text");
  });
});

describe("strengths", () => {
  test("11 % w/w to 600 mL of 3 % w/v: 3 · 6 / (0.11 · 1.0388) mL [by hand, the table between 10 and 12 %]", () => {
    const answer = mix(peroxide(11, 3));
    expectAlike(answer.pours, [{ amountMl: 600 - 18 / 0.11 / 1.0388 }, { amountMl: 18 / 0.11 / 1.0388 }]);
    expectAlike(answer.naiveMl, 600 * (3 / 11));
    expect(answer.classes).toEqual(["Eye Dam. 1"]);
    expect(answer.cautions[0]?.id).toBe("ox-eye8");
    expect(answer.cautions.at(-1)?.id).toBe("help");
  });

  test("vinegar of 5 % to a litre of stop of 1.5 % is 300 mL [common practice]", () => {
    expectAlike(amounts(acetic(5, 1.5)), [700, 300]);
    expect(mix(acetic(5, 1.5)).strengths).toMatchObject({
      percentWw: null,
      percentWv: 1.5,
      gramsPerL: 15,
      volumes: null,
    });
  });

  test("the bath is said in every way, the same as it was wanted", () => {
    const { strengths } = mix(peroxide(12, 20, { want: { value: 10, basis: "volumes" } }));
    expectAlike(strengths, { volumes: 10, percentWv: 3.035, molar: 0.8923 }, 1e-4);
  });

  test("a bare figure up to 6 is taken for w/v with a warning, above it is asked about", () => {
    const { warnings } = mix({ strength: { what: "acetic", have: { value: 6 }, want: { value: 1.5 }, volumeMl: 500 } });
    expect(warnings).toEqual([
      { kind: "basisAssumed", key: "have" },
      { kind: "basisAssumed", key: "want" },
    ]);
    expectRefusal(() => mix(peroxide(1, 3, { have: { value: 12 } })), "basisMissing", "strength/have/basis");
    expectRefusal(() => mix(peroxide(35, 3, { want: { value: 6.1 } })), "basisMissing", "strength/want/basis");
  });

  test.each<[string, MixInput, string, string]>([
    ["a bath stronger than the bottle", peroxide(3, 6), "targetStrongerThanStock", "strength/want/value"],
    ["150 % peroxide", peroxide(150, 3), "strengthOutOfRange", "strength/have/value"],
    [
      "600 g/L of peroxide",
      peroxide(3, 3, { have: { value: 600, basis: "gramsPerL" } }),
      "strengthOutOfRange",
      "strength/have/value",
    ],
    ["60 % w/v peroxide", peroxide(50, 60), "strengthOutOfRange", "strength/want/value"],
    ["no peroxide", peroxide(0, 3), "notPositive", "strength/have/value"],
    ["a negative volume", peroxide(12, 3, { volumeMl: -1 }), "notPositive", "strength/volumeMl"],
    [
      "acetic acid by weight in weight",
      {
        strength: {
          what: "acetic",
          have: { value: 80, basis: "percentWw" },
          want: { value: 2, basis: "percentWv" },
          volumeMl: 100,
        },
      },
      "densityUnknown",
      "strength/have/basis",
    ],
    [
      "volumes of vinegar",
      {
        strength: {
          what: "acetic",
          have: { value: 10, basis: "volumes" },
          want: { value: 2, basis: "percentWv" },
          volumeMl: 100,
        },
      },
      "unknownWord",
      "strength/have/basis",
    ],
    ["acetic acid of 150 %", acetic(150, 2), "strengthOutOfRange", "strength/have/value"],
    [
      "vinegar by a word",
      { strength: { what: "vinegar", have: { value: 5 }, want: { value: 1 }, volumeMl: 100 } },
      "unreadable",
      "strength/what",
    ],
  ])("%s is refused", (_, input, code, key) => {
    expectRefusal(() => mix(input), code, key);
  });

  test("peroxide by its formula is peroxide", () => {
    expect(amounts(peroxide(11, 3, { what: "H2O2" }))).toEqual(amounts(peroxide(11, 3)));
  });

  test("above 6 % w/v it warns of the gelatin, above 20 % of volumes that do not add [common practice]", () => {
    const kinds = (input: MixInput) => mix(input).warnings.map(({ kind }) => kind);
    expect(kinds(peroxide(12, 6))).toEqual([]);
    expect(kinds(peroxide(12, 6.1))).toEqual(["gelatinAtRisk"]);
    expect(kinds(peroxide(50, 21))).toEqual(["gelatinAtRisk", "volumesNotAdditive"]);
    expect(kinds(peroxide(50, 3, { volumeMl: 10 }))).toEqual(["tooSmallToMeasure"]);
  });

  test("what is poured fills the volume and holds what is wanted, whatever the bases [property]", () => {
    const strength = fc.record({
      value: fc.double({ min: 0.5, max: 50, noNaN: true }),
      basis: fc.constantFrom("percentWw" as const, "percentWv" as const, "gramsPerL" as const, "volumes" as const),
    });
    fc.assert(
      fc.property(strength, strength, fc.double({ min: 10, max: 5000, noNaN: true }), (have, want, volumeMl) => {
        const wvOf = (stated: typeof have) =>
          mix({ strength: { what: "peroxide", have: stated, want: stated, volumeMl: 1 } }).strengths?.percentWv ?? 0;
        if (wvOf(want) > wvOf(have)) return;
        const { pours, strengths } = mix({ strength: { what: "peroxide", have, want, volumeMl } });
        const [water = 0, stock = 0] = pours.map((pour) => ("amountMl" in pour ? pour.amountMl : 0));
        expectAlike(water + stock, volumeMl);
        expectAlike((stock * wvOf(have)) / volumeMl, wvOf(want), 1e-9);
        expectAlike(strengths?.percentWv, wvOf(want));
      }),
      seeded,
    );
  });
});

describe("solids", () => {
  test("20 g/L of sulfite from the heptahydrate: 40.0 g to the litre [peer: runners/chemistry.py]", () => {
    const answer = mix({ weigh: { formula: "Na2SO3", gramsPerL: 20, volumeMl: 1000, have: "Na2SO3.7H2O" } });
    expect(answer.pours[0]).toEqual({ what: "water", amountMl: 1000 });
    expectAlike(answer.pours[1], { amountG: 40.0108637 }, 1e-8);
    expect(answer.steps[0]).toContain("750 mL");
  });

  test("without `have` the jar holds what the recipe names", () => {
    expectAlike(amounts({ weigh: { formula: "C6H8O7", gramsPerL: 20, volumeMl: 500 } }), [500, 10]);
  });

  test.each<[MixInput["weigh"], string, string]>([
    [{ formula: "Na2SO3", gramsPerL: 20, volumeMl: 500, have: "Na2CO3" }, "notTheSameSalt", "weigh/have"],
    [{ formula: "Na2SO3", gramsPerL: 20, volumeMl: 500, have: "sulfite" }, "unreadable", "weigh/have"],
    [{ formula: "soda", gramsPerL: 20, volumeMl: 500 }, "unreadable", "weigh/formula"],
    [{ formula: "KBr", gramsPerL: 0, volumeMl: 500 }, "notPositive", "weigh/gramsPerL"],
    [{ formula: "KBr", gramsPerL: 2, volumeMl: -5 }, "notPositive", "weigh/volumeMl"],
    [{ formula: "H2O2", gramsPerL: 30, volumeMl: 500 }, "mixRefused", "weigh/formula"],
  ])("%j: %s at %s", (weigh, code, key) => {
    expectRefusal(() => mix(weigh === undefined ? {} : { weigh }), code, key);
  });
});

describe("what must stay apart [poison-centres; peracetic-article; general chemistry, from memory]", () => {
  const sulfite: MixInput = { weigh: { formula: "Na2SO3", gramsPerL: 20, volumeMl: 500 } };
  const citric: MixInput = { weigh: { formula: "C6H8O7", gramsPerL: 20, volumeMl: 500 } };
  const silver: MixInput = { weigh: { formula: "AgNO3", gramsPerL: 2, volumeMl: 500 } };
  const ratio: MixInput = { ratio: { text: "1+9", volumeMl: 500 } };

  test.each<[string, MixInput, MixCompany[], number]>([
    ["a stop and chlorine bleach", acetic(5, 1.5), ["hypochlorite"], 0],
    ["citric acid and chlorine bleach", citric, ["silver", "hypochlorite"], 1],
    ["peroxide and chlorine bleach", peroxide(9, 3), ["hypochlorite"], 0],
    ["peroxide and acetone", peroxide(9, 3), ["acetone"], 0],
    ["peroxide and alcohol", peroxide(9, 3), ["citric", "alcohol"], 1],
    ["sulfite and acid", sulfite, ["acetic"], 0],
    ["acid and fixer", citric, ["fixer"], 0],
    ["silver and ammonia", silver, ["ammonia"], 0],
    ["fixer and chlorine bleach, whatever is mixed", ratio, ["fixer", "hypochlorite"], 1],
    ["peroxide of 11 % and vinegar", peroxide(11, 3), ["acetic"], 0],
    ["vinegar of 28 % and peroxide", acetic(28, 2), ["peroxide"], 0],
  ])("%s is refused, with the reason and a safer way", (_, input, company, place) => {
    const call = () => mix({ ...input, with: company });
    expectRefusal(call, "mixRefused", `with/${place}`);
    expect(call).toThrow(
      expect.objectContaining({
        facts: expect.objectContaining({ reason: expect.stringMatching(/\.$/), way: expect.stringMatching(/\.$/) }),
      }),
    );
  });

  test("peroxide of 9 % and vinegar of 5 % may meet, with a caution and a last hour", () => {
    const answer = mix({ ...peroxide(9, 3), with: ["acetic"] });
    expect(answer.cautions.map(({ id }) => id)).toContain("ox-acetic");
    expect(answer.warnings).toContainEqual({ kind: "lastHour", hours: 6 });
    expect(mix({ ...acetic(5, 1.5), with: ["peroxide"] }).warnings).toContainEqual({ kind: "lastHour", hours: 6 });
  });

  test("peroxide with citric acid is the usual bleach, at any strength of the bottle", () => {
    expect(mix({ ...peroxide(35, 3), with: ["citric"] }).warnings).toContainEqual({ kind: "lastHour", hours: 6 });
  });
});

describe("acts", () => {
  const ids = (act: MixInput["act"]) =>
    mix({ ...peroxide(35, 3), ...(act === undefined ? {} : { act }) }).cautions.map(({ id }) => id);

  test("the bottle is in hand while mixing, the bath while running", () => {
    expect(ids("mix")).toContain("ox-35");
    expect(ids("run")).not.toContain("ox-35");
    expect(ids("run")).toContain("mains");
    expect(ids("discard")).toContain("waste-apart");
    expect(ids("finish")).toContain("ox-back");
    expect(ids("store")).toContain("ox-vent");
  });
});

test("one way, and only one", () => {
  expectRefusal(() => mix({}), "missingKey", "ratio");
  expectRefusal(
    () => mix({ ratio: { text: "1+7", volumeMl: 1 }, weigh: { formula: "KBr", gramsPerL: 1, volumeMl: 1 } }),
    "twoOfOne",
    "weigh",
  );
});

test("every step is a sentence, acid goes into water, peroxide comes last", () => {
  for (const input of [peroxide(11, 3), acetic(28, 2), { ratio: { text: "1+9", volumeMl: 750 } }]) {
    for (const step of mix(input).steps) expect(step).toMatch(/^[A-Z].*\.$/);
  }
  expect(mix(acetic(28, 2)).steps.join(" ")).toContain("never water into acid");
  expect(mix(peroxide(11, 3)).steps.at(-2)).toContain("Last of all");
});
