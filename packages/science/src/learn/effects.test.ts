import fc from "fast-check";
import { expect, it, test } from "vitest";
import peer from "../../fixtures/learn/effects.json" with { type: "json" };
import { compareFaults } from "./compareFaults.ts";
import { effectsOfChange } from "./effectsOfChange.ts";
import { type EffectVerdictInput, effectVerdict } from "./effectVerdict.ts";
import { pairsNeeded } from "./pairsNeeded.ts";
import { runsTest } from "./runsTest.ts";

function expectAlike(value: unknown, wanted: unknown, within: number, at = ""): void {
  if (typeof wanted === "number") expect(Math.abs(Number(value) - wanted), at).toBeLessThan(within);
  else if (typeof wanted === "object" && wanted !== null) {
    for (const [key, inner] of Object.entries(wanted)) {
      expectAlike((value as Record<string, unknown>)[key], inner, within, `${at}/${key}`);
    }
  } else expect(value, at).toBe(wanted);
}

it("one change: probabilities, intervals and verdicts of eight cases [peer: scipy.stats]", () => {
  for (const { in: input, ...wanted } of peer.effectVerdict) {
    expectAlike(effectVerdict(input as EffectVerdictInput), wanted, 1e-9, JSON.stringify(input));
  }
});

test("flash 3 to 6 s: shadows changed, highlights no change, mid cannot tell yet [worked out by hand with tables of t and z]", () => {
  const shadows = effectVerdict({ difference: -0.05, sd: 0.02 });
  expect(shadows.verdict).toBe("changed");
  expect(shadows.interval95.low).toBeCloseTo(-0.0892, 4);
  expect(effectVerdict({ difference: 0.012, sd: 0.008 }).verdict).toBe("noChangeSeen");
  const mid = effectVerdict({ difference: 0.02, sd: 0.015, degreesOfFreedom: 4 });
  expect(mid.verdict).toBe("cannotTellYet");
  expect(mid.pNoChange).toBeCloseTo(0.2707, 4);
});

test("no change seen exactly where the nine-in-ten interval lies inside the margin [property, fixed seed]", () => {
  fc.assert(
    fc.property(
      fc.double({ min: -0.2, max: 0.2, noNaN: true }),
      fc.double({ min: 1e-4, max: 0.1, noNaN: true }),
      fc.option(fc.double({ min: 1, max: 100, noNaN: true })),
      (difference, sd, degreesOfFreedom) => {
        const { pNoChange, interval, verdict, pDifferent } = effectVerdict({ difference, sd, degreesOfFreedom });
        const inside = interval.low > -0.03 && interval.high < 0.03;
        expect(verdict === "noChangeSeen" || verdict === "changedButLess").toBe(inside);
        if (Math.abs(pNoChange - 0.05) > 1e-9) expect(pNoChange < 0.05).toBe(inside);
        expect(Number.isFinite(pNoChange + pDifferent + interval.low + interval.high)).toBe(true);
      },
    ),
    { seed: 20261125, numRuns: 500 },
  );
});

it("pairs needed to show that nothing changed [peer: scipy.stats]", () => {
  for (const { in: input, out } of peer.pairsNeeded) expect(pairsNeeded(input)).toBe(out);
});

it("faults against handling: Fisher, chance to be worse, Newcombe's interval, beliefs [peer: scipy.stats, adaptive quadrature]", () => {
  for (const { in: input, ...wanted } of peer.compareFaults) {
    expectAlike(compareFaults(input), wanted, 1e-7, JSON.stringify(input));
  }
});

test("who is first does not matter [property, fixed seed]", () => {
  const count = fc.integer({ min: 1, max: 40 });
  fc.assert(
    fc.property(count, count, fc.nat(40), fc.nat(40), (firstSheets, secondSheets, a, b) => {
      const [firstFaults, secondFaults] = [a % (firstSheets + 1), b % (secondSheets + 1)];
      const one = compareFaults({ firstFaults, firstSheets, secondFaults, secondSheets });
      const other = compareFaults({
        firstFaults: secondFaults,
        firstSheets: secondSheets,
        secondFaults: firstFaults,
        secondSheets: firstSheets,
      });
      expect(one.firstWorse + other.firstWorse).toBeCloseTo(1, 8);
      expect(one.fisherTwoSided).toBeCloseTo(other.fisherTwoSided, 10);
      expect(one.interval95.low).toBeCloseTo(-other.interval95.high, 12);
      expect(one.interval95.low).toBeLessThanOrEqual(one.difference + 1e-12);
    }),
    { seed: 20261125, numRuns: 200 },
  );
});

it("runs, against every order of the signs counted [peer: counting]", () => {
  for (const { in: input, runs, pFew, pTwoSided } of peer.runsTest) {
    const found = runsTest(input);
    expect(found.runs).toBe(runs);
    expect(found.pFew).toBeCloseTo(pFew, 11);
    expect(found.pTwoSided).toBeCloseTo(pTwoSided, 11);
  }
});

it.each<[string, () => unknown, string]>([
  [
    "more faults than sheets",
    () => compareFaults({ firstFaults: 3, firstSheets: 2, secondFaults: 0, secondSheets: 2 }),
    "moreFaultsThanSheets",
  ],
  [
    "no sheets",
    () => compareFaults({ firstFaults: 0, firstSheets: 0, secondFaults: 0, secondSheets: 2 }),
    "notPositive",
  ],
  ["no sign", () => runsTest({ signs: [] }), "tooFew"],
  ["a sign of 2", () => runsTest({ signs: [1, 2] }), "outOfRange"],
  ["no scatter", () => effectVerdict({ difference: 0, sd: 0 }), "notPositive"],
])("%s is refused", (_, ask, code) => {
  expect(ask).toThrow(expect.objectContaining({ code }));
});

const pair = (before: number, after: number, sd = 0.01) => ({
  before: { value: before, sd },
  after: { value: after, sd },
});

test("one pair: se² = sd² + sd² + 2 (patch² + (slope · timing)²) [by hand]", () => {
  const { areas } = effectsOfChange({ areas: [{ area: "hull", pairs: [pair(0.8, 0.7)], stopSlope: -0.3 }] });
  const [hull] = areas;
  expect(hull?.difference.value).toBeCloseTo(-0.1, 12);
  expect(hull?.difference.sd).toBeCloseTo(Math.sqrt(2 * 0.0001 + 2 * (0.0004 + 0.045 ** 2)), 12);
  expect([hull?.degreesOfFreedom, hull?.verdict]).toEqual([null, "cannotTellYet"]);
  expect(hull?.pairsNeeded).toBe(pairsNeeded({ pairSd: hull?.difference.sd ?? 0 }));
});

test("three pairs: the larger of their spread and the known scatter, two degrees [by hand]", () => {
  const pairs = [pair(1, 0.9), pair(1, 0.8), pair(1, 0.7)];
  const [area] = effectsOfChange({ areas: [{ area: "hull", pairs }] }).areas;
  expect(area?.difference.value).toBeCloseTo(-0.2, 12);
  expect(area?.difference.sd).toBeCloseTo(0.1 / Math.sqrt(3), 12);
  expect(area?.degreesOfFreedom).toBe(2);
  const [calm] = effectsOfChange({ areas: [{ area: "hull", pairs: [pair(1, 0.9), pair(1, 0.9)] }] }).areas;
  expect(calm?.difference.sd).toBeCloseTo(Math.sqrt(0.001) / Math.sqrt(2), 12);
});

test("Holm over three areas: three times the least, twice the next, never falling [holm-1979, by hand]", () => {
  const areas = [0.05, 0.1, 0.2].map((by) => ({ area: String(by), pairs: [pair(1, 1 + by, 0.02)] }));
  const found = effectsOfChange({ areas }).areas;
  const p = found.map(({ pDifferent }) => pDifferent);
  expect(found.map(({ pDifferentHolm }) => pDifferentHolm)).toEqual([
    expect.closeTo(Math.max(p[0] ?? 0, 2 * (p[1] ?? 0), 3 * (p[2] ?? 0)), 14),
    expect.closeTo(Math.max(2 * (p[1] ?? 0), 3 * (p[2] ?? 0)), 14),
    expect.closeTo(3 * (p[2] ?? 0), 14),
  ]);
});

test("no change anywhere only where each area shows it", () => {
  const still = { area: "snow", pairs: Array.from({ length: 20 }, () => pair(0.3, 0.3)) };
  expect(effectsOfChange({ areas: [still] }).noChangeAnywhere).toBe(true);
  expect(effectsOfChange({ areas: [still, { area: "hull", pairs: [pair(0.8, 0.79)] }] }).noChangeAnywhere).toBe(false);
});

it.each<[string, () => unknown, string]>([
  ["no area", () => effectsOfChange({ areas: [] }), "tooFew"],
  ["no pair", () => effectsOfChange({ areas: [{ area: "hull", pairs: [] }] }), "tooFew"],
  [
    "no scatter at all",
    () => effectsOfChange({ areas: [{ area: "hull", pairs: [pair(1, 1, 0)] }], patchSd: 0 }),
    "notPositive",
  ],
])("%s is refused", (_, ask, code) => {
  expect(ask).toThrow(expect.objectContaining({ code }));
});
