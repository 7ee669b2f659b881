import { planDefaults } from "@captray/science/exposure";
import {
  exposureValue,
  fNumber,
  kinds,
  lightSource,
  list,
  notNegative,
  number,
  object,
  optional,
  pair,
  positive,
  preset,
  presetObject,
  tacit,
  text,
  time,
  truth,
  word,
} from "../declare/fields.ts";

const { lens, pinhole, focus, paper, reading, place, meter, filter, hand } = planDefaults;

const glassWords = ["standard", "simple", "none"] as const;
const transmission = number("", "Share of the light that passes.", {
  above: 0,
  most: 1,
  codeAbove: "transmissionOutOfRange",
});
const transmissionSdStops = notNegative("stops", "Doubt of the transmission.");
const glass = word(glassWords, "The glass: standard, old thin glass, or none.");

const lensInput = kinds("kind", [
  object(
    {
      kind: tacit(preset("lens", word(["lens"], "A lens."))),
      focalLengthMm: positive("mm", "Focal length."),
      fNumber: optional(fNumber("F-number at infinity.")),
      diameterMm: optional(positive("mm", "Entrance pupil, instead of fNumber.")),
      pupilRatio: preset(lens.pupilRatio, positive("", "Exit pupil by entrance pupil.")),
      transmission: preset(lens.transmission, transmission),
      transmissionSdStops: preset(lens.transmissionSdStops, transmissionSdStops),
      apertureSdStops: preset(
        lens.apertureSdStops,
        notNegative(
          "stops",
          `Doubt of the aperture; ${lens.markedApertureSdStops} where fNumber is a text that is a mark.`,
        ),
      ),
      markedFNumber: optional(fNumber("The number on the mount of a lens that was measured.")),
      glass: preset(lens.glass, glass),
    },
    { ways: { choices: [{ lead: "fNumber" }, { lead: "diameterMm" }] } },
  ),
  object({
    kind: word(["pinhole"], "A pinhole."),
    holeMm: positive("mm", "Diameter of the hole."),
    extensionMm: positive("mm", "From the hole to the paper."),
    transmission: preset(pinhole.transmission, transmission),
    transmissionSdStops: preset(pinhole.transmissionSdStops, transmissionSdStops),
    apertureSdStops: preset(pinhole.apertureSdStops, notNegative("stops", "Doubt of the hole.")),
    glass: preset(pinhole.glass, glass),
  }),
]);

const focusInput = object(
  {
    extensionMm: optional(positive("mm", "From the rear principal plane (about the lens board) to the paper.")),
    travelMm: optional(number("mm", "Travel past the infinity mark.", { least: 0, code: "travelNegative" })),
    magnification: optional(notNegative("", "Size of the image by size of the subject.")),
    imageSizeMm: optional(positive("mm", "A length on the ground glass, with subjectSizeMm.")),
    subjectSizeMm: optional(positive("mm", "The same length of the subject.")),
    subjectDistanceMm: optional(positive("mm", "From the subject to the front principal plane.")),
    totalDistanceMm: optional(positive("mm", "From the subject to the paper.")),
    hiatusMm: preset(focus.hiatusMm, number("mm", "Separation of the principal planes, with totalDistanceMm.")),
    larger: preset(focus.larger, truth("Take the lens position that enlarges, with totalDistanceMm.")),
    sdStops: preset(focus.sdStops, notNegative("stops", "Doubt of the extension; 0 where the magnification is 0.")),
  },
  {
    description: "How near the subject is, in exactly one way; without it the subject is distant.",
    ways: {
      choices: [
        { lead: "extensionMm" },
        { lead: "travelMm" },
        { lead: "magnification" },
        { lead: "imageSizeMm", needs: ["subjectSizeMm"] },
        { lead: "subjectDistanceMm" },
        { lead: "totalDistanceMm", mayHave: ["hiatusMm", "larger"] },
      ],
      strays: ["subjectSizeMm", "hiatusMm", "larger"],
    },
  },
);

const paperInput = object(
  {
    exposureIndex: positive("", "Exposure index; may lie far below the dial."),
    exposureIndexSdStops: preset(
      paper.exposureIndexSdStops,
      notNegative(
        "stops",
        "Doubt of the index: guessed 0.70, told 0.50, own step test 0.30, three measured sheets 0.15.",
      ),
    ),
    sensitivity: preset(
      paper.sensitivity,
      word(
        ["blue", "chloride", "chlorobromide", "bromide", "orthochromatic", "variableContrast"],
        "What the paper sees; blue is a chlorobromide of unknown make.",
      ),
    ),
    reciprocity: optional(
      object(
        {
          exponent: optional(
            number("", "Schwarzschild's exponent.", { above: 0.5, most: 1, code: "exponentOutOfRange" }),
          ),
          fromS: preset(paper.reciprocity.fromS, positive("s", "Up to this time the paper obeys the meter.")),
          table: optional(
            list(
              pair(positive("s", "Metered."), positive("s", "Needed."), "Metered and needed seconds."),
              "Rows [metered, needed] in seconds, both rising.",
              { leastItems: 2 },
            ),
          ),
        },
        {
          description: "How the paper fails at long times; without it nobody has tested it.",
          ways: { choices: [{ lead: "exponent", mayHave: ["fromS"] }, { lead: "table" }] },
        },
      ),
    ),
    foundWith: optional(
      object(
        {
          source: optional(lightSource("The light it was found in:")),
          glass: optional(word(glassWords, "The glass it was found with.")),
          transmission: optional(transmission),
        },
        { description: "Given where the index was found with own sheets; a key left out means as now." },
      ),
    ),
  },
  { description: "The paper." },
);

const readingInput = object(
  {
    area: optional(text("Name of the area, unlike all others.")),
    kind: preset(reading.kind, word(["reflected", "incident"], "Kind of reading; with illuminanceLx always incident.")),
    timeS: optional(time("Time the meter says; a text that is a dial mark means its exact member.")),
    fNumber: optional(fNumber("F-number of the reading, with timeS.")),
    iso: optional(positive("", "ISO of the dial, with timeS or ev.")),
    ev: optional(exposureValue("EV at that ISO.")),
    ev100: optional(exposureValue("EV at ISO 100.")),
    luminanceCdM2: optional(positive("cd/m²", "Luminance.")),
    illuminanceLx: optional(positive("lx", "Illuminance.")),
  },
  {
    description: "One reading, in exactly one way.",
    ways: {
      choices: [
        { lead: "timeS", needs: ["fNumber", "iso"] },
        { lead: "ev", needs: ["iso"] },
        { lead: "ev100" },
        { lead: "luminanceCdM2" },
        { lead: "illuminanceLx" },
      ],
    },
    suits: {
      key: "kind",
      choices: (given) => {
        if (Object.hasOwn(given, "illuminanceLx")) return ["incident"];
        return Object.hasOwn(given, "luminanceCdM2") ? ["reflected"] : ["reflected", "incident"];
      },
    },
  },
);

/** The input of `plan`, key by key in the order in which faults are told. */
export const planInput = object({
  lens: lensInput,
  focus: optional(focusInput),
  paper: paperInput,
  readings: list(readingInput, "What the meter said.", { leastItems: 1, codeFew: "noReadings" }),
  place: presetObject(
    object(
      {
        area: optional(text("That reading is the ground; without it the mean of all.")),
        stops: preset(place.stops, number("stops", "The ground stands so far above (+) or below (−) mid.")),
      },
      { description: "On which reading the exposure is based." },
    ),
  ),
  meter: presetObject(
    object(
      {
        meterK: preset(meter.meterK, positive("", "Calibration constant for reflected light.")),
        meterC: preset(meter.meterC, positive("", "Calibration constant for incident light.")),
        sdStops: preset(
          meter.sdStops,
          notNegative("stops", `Doubt of the meter; ${meter.incidentSdStops} for an incident reading.`),
        ),
        readingSdStops: preset(meter.readingSdStops, notNegative("stops", "Doubt of one reading.")),
        offsetStops: preset(meter.offsetStops, number("stops", "The meter shows that much too much light.")),
        clickStops: preset(meter.clickStops, positive("stops", "The size of a click of its dial.")),
      },
      { description: "The meter." },
    ),
  ),
  filters: optional(
    list(
      object(
        {
          name: optional(text("Name of the filter.")),
          neutralDensity: optional(notNegative("", "Density of a neutral filter.")),
          factor: optional(positive("", "Factor of time.")),
          stops: optional(number("stops", "Loss.")),
          sdStops: preset(filter.sdStops, notNegative("stops", "Doubt of the loss.")),
        },
        { ways: { choices: [{ lead: "neutralDensity" }, { lead: "factor" }, { lead: "stops" }] } },
      ),
      "Filters over the lens.",
    ),
  ),
  light: optional(
    object(
      { source: lightSource("The light of the scene:") },
      { description: "Without it the light of the exposure index, daylight for a told one." },
    ),
  ),
  hand: presetObject(
    object(
      {
        biasS: preset(hand.biasS, number("s", "What the hand gives too long (+) on the whole.")),
        motorSdS: preset(hand.motorSdS, notNegative("s", "Scatter of the movement itself.")),
        weber: preset(hand.weber, notNegative("", "The share of its scatter that grows with the time.")),
        errorS: preset(hand.errorS, positive("s", "How far the hand may be out.")),
        toleranceStops: preset(hand.toleranceStops, positive("stops", "How much that may cost.")),
      },
      { description: "The hand on the cap." },
    ),
  ),
  saidTimeS: optional(time('"I worked it out as", literal; then said is answered.')),
  saidRoundingS: optional(positive("s", "To what that was rounded; without it 1 s from 2 s up, else 0.5 s.")),
});
