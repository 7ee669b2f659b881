import fc from "fast-check";
import { expect, it, test } from "vitest";
import peer from "../../fixtures/learn/effects.json" with { type: "json" };
import { compareFaults } from "./compareFaults.ts";
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
