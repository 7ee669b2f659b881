import * as learn from "@captray/science/learn";
import { list, number, object, orNull, positive, preset, whole, word } from "../declare/fields.ts";
import { intervalOf } from "../declare/intervalOf.ts";
import { type Formula, formula } from "./formula.ts";

const margin = preset(0.03, positive("", "Smallest difference of density that matters."));

function rate(description: string) {
  return object(
    { value: number("", "Mean."), low: number("", "Nine in ten: from."), high: number("", "To.") },
    { description },
  );
}

/** The functions of the learn folder. */
export const learnFormulas: readonly Formula[] = [
  formula({
    name: "effectVerdict",
    does: "Whether one change made a difference, made none, or cannot be told yet.",
    input: object({
      difference: number("", "Density after, less density before."),
      sd: positive("", "Its standard deviation."),
      degreesOfFreedom: preset<number | null>(
        null,
        orNull(number("", "Degrees of freedom; null where the scatter is known.", { least: 1, code: "outOfRange" })),
      ),
      margin,
    }),
    output: object({
      pNoChange: number("", "Of two one-sided tests against the margin."),
      pDifferent: number("", "Of the test against no difference."),
      interval: intervalOf("Nine in ten."),
      interval95: intervalOf("95 in a hundred."),
      verdict: word(["noChangeSeen", "changed", "changedButLess", "cannotTellYet"], "What can be said."),
    }),
    source: "schuirmann-1987, none",
    example: { difference: -0.05, sd: 0.02 },
    call: learn.effectVerdict,
  }),
  formula({
    name: "pairsNeeded",
    does: "How many pairs of prints it takes to show that a change changes nothing.",
    input: object({
      pairSd: number("", "Spread of the difference of one pair, in density.", { least: 0 }),
      margin,
      alpha: preset(
        0.05,
        number("", "Chance of missing a change of just the margin.", { least: 1e-12, most: 0.5, code: "outOfRange" }),
      ),
      power: preset(
        0.8,
        number("", "Chance of showing that nothing changed.", { least: 0, most: 1 - 1e-12, code: "outOfRange" }),
      ),
    }),
    output: whole("", "Pairs of prints."),
    source: "schuirmann-1987, none",
    example: { pairSd: 0.03 },
    call: learn.pairsNeeded,
  }),
  formula({
    name: "compareFaults",
    does: "Whether a fault comes more often with one way of handling than with another, from few sheets.",
    input: object({
      firstFaults: whole("", "Sheets with the fault, first way.", { least: 0 }),
      firstSheets: whole("", "Sheets handled the first way.", { above: 0, most: 1000, codeAbove: "outOfRange" }),
      secondFaults: whole("", "Sheets with the fault, second way.", { least: 0 }),
      secondSheets: whole("", "Sheets handled the second way.", { above: 0, most: 1000, codeAbove: "outOfRange" }),
    }),
    output: object({
      firstRate: number("", "Share with the fault, first way."),
      secondRate: number("", "Share with the fault, second way."),
      difference: number("", "First less second."),
      interval95: intervalOf("Of the difference, 95 in a hundred."),
      fisherTwoSided: number("", "Fisher's exact test."),
      firstWorse: number("", "Probability that the first way is worse."),
      first: rate("Belief of the first rate."),
      second: rate("Belief of the second rate."),
    }),
    source: "newcombe-1998, wilson-1927, fisher-exact",
    codes: ["moreFaultsThanSheets"],
    example: { firstFaults: 5, firstSheets: 8, secondFaults: 1, secondSheets: 9 },
    call: learn.compareFaults,
  }),
  formula({
    name: "runsTest",
    does: "Whether neighbours err to the same side more often than chance would have it.",
    input: object({
      signs: list(
        number("", "1 or −1.", { least: -1, most: 1, notZero: true, code: "outOfRange" }),
        "Signs of the residuals, in order of exposure.",
        { leastItems: 1 },
      ),
    }),
    output: object({
      runs: whole("", "Runs of like signs."),
      positive: whole("", "How many are 1."),
      negative: whole("", "How many are −1."),
      pFew: number("", "Probability of so few runs or fewer."),
      pTwoSided: number("", "Of so few or so many: twice the smaller tail."),
    }),
    source: "wald-wolfowitz-1940",
    example: { signs: [1, 1, 1, 1, -1, -1, -1, -1] },
    call: learn.runsTest,
  }),
];
