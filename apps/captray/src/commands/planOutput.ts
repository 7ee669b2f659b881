import { kinds, list, number, object, optional, orNull, text, word } from "../declare/fields.ts";

const stops = number("stops", "More time (+) or less (−).");
const estimate = object({ value: stops, sd: number("stops", "One standard deviation.") });
const warning = kinds("kind", [
  object({
    kind: word(["tooShortForCap"], "The time is shorter than a hand can give."),
    timeS: number("s", "The time."),
    shortestS: number("s", "The shortest that is honest."),
  }),
  object({
    kind: word(["reciprocityExtrapolated"], "The table of the paper ends before this time."),
    meteredTimeS: number("s", "The time by the meter."),
  }),
  object({
    kind: word(["pupilRatioUnusual"], "The pupil ratio lies outside 0.3…3."),
    pupilRatio: number("", "The ratio."),
  }),
]);

const said = object(
  {
    verdict: word(["agrees", "slip", "unknown"], "What is most probable."),
    offStops: number("stops", "Said against right."),
    sdStops: number("stops", "What rounding alone explains."),
    unknownShare: number("", "Probability that no known slip explains it."),
    ranked: list(
      object({
        slips: list(text("Name of a slip."), "The slips; none is agreement."),
        share: number("", "Probability."),
        stops: number("stops", "What they would do."),
      }),
      "The four best, most probable first.",
    ),
  },
  { description: "What became of the time that was worked out; null without one." },
);

/** The answer of `plan`. */
export const planOutput = object({
  timeS: number("s", "Time with the cap off."),
  timeStops: object({
    value: number("stops", "log2 of the time in s."),
    sd: number("stops", "One standard deviation."),
  }),
  timeIntervalS: object({ low: number("s", "Nine in ten lie above."), high: number("s", "and below.") }),
  optics: object({
    fNumber: number("", "F-number at infinity."),
    magnification: orNull(number("", "On the paper; null for a pinhole.")),
    extensionMm: number("mm", "Extension."),
    effectiveFNumber: number("", "F-number on the paper."),
  }),
  ledger: list(
    object({
      line: word(
        [
          "reading",
          "place",
          "aperture",
          "extension",
          "exposureIndex",
          "transmission",
          "filters",
          "colourOfLight",
          "longExposure",
          "hand",
        ],
        "Name of the line.",
      ),
      stops: estimate,
      ground: text("One sentence with the numbers."),
    }),
    "All ten lines, in this order.",
  ),
  areas: list(
    object({
      area: text("Name."),
      ev100: number("EV", "Less offsetStops."),
      aboveMidStops: number("stops", "Above (+) or below (−) mid."),
      exposureLxS: number("lx·s", "On the paper."),
      logExposure: number("", "log10 of it."),
    }),
    "Every reading with a name.",
  ),
  sceneRangeStops: number("stops", "Greatest less least of the kind of the ground."),
  byHand: object({
    how: word(["oneOpening", "tooShort"], "Whether a hand can give it."),
    shortestS: number("s", "The shortest time that is honest."),
    countS: optional(number("s", "What to count; not if too short.")),
    countErrorStops: optional(number("stops", "What that costs; not if too short.")),
  }),
  levers: orNull(
    object(
      {
        stops: number("stops", "Stops to lose."),
        neutralDensity: number("", "Density of a neutral filter."),
        lightFraction: number("", "Share of the light."),
        magnification: orNull(number("", "Magnification; null for a pinhole.")),
        fNumber: number("", "F-number."),
        lampDistanceFactor: number("", "Factor of the lamp's distance."),
      },
      { description: "What would each alone make it long enough; null unless it is too short." },
    ),
  ),
  said: orNull(said),
  warnings: list(warning, "What to know besides."),
  assumed: list(text("JSON Pointer."), "Every key with a default that was not given."),
});
