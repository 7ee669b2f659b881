import * as measure from "@captray/science/measure";
import {
  list,
  notNegative,
  number,
  object,
  optional,
  pair,
  positive,
  preset,
  presetObject,
  whole,
  word,
} from "../declare/fields.ts";
import { type Formula, formula } from "./formula.ts";

const curve = word(["srgb", "linear", "gamma1.8", "gamma2.2"], "How codes stand for light.");
const numbers = (description: string) => list(number("", description), description);
const density = number("", "Density.");
const reflectance = positive("", "Reflectance, 0 to 1.");
const surrounds = {
  gain: number("", "Share of the page's light that comes back onto the page.", {
    least: 0,
    below: 1,
    code: "cavityImpossible",
  }),
  surround: number("", "Mean reflectance around.", { least: 0, most: 1 }),
  calibrationSurround: number("", "Mean reflectance around the grey scale.", { least: 0, most: 1 }),
};
const doubted = { value: number("", "Density."), sd: notNegative("", "Its standard deviation.") };
const points = (description: string, least = 0) =>
  list(pair(number("px", "x"), number("px", "y"), "A point."), description, { leastItems: least });
const picture = (description: string) => list(numbers("A row."), description, { leastItems: 2 });

/** The functions of the measure folder. */
export const measureFormulas: readonly Formula[] = [
  formula({
    name: "densityFromCode",
    does: "Scan density from the code of a pixel.",
    input: object({
      code: number("", "The code.", { least: 0, code: "codeOutOfRange" }),
      maxCode: positive("", "The highest code."),
      curve,
      black: preset(0, number("", "Linear light of a known black, of 1.")),
      white: preset(1, number("", "Linear light of the paper's white, of 1.")),
      whiteDensity: preset(0, number("", "Density of that white.")),
    }),
    output: density,
    source: "iso-5, srgb",
    codes: ["atOrBelowBlack", "codeOutOfRange"],
    example: { code: 118, maxCode: 255, curve: "srgb" },
    call: measure.densityFromCode,
  }),
  formula({
    name: "isotonic",
    does: "The rising list nearest to one that should rise.",
    input: object({ values: numbers("Values."), weights: optional(list(positive("", "Weight."), "Weights.")) }),
    output: numbers("The rising list."),
    source: "pooled-violators",
    codes: ["listsDiffer"],
    example: { values: [0.05, 0.12, 0.11, 0.3] },
    call: measure.isotonic,
  }),
  formula({
    name: "monotoneCubic",
    does: "A smooth curve through points that keeps their shape.",
    input: object({
      x: numbers("Places, rising."),
      y: numbers("Values there."),
      at: numbers("Places to be told, inside."),
    }),
    output: numbers("Values."),
    source: "fritsch-butland-1984",
    codes: ["listsDiffer", "outOfRange", "notRising", "tooFew"],
    example: { x: [0, 1, 3], y: [0, 1, 1.5], at: [0.5, 2] },
    call: measure.monotoneCubic,
  }),
  formula({
    name: "quantisation",
    does: "What one code is worth in density.",
    input: object({
      density: notNegative("", "Density."),
      bits: whole("", "8 or 16.", { least: 8, most: 16 }),
      curve,
    }),
    output: object({ stepDensity: density, rmsDensity: density }),
    source: "uniform-quantisation, srgb",
    example: { density: 1, bits: 8, curve: "srgb" },
    call: measure.quantisation as (input: {
      density: number;
      bits: number;
      curve: measure.ToneCurve;
    }) => measure.Quantisation,
  }),
  formula({
    name: "cavityApparent",
    does: "What a scanner reads of a patch whose surround lights it.",
    input: object({ reflectance, ...surrounds }),
    output: reflectance,
    source: "us-5790281, none",
    codes: ["cavityImpossible"],
    example: { reflectance: 0.18, gain: 0.1, surround: 0.8, calibrationSurround: 0.2 },
    call: measure.cavityApparent,
  }),
  formula({
    name: "cavityTrue",
    does: "The reflectance of a patch, its surround's light taken off.",
    input: object({ apparent: reflectance, ...surrounds }),
    output: reflectance,
    source: "us-5790281, none",
    codes: ["cavityImpossible"],
    example: { apparent: 0.1917391, gain: 0.1, surround: 0.8, calibrationSurround: 0.2 },
    call: measure.cavityTrue,
  }),
  formula({
    name: "cavityGain",
    does: "How strongly a scanner's page lights itself, from one patch in two masks.",
    input: object({
      apparentWhiteSurround: reflectance,
      apparentBlackSurround: reflectance,
      whiteSurround: number("", "Mean reflectance of the white mask.", { least: 0, most: 1 }),
      blackSurround: number("", "Mean reflectance of the black mask.", { least: 0, most: 1 }),
    }),
    output: number("", "Gain."),
    source: "none",
    codes: ["cavityImpossible"],
    example: { apparentWhiteSurround: 0.19, apparentBlackSurround: 0.178, whiteSurround: 0.85, blackSurround: 0.05 },
    call: measure.cavityGain,
  }),
  formula({
    name: "removeVeil",
    does: "The reflectance of a patch below an even veil of stray light.",
    input: object({
      apparent: reflectance,
      share: number("", "Share of the page's light that lies over every part of it.", { least: 0, below: 1 }),
      meanReflectance: number("", "Of the page.", { least: 0, most: 1 }),
    }),
    output: reflectance,
    source: "none",
    codes: ["atOrBelowBlack"],
    example: { apparent: 0.0148, share: 0.01, meanReflectance: 0.5 },
    call: measure.removeVeil,
  }),
  formula({
    name: "patchStandardError",
    does: "The standard error of a patch's mean, its pixels alike.",
    input: object({
      pixelSd: notNegative("", "Standard deviation of the pixels."),
      columns: whole("", "Pixels across.", { least: 1 }),
      rows: whole("", "Pixels down.", { least: 1 }),
      correlationX: number("", "Likeness to the neighbour across.", { least: 0, below: 1 }),
      correlationY: number("", "Likeness to the neighbour below.", { least: 0, below: 1 }),
    }),
    output: object({
      standardError: number("", "Of the mean."),
      effectivePixels: number("", "As many independent ones say as much."),
    }),
    source: "autocorrelated-mean",
    example: { pixelSd: 0.02, columns: 100, rows: 100, correlationX: 0.5, correlationY: 0.3 },
    call: measure.patchStandardError,
  }),
  formula({
    name: "densityStandardError",
    does: "The standard error of a density, from that of its reflectance.",
    input: object({ reflectance, reflectanceSd: notNegative("", "Of the reflectance.") }),
    output: density,
    source: "none",
    example: { reflectance: 0.1, reflectanceSd: 0.0005 },
    call: measure.densityStandardError,
  }),
  formula({
    name: "trimmedMean",
    does: "The mean of a patch without its darkest and lightest pixels.",
    input: object({
      values: numbers("Pixels."),
      share: number("", "Left out at each end.", { least: 0, below: 0.5 }),
    }),
    output: object({ mean: number("", "Mean."), standardError: number("", "Of the mean.") }),
    source: "tukey-mclaughlin-1963",
    codes: ["tooFew"],
    example: { values: [0.5, 0.51, 0.49, 0.52, 0.48, 0.5, 0.51, 0.95, 0.49, 0.02], share: 0.1 },
    call: measure.trimmedMean,
  }),
  formula({
    name: "densityDifference",
    does: "How much darker one print is than another, with its doubt.",
    input: object({
      first: object(doubted, { description: "One print." }),
      second: object(doubted, { description: "The other." }),
      offset: presetObject(
        object(
          { value: preset(0, number("", "Density.")), sd: preset(0, notNegative("", "Its standard deviation.")) },
          { description: "What the second scan reads more of one tone." },
        ),
      ),
    }),
    output: object({
      value: number("", "Second less first less offset."),
      sd: number("", "Its standard deviation."),
      z: number("", "Value over sd."),
      interval95: object({ low: number("", "Low."), high: number("", "High.") }),
    }),
    source: "none",
    example: {
      first: { value: 1.05, sd: 0.008 },
      second: { value: 1.1, sd: 0.006 },
      offset: { value: 0.01, sd: 0.005 },
    },
    call: measure.densityDifference,
  }),
  formula({
    name: "dryFromWet",
    does: "The density a wet print will have when dry, by a person's own pairs.",
    input: object({
      wetDensity: density,
      knots: numbers("Wet densities, rising."),
      shifts: numbers("How much darker dry."),
    }),
    output: density,
    source: "none",
    codes: ["listsDiffer", "notRising", "tooFew"],
    example: { wetDensity: 0.3, knots: [0.1, 0.5], shifts: [0.04, 0.02] },
    call: measure.dryFromWet,
  }),
  formula({
    name: "flatField",
    does: "Density from a photograph of a print and one of a plain card in its place.",
    input: object({
      sample: number("", "Linear code of the print."),
      dark: number("", "Of the capped lens."),
      flat: number("", "Of the card."),
      flatDensity: number("", "Density of the card."),
    }),
    output: density,
    source: "none",
    codes: ["atOrBelowBlack"],
    example: { sample: 8200, dark: 512, flat: 52000, flatDensity: 0.05 },
    call: measure.flatField,
  }),
  formula({
    name: "stepStrip",
    does: "Where the steps of a strip lie, their number known.",
    input: object({
      profile: numbers("Means across the strip, one a pixel along it."),
      count: whole("", "Steps.", { least: 2, code: "tooFew" }),
      minWidthPx: whole("px", "Least width of a step.", { least: 1 }),
    }),
    output: object({
      startPx: number("px", "Start of the first."),
      widthPx: number("px", "Width of each."),
      means: numbers("Of the middle of each."),
    }),
    source: "none",
    codes: ["tooFew"],
    example: { profile: [9, 1, 1, 1, 1, 3, 3, 3, 3, 5, 5, 5, 5, 9], count: 3, minWidthPx: 3 },
    call: measure.stepStrip,
  }),
  formula({
    name: "phaseShift",
    does: "How far one picture is shifted against another.",
    input: object({ first: picture("Rows of one."), second: picture("Rows of the other, of the same size.") }),
    output: object({ downPx: number("px", "Down."), rightPx: number("px", "To the right.") }),
    source: "kuglin-hines-1975",
    codes: ["listsDiffer", "tooFew"],
    example: {
      first: [
        [9, 1, 2],
        [3, 7, 1],
        [2, 2, 5],
      ],
      second: [
        [2, 9, 1],
        [1, 3, 7],
        [5, 2, 2],
      ],
    },
    call: measure.phaseShift,
  }),
  formula({
    name: "homography",
    does: "Where points of one picture of a flat thing lie in another.",
    input: object({
      from: points("Four points or more of one picture.", 4),
      to: points("The same in the other.", 4),
      at: points("Points of the first to be found."),
    }),
    output: points("Points in the second."),
    source: "hartley-1997",
    codes: ["pointsNearlyOnALine", "listsDiffer", "tooFew"],
    example: {
      from: [
        [0, 0],
        [100, 0],
        [100, 80],
        [0, 80],
      ],
      to: [
        [10, 5],
        [112, 9],
        [108, 92],
        [8, 84],
      ],
      at: [[50, 40]],
    },
    call: measure.homography,
  }),
];
