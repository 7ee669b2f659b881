import * as exposure from "@captray/science/exposure";
import {
  fNumber,
  list,
  notNegative,
  number,
  object,
  optional,
  orNull,
  pair,
  positive,
  preset,
  text,
  time,
  truth,
  whole,
  word,
} from "../declare/fields.ts";
import { type Formula, formula } from "./formula.ts";

const timeS = time("Time given.");
const meteredTimeS = time("Time by the meter.");
const exponentLimits = { above: 0.5, most: 1, code: "exponentOutOfRange" };
const exponent = number("", "Schwarzschild's exponent, from a test of this paper.", exponentLimits);
const fromS = preset(1, positive("s", "Up to this time the paper obeys the meter."));
const openings = whole("", "How many openings of the cap.", { least: 1 });
const magnification = preset(0, notNegative("", "Size of the image by size of the subject; 0 for a distant subject."));
const pupilRatio = preset(1, positive("", "Exit pupil by entrance pupil."));

const capTimeKeys = {
  readingTimeS: time("Time the meter says, taken as written."),
  exposureIndex: positive("", "Exposure index of the paper."),
  fNumber: fNumber("F-number of the lens, at infinity."),
  readingFNumber: optional(fNumber("F-number the meter was read at. Default: fNumber.")),
  dialIso: optional(positive("", "ISO on the meter's dial. Default: exposureIndex.")),
  magnification,
  pupilRatio,
  neutralDensity: preset(0, notNegative("", "Density of the neutral filter.")),
  filterStops: preset(0, number("stops", "Other filters.")),
  placeStops: preset(0, number("stops", "How far above (+) or below (−) mid the reading is placed.")),
  actinicStops: preset(0, number("stops", "What the paper sees more than the meter in this light.")),
  transmission: preset(
    0.9,
    number("", "Share of the light the lens lets through.", { above: 0, most: 1, codeAbove: "transmissionOutOfRange" }),
  ),
  reciprocityExponent: preset(1, number("", "Schwarzschild's exponent; 1: none.", exponentLimits)),
  reciprocityFromS: preset(1, positive("s", "Up to this time the paper obeys the meter.")),
};

const answerS = (words: string) => number("s", words);
const answerStops = (words: string) => number("stops", words);

/** The functions of the exposure folder. */
export const exposureFormulas: readonly Formula[] = [
  formula({
    name: "reciprocityTime",
    does: "The time to give when the metered one is so long that the paper grows slower.",
    input: object({ meteredTimeS, exponent, fromS }),
    output: answerS("Time to give."),
    source: "reciprocity-article",
    codes: ["exponentOutOfRange"],
    example: { meteredTimeS: 60, exponent: 0.9 },
    call: exposure.reciprocityTime,
  }),
  formula({
    name: "reciprocityEffectiveTime",
    does: "What a long time is worth to the paper, in seconds that the meter would understand.",
    input: object({ timeS, exponent, fromS }),
    output: answerS("Effective time."),
    source: "reciprocity-article",
    codes: ["exponentOutOfRange"],
    example: { timeS: 94.6, exponent: 0.9 },
    call: exposure.reciprocityEffectiveTime,
  }),
  formula({
    name: "reciprocityFromTable",
    does: "The time to give, from a paper's own table of metered and needed seconds.",
    input: object({
      meteredTimeS,
      table: list(
        pair(positive("s", "Metered."), positive("s", "Needed."), "Metered and needed seconds."),
        "Rows [metered, needed] in seconds, both rising.",
        { leastItems: 2 },
      ),
    }),
    output: object({
      timeS: answerS("Time to give."),
      extrapolated: truth("Whether it lies beyond the last row."),
    }),
    source: "none",
    codes: ["tableNotRising"],
    example: {
      meteredTimeS: 40,
      table: [
        [1, 1],
        [10, 14],
        [100, 200],
      ],
    },
    call: exposure.reciprocityFromTable,
  }),
  formula({
    name: "openingsEffectiveTime",
    does: "What several openings of the cap are worth to the paper together.",
    input: object({
      openings,
      openingTimeS: time("How long the cap is off each time."),
      exponent,
      fromS,
      rule: preset(
        "asOne",
        word(["asOne", "each"], "Whether dark gaps repair nothing, or every opening starts fresh."),
      ),
    }),
    output: answerS("Effective time."),
    source: "reciprocity-article, none",
    codes: ["exponentOutOfRange"],
    example: { openings: 4, openingTimeS: 15, exponent: 0.9 },
    call: exposure.openingsEffectiveTime,
  }),
  formula({
    name: "stopsFromDensity",
    does: "What a neutral filter of a given density costs.",
    input: object({ density: notNegative("", "Density of the filter.") }),
    output: answerStops("Loss."),
    source: "photometry, none",
    example: { density: 0.9 },
    call: exposure.stopsFromDensity,
  }),
  formula({
    name: "stopsFromFactor",
    does: "What a filter's factor costs.",
    input: object({ factor: positive("", "Factor of time.") }),
    output: answerStops("Loss."),
    source: "none",
    example: { factor: 8 },
    call: exposure.stopsFromFactor,
  }),
  formula({
    name: "capTime",
    does: "From a meter's time to the time with the cap off, factor by factor.",
    input: object(capTimeKeys),
    output: answerS("Time with the cap off."),
    source: "apex, greivenkamp-2004, iso-12232, reciprocity-article",
    codes: ["exponentOutOfRange", "transmissionOutOfRange"],
    example: { readingTimeS: 2, exposureIndex: 3, dialIso: 6, fNumber: 8, magnification: 0.5 },
    call: exposure.capTime,
  }),
  formula({
    name: "timingErrorStops",
    does: "What a slip of the hand costs.",
    input: object({ timeS, errorS: number("s", "Given too long (+) or too short (−).") }),
    output: answerStops("Too much (+) or too little (−)."),
    source: "none",
    codes: ["noExposureLeft"],
    example: { timeS: 2, errorS: -0.3 },
    call: exposure.timingErrorStops,
  }),
  formula({
    name: "timingSdStops",
    does: "The doubt of a hand-timed exposure, in stops.",
    input: object({ timeS, sdS: notNegative("s", "Standard deviation of the time.") }),
    output: answerStops("One standard deviation."),
    source: "none",
    codes: ["noExposureLeft"],
    example: { timeS: 6, sdS: 0.3 },
    call: exposure.timingSdStops,
  }),
  formula({
    name: "handSd",
    does: "How evenly a hand keeps a time with the cap.",
    input: object({
      timeS,
      motorSdS: preset(0.1, notNegative("s", "Scatter of the movement itself.")),
      weber: preset(0.05, notNegative("", "The share that grows with the time.")),
    }),
    output: number("s", "One standard deviation."),
    source: "lewis-miall-2009, none",
    example: { timeS: 6 },
    call: exposure.handSd,
  }),
  formula({
    name: "capEffectiveTime",
    does: "What an opening is worth when the cap itself takes time to go and to come.",
    input: object({
      timeS: time("From the start of uncovering to the end of covering."),
      uncoverS: notNegative("s", "Time the cap takes to go."),
      coverS: notNegative("s", "Time the cap takes to come."),
    }),
    output: answerS("Effective time."),
    source: "none",
    codes: ["noExposureLeft"],
    example: { timeS: 2, uncoverS: 0.3, coverS: 0.2 },
    call: exposure.capEffectiveTime,
  }),
  formula({
    name: "openingsTiming",
    does: "What it costs to give a time in several openings instead of one.",
    input: object({
      timeS: time("The whole time, all openings together."),
      openings,
      openingSdS: notNegative("s", "Scatter of one opening."),
      openingBiasS: preset(0, number("s", "What one opening is given too long (+) on the whole.")),
    }),
    output: object({
      sdStops: answerStops("Standard deviation of the whole."),
      biasStops: answerStops("Bias of the whole."),
    }),
    source: "none",
    codes: ["noExposureLeft"],
    example: { timeS: 12, openings: 4, openingSdS: 0.15, openingBiasS: -0.1 },
    call: exposure.openingsTiming,
  }),
  formula({
    name: "combineStops",
    does: "Several independent doubts as one.",
    input: object({ sdStops: list(notNegative("stops", "One doubt."), "Standard deviations, in stops.") }),
    output: answerStops("One standard deviation."),
    source: "none",
    example: { sdStops: [0.1, 0.15, 0.3] },
    call: exposure.combineStops,
  }),
  formula({
    name: "shortestTime",
    does: "The shortest time a hand can give honestly.",
    input: object({
      errorS: positive("s", "How far the hand may be out."),
      toleranceStops: positive("stops", "How much that may cost, on the short side."),
    }),
    output: answerS("Shortest time."),
    source: "none",
    example: { errorS: 0.3, toleranceStops: 0.5 },
    call: exposure.shortestTime,
  }),
  formula({
    name: "timeLevers",
    does: "What would make a time that is too short for the cap long enough: each lever does it alone.",
    input: object({
      timeS: time("Time that would be needed."),
      minimumTimeS: time("Shortest time the cap can give."),
      magnification,
      pupilRatio,
    }),
    output: object({
      stops: answerStops("Stops to lose."),
      neutralDensity: number("", "Density of a neutral filter."),
      lightFraction: number("", "Share of the light."),
      magnification: number("", "Magnification whose extension costs as much."),
      fNumberFactor: number("", "Factor of the f-number."),
      lampDistanceFactor: number("", "Factor of the lamp's distance."),
    }),
    source: "greivenkamp-2004, photometry",
    example: { timeS: 0.4, minimumTimeS: 2, magnification: 0.2 },
    call: exposure.timeLevers,
  }),
  formula({
    name: "findSlips",
    does: "Which slip of mental arithmetic would explain a time that differs from the right one.",
    input: object({
      ...capTimeKeys,
      clickStops: preset(1, positive("stops", "The size of a click of the dial.")),
      markedFNumber: preset(null, orNull(fNumber("The number on the mount of a lens that was measured; null: none."))),
      saidTimeS: time("The time that was worked out, literal."),
      roundingS: preset(null, orNull(positive("s", "To what it was rounded; null: 1 s from 2 s up, else 0.5 s."))),
    }),
    output: object({
      trueTimeS: answerS("The right time."),
      offStops: answerStops("Said against right."),
      sdStops: answerStops("What rounding alone explains."),
      verdict: word(["agrees", "slip", "unknown"], "What is most probable."),
      unknownShare: number("", "Probability that no known slip explains it."),
      ranked: list(
        object({
          slips: list(text("Name of a slip."), "The slips; none is agreement."),
          share: number("", "Probability."),
          stops: answerStops("What they would do."),
        }),
        "The four best, most probable first.",
      ),
    }),
    source: "none",
    codes: ["exponentOutOfRange", "transmissionOutOfRange"],
    example: { readingTimeS: 2, exposureIndex: 3, dialIso: 6, fNumber: 8, magnification: 0.5, saidTimeS: 6 },
    call: exposure.findSlips,
  }),
];
