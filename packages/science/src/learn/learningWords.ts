import type { FitWarning } from "./fitTypes.ts";
import type { NextSheet } from "./nextTypes.ts";

/** What a fit warns of, or why no further test is called for. */
export type LearningKind = FitWarning["kind"] | NonNullable<NextSheet["stop"]>["kind"];

export interface LearningWordsInput {
  readonly kind: LearningKind;
  /** The patch or sheet it is about, as a person calls it: “hull on W30”. */
  readonly of?: string | undefined;
}

export interface LearningWords {
  /** What is so. */
  readonly message: string;
  /** What to do. */
  readonly hint: string;
}

const WORDS: { readonly [Kind in LearningKind]: (it: string) => LearningWords } = {
  sdAssumed: (it) => ({
    message: `No error is known of ${it || "a patch"}: 0.02 is taken.`,
    hint: "Measure it three times, and its error comes with it.",
  }),
  duplicatePatch: (it) => ({
    message: `${capital(it || "a patch")} stands there twice, with the same light.`,
    hint: "If it was measured twice, average the two; counted twice it looks surer than it is.",
  }),
  onePatch: () => ({
    message: "One patch is all there is: it moves the curve and shapes nothing.",
    hint: "Measure three areas at least, from the light ones to the dark ones.",
  }),
  allSaturated: (it) => ({
    message: `Every tone of ${it || "a sheet"} is at an end of the paper, all white or all black: it says nothing of the curve between.`,
    hint: "Give the next sheet three stops more or less, or a step test.",
  }),
  sameExposures: () => ({
    message: "All areas had the same light: the curve's place can be learnt from them, its steepness cannot.",
    hint: "Measure areas that differ by some stops, or give a step test.",
  }),
  underBase: (it) => ({
    message: `${capital(it || "a patch")} is lighter than the bare paper of this fit.`,
    hint: "Measure the bare paper on the same sheet; a scan may have been set by a whiter white.",
  }),
  aboveCap: (it) => ({
    message: `${capital(it || "a patch")} is darker than the shine of this surface allows.`,
    hint: "Look whether the finish is right, and whether the patch was measured dry.",
  }),
  outlier: (it) => ({
    message: `${capital(it || "a patch")} lies beyond chance, and hardly counts in the fit.`,
    hint: "Look at it for a scratch, dust or a wrong area; if it is sound, keep it.",
  }),
  sheetOff: (it) => ({
    message: `${capital(it || "a sheet")} got more or less light than was counted, by twice its doubt or more.`,
    hint: "Look at its ledger: a stop, a dial read wrongly, the cap.",
  }),
  leverageHigh: (it) => ({
    message: `${capital(it || "a patch")} alone decides something of the curve.`,
    hint: "Its error becomes the curve's: a second patch near it would check it.",
  }),
  curveMisses: () => ({
    message: "Neighbouring patches err to the same side: the curve of this family misses the shape of the paper.",
    hint: "Trust it between the patches, not beyond; a step test shows where it bends.",
  }),
  contradictory: () => ({
    message: "The prints contradict each other: they scatter more than twice as much as patches do.",
    hint: "Look for a sheet of another paper, bath or measuring among them.",
  }),
  reached: () => ({
    message: "You have it: the tones wanted are expected within the tolerance, and known that well.",
    hint: "Make the picture.",
  }),
  notWorthThePaper: () => ({
    message: "More tests will not pay: no candidate is expected to bring the tones nearer by 0.01.",
    hint: "Make the picture with the best settings, or want other tones.",
  }),
  limitReached: () => ({
    message: "This paper and process cannot reach these tones, and that is known well enough.",
    hint: "See what the whites are grey from, and change that; or want tones within reach.",
  }),
};

/**
 * The sentence for what a fit warns of and for why to stop: what is so, then what to do.
 *
 * Method   one table from kind to words, for every screen that shows them.
 * Units    densities and stops.
 * Holds    for every kind; without a name it speaks of a patch or a sheet.
 *
 * @source none: words of the trade (common practice)
 * @example learningWords({ kind: "onePatch" }).hint // "Measure three areas at least, from the light ones to the dark ones."
 */
export function learningWords({ kind, of = "" }: LearningWordsInput): LearningWords {
  return WORDS[kind](of);
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
