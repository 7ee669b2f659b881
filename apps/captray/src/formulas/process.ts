import * as process from "@captray/science/process";
import { list, notNegative, number, object, positive, preset, time, whole, wholeTime } from "../declare/fields.ts";
import { type Formula, formula } from "./formula.ts";

const bathC = number("°C", "Temperature of the bath.", { least: 14, most: 28, code: "temperatureOutOfRange" });
const referenceC = preset(20, number("°C", "Temperature that the time was written for."));
const factor = number("", "How many times faster 10 °C warmer.", { above: 1, most: 4 });
const q10 = preset(2, factor);
const share = number("", "From 0 to 1.", { least: 0, most: 1 });

const trays = list(
  object({
    timeS: wholeTime("From touching this bath to touching the next, drain included, in whole seconds."),
    sheets: preset(1, whole("", "How many sheets have room in this tray.", { least: 1 })),
  }),
  "The trays, in order.",
  { leastItems: 1 },
);
const handS = whole("s", "How long the hands need for one move.", { least: 0 });

/** The functions of the process folder. */
export const processFormulas: readonly Formula[] = [
  formula({
    name: "developmentTime",
    does: "How long to develop in a bath that is warmer or colder than the recipe says.",
    input: object({ timeS: time("Time at the reference temperature."), bathC, referenceC, q10 }),
    output: number("s", "Time in this bath."),
    source: "q10-page",
    codes: ["temperatureOutOfRange"],
    example: { timeS: 90, bathC: 24 },
    call: process.developmentTime,
  }),
  formula({
    name: "developmentTimeArrhenius",
    does: "The same by the energy of activation.",
    input: object({
      timeS: time("Time at the reference temperature."),
      bathC,
      referenceC,
      activationJMol: positive("J/mol", "Energy of activation."),
    }),
    output: number("s", "Time in this bath."),
    source: "arrhenius, codata",
    codes: ["temperatureOutOfRange"],
    example: { timeS: 90, bathC: 24, activationJMol: 51_216 },
    call: process.developmentTimeArrhenius,
  }),
  formula({
    name: "activationEnergy",
    does: "The energy of activation behind a factor for 10 °C.",
    input: object({ q10: factor, fromC: number("°C", "The colder temperature; the other is 10 °C warmer.") }),
    output: number("J/mol", "Energy of activation."),
    source: "arrhenius, codata",
    codes: ["temperatureOutOfRange"],
    example: { q10: 2, fromC: 20 },
    call: process.activationEnergy,
  }),
  formula({
    name: "driftEffectiveTime",
    does: "What a time in a bath that cools or warms while it works is worth at the reference temperature.",
    input: object({
      timeS: time("Time in the bath."),
      startC: number("°C", "Temperature of the bath at the start."),
      airC: number("°C", "Temperature that it goes to."),
      timeConstantS: positive("s", "How long until 37 % of the difference is left."),
      referenceC,
      q10,
    }),
    output: number("s", "Effective time."),
    source: "none",
    example: { timeS: 180, startC: 20, airC: 12, timeConstantS: 1800 },
    call: process.driftEffectiveTime,
  }),
  formula({
    name: "reexposureStops",
    does: "How generous a re-exposure is, counted from the exposure that gives a mid tone.",
    input: object({
      illuminanceLx: positive("lx", "Light on the sheet."),
      timeS: time("How long."),
      paperSpeed: positive("", "ISO speed P of the paper, for printing light."),
    }),
    output: number("stops", "Stops over the mid tone; 8 and more are wanted."),
    source: "iso-6846",
    example: { illuminanceLx: 200, timeS: 30, paperSpeed: 200 },
    call: process.reexposureStops,
  }),
  formula({
    name: "leastInterval",
    does: "The shortest even spacing at which any number of sheets go through a line of trays.",
    input: object({ steps: trays, handS }),
    output: object({
      intervalS: number("s", "From one start to the next."),
      oneSheetS: number("s", "One sheet, from the first tray in to the last tray out."),
    }),
    source: "hoist-scheduling",
    example: { steps: [{ timeS: 120 }, { timeS: 30 }, { timeS: 300, sheets: 3 }], handS: 8 },
    call: process.leastInterval,
  }),
  formula({
    name: "earliestStarts",
    does: "When each sheet starts if each starts as early as those before it allow.",
    input: object({ steps: trays, handS, sheets: whole("", "How many sheets.", { least: 1 }) }),
    output: object({
      startsS: list(number("s", "Start."), "When each goes into the first tray."),
      endS: number("s", "When the last has left the last tray."),
    }),
    source: "hoist-scheduling",
    example: { steps: [{ timeS: 120 }, { timeS: 30 }, { timeS: 300, sheets: 3 }], handS: 8, sheets: 4 },
    call: process.earliestStarts,
  }),
  formula({
    name: "firstDevelopmentSecond",
    does: "What one second more or less in the first developer is worth, from one's own development series.",
    input: object({
      timeS: time("Time in the first developer."),
      inductionS: notNegative("s", "Until then nothing is seen."),
      timeConstantS: positive("s", "In this time what is left undeveloped falls to 37 %."),
      layerDensity: positive("", "Density of the whole coating."),
      contrast: positive("", "Density per unit of log exposure."),
    }),
    output: object({
      undeveloped: number("", "Share left undeveloped."),
      densityPerS: number("1/s", "Density of the whites."),
      stopsPerS: number("stops/s", "The same as exposure."),
    }),
    source: "none",
    codes: ["outOfRange"],
    example: { timeS: 60, inductionS: 10, timeConstantS: 30, layerDensity: 2, contrast: 2 },
    call: process.firstDevelopmentSecond,
  }),
  formula({
    name: "lightBudget",
    does: "Which share of the safelight that a tested paper bears a sheet has had by now.",
    input: object({
      stays: list(
        object({ illuminanceLx: positive("lx", "Light on the sheet."), timeS: time("How long.") }),
        "Stays in the light, before and after the exposure, until the stop bath.",
      ),
      testIlluminanceLx: positive("lx", "Light of the test."),
      safeS: positive("s", "How long that was safe."),
    }),
    output: number("", "Share of the safe dose; 1 is all of it."),
    source: "safelight-k4",
    example: { stays: [{ illuminanceLx: 0.5, timeS: 60 }], testIlluminanceLx: 1, safeS: 420 },
    call: process.lightBudget,
  }),
  formula({
    name: "safelightTime",
    does: "How long paper may lie in a light, from the densities of a test in steps of time.",
    input: object({
      timesS: list(time("How long this step lay in the light."), "Times of the steps.", { leastItems: 1 }),
      fogDensity: list(number("", "How much darker than without that light."), "One for each time."),
      fogSd: list(positive("", "Its doubt."), "One for each time."),
      threshold: preset(0.02, positive("", "Change of density that counts as harm.")),
    }),
    output: object({
      slopePerS: number("1/s", "Density a second."),
      slopeSd: number("1/s", "Its doubt."),
      safeS: number("s", "Safe so long, never longer than was tried."),
      adviseS: number("s", "Half of it."),
    }),
    source: "none",
    example: { timesS: [60, 120, 240], fogDensity: [0, 0.004, 0.011], fogSd: [0.004, 0.004, 0.004] },
    call: process.safelightTime,
  }),
  formula({
    name: "screenIlluminance",
    does: "How much light an evenly lit screen throws on a sheet that faces it.",
    input: object({
      luminanceCdM2: notNegative("cd/m²", "Luminance of the screen."),
      widthMm: positive("mm", "Its width."),
      heightMm: positive("mm", "Its height."),
      distanceMm: positive("mm", "From screen to sheet."),
    }),
    output: number("lx", "Light on the sheet."),
    source: "photometry",
    example: { luminanceCdM2: 0.05, widthMm: 70, heightMm: 150, distanceMm: 500 },
    call: process.screenIlluminance,
  }),
  formula({
    name: "srgbOnWidePanel",
    does: "What a colour given as sRGB really lights up on a managed panel of the primaries of Display P3.",
    input: object({ red: share, green: share, blue: share }),
    output: object({
      linear: list(number("", "Share of full light."), "Red, green and blue sub-pixels."),
      codes: list(number("", "0 to 255."), "The same as codes."),
    }),
    source: "css-color-4, srgb",
    example: { red: 1, green: 0, blue: 0 },
    call: process.srgbOnWidePanel,
  }),
];
