import { kinds, list, number, object, orNull, text, truth, whole, word } from "../declare/fields.ts";
import { intervalOf, uncertain } from "../declare/intervalOf.ts";

const interval = intervalOf();

const parameter = object({
  value: number("", "In natural units."),
  interval,
  fitted: uncertain("", "On the scale of learning."),
  learnt: number("", "1 − (sd now ÷ sd before)²; below 0.2 the prints say nothing about this yet."),
});

/** The answer of `fit`. */
export const fitOutput = object({
  objective: number("", "Least value of what is made least."),
  scatterScale: number("", "Scatter of the patches, by the usual one."),
  timingScale: number("", "Doubt of the light of the sheets, by the one given."),
  parameters: object(
    {
      x50: parameter,
      width: parameter,
      q: parameter,
      S: parameter,
      a0: parameter,
      m1: parameter,
      m2: parameter,
      k1: parameter,
      s: parameter,
      Db: parameter,
      vd: parameter,
      fr: parameter,
      phi: parameter,
    },
    { description: "The curve." },
  ),
  offsets: list(
    object({ sheet: text("Its code."), stops: uncertain("stops", "Light it got beyond what was counted.") }),
    "The sheets.",
  ),
  patches: list(
    object({
      sheet: text("Code of its sheet."),
      kind: word(["image", "black", "fogged", "base", "baseProcessed", "bleachOnly"], "How it was treated."),
      fitted: number("", "Density at the optimum."),
      residual: number("", "Measured less fitted, in its deviations."),
      leverage: number("", "How far it decides its own value."),
      flagged: truth("Whether it lies beyond chance."),
    }),
    "The patches, in the order given.",
  ),
  runs: orNull(
    object({
      runs: whole("", "Runs of like signs."),
      positive: whole("", "Residuals above 0."),
      negative: whole("", "Residuals below 0."),
      pFew: number("", "Probability of so few runs or fewer."),
      pTwoSided: number("", "Of so few or so many."),
    }),
  ),
  effectiveParameters: number("", "How many numbers the prints decide."),
  covariance: list(list(number("", "Covariance."), "One row."), "Of the thirteen parameters, then of the sheets."),
  predicted: list(
    object({
      density: uncertain("", "Density expected."),
      curveSd: number("", "Doubt of the curve alone."),
      interval,
    }),
    "The patches of predict, in the order given.",
  ),
  exposureIndex: orNull(object({ value: number("", "Exposure index."), sdStops: number("stops", "Its doubt.") })),
  iso: orNull(
    object({
      minDensity: number("", "Thinnest density."),
      maxDensity: number("", "Densest."),
      logToe: number("log10 lx·s", "Toe."),
      logSpeedPoint: number("log10 lx·s", "Speed point."),
      logShoulder: number("log10 lx·s", "Shoulder."),
      speed: number("", "ISO P, not rounded."),
      range: number("", "ISO R, not rounded."),
      averageGradient: number("", "Average gradient."),
    }),
  ),
  warnings: list(
    kinds("kind", [
      object({
        kind: word(
          ["sdAssumed", "duplicatePatch", "outlier", "leverageHigh", "underBase", "aboveCap"],
          "What to look out for, of a patch.",
        ),
        patch: whole("", "Its place in the input, from 0."),
      }),
      object({
        kind: word(["allSaturated", "sheetOff"], "What to look out for, of a sheet."),
        sheet: text("Its code."),
      }),
      object({
        kind: word(["onePatch", "sameExposures", "curveMisses", "contradictory"], "What to look out for, of all."),
      }),
    ]),
    "What to look out for.",
  ),
});
