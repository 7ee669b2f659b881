import {
  anyKeys,
  list,
  notNegative,
  number,
  numberOr,
  object,
  optional,
  positive,
  preset,
  text,
  whole,
  word,
} from "../declare/fields.ts";
import { curveNumber, face, faceWays, flashS, settings } from "../declare/toneKeys.ts";

function parameter(name: Parameters<typeof curveNumber>[0]) {
  const value = curveNumber(name);
  return optional(numberOr(value, object({ value, sd: notNegative("", "Doubt, on the scale of learning.") })));
}

const curve = object(
  {
    x50: parameter("x50"),
    width: parameter("width"),
    q: parameter("q"),
    S: parameter("S"),
    a0: parameter("a0"),
    m1: parameter("m1"),
    m2: parameter("m2"),
    k1: parameter("k1"),
    s: parameter("s"),
    Db: parameter("Db"),
    vd: parameter("vd"),
    fr: parameter("fr"),
    phi: parameter("phi"),
  },
  { description: "The curve: each a number, taken as certain, or {value, sd}; left out, as assumed, with that doubt." },
);

function wanted(description: string) {
  return object(
    {
      area: text("Name of one of the areas."),
      density: optional(
        number("", "Density wanted. Default: that of defaultWants, for this curve and these settings."),
      ),
    },
    { description },
  );
}

/** The input of `expect`. */
export const expectInput = object(
  {
    areas: list(
      object({
        area: text("Name of the area, unlike all others."),
        logExposure: number("log10 lx·s", "Image light, as plan gives it."),
        sdStops: preset(0.15, notNegative("stops", "Doubt of this area alone.")),
      }),
      "The areas.",
      { leastItems: 1 },
    ),
    curve: optional(curve),
    fit: optional(anyKeys("The whole answer of fit, instead of a curve and of an exposure index.")),
    paper: optional(
      object(
        {
          exposureIndex: positive("", "Exposure index."),
          exposureIndexSdStops: preset(0.7, notNegative("stops", "Its doubt.")),
        },
        { description: "Places the curve where nothing else says its x50." },
      ),
    ),
    ...settings,
    flashS: preset(0, flashS),
    meanLogExposure: optional(
      number("log10 lx·s", "Mean image exposure of the frame, which flare comes from. Default: the mean of the areas."),
    ),
    ...face,
    lensCoating: preset("coated", word(["coated", "uncoated"], "What is assumed of flare: 0.02 or 0.05.")),
    commonSdStops: optional(
      notNegative("stops", "Doubt that moves all areas together. Default: 0.15, with a fit times its timingScale."),
    ),
    patchSd: optional(
      notNegative("", "Unevenness of a patch, in density. Default: 0.02, with a fit times its scatterScale."),
    ),
    draws: preset(
      400,
      whole("", "How many papers are drawn for the intervals; 0: linear.", { least: 0, most: 100_000 }),
    ),
    seed: preset(1, whole("", "Seed of the drawing.")),
    wanted: optional(
      object(
        {
          highlight: wanted("The white; in a negative, the dense end."),
          shadow: wanted("The black; in a negative, the thin end."),
        },
        { description: "Tones to plan exposure and flash for." },
      ),
    ),
  },
  { ways: faceWays },
);
