import * as tone from "@captray/science/tone";
import {
  kinds,
  list,
  notNegative,
  number,
  object,
  oneOrMany,
  optional,
  orNull,
  positive,
  preset,
  presetObject,
  tacit,
  whole,
  word,
} from "../declare/fields.ts";
import { curve, face, faceWays, flashS, rounds, settings, u1, u2 } from "../declare/toneKeys.ts";
import { type Formula, formula } from "./formula.ts";

const speedPointLxS = positive("lx·s", "Exposure at the speed point.");
const placeStops = preset(0, number("stops", "How far above (+) or below (−) mid the aim is placed."));
const meterK = preset(12.5, positive("", "Calibration constant of a reflected-light meter."));
const exposureConstant = preset(0.65, positive("", "Constant q of the camera equation."));
const index = number("", "Exposure index.");
const refractiveIndex = preset(1.5, number("", "Of the layer.", { above: 1, code: "outOfRange" }));
const baseDensity = preset(0.06, number("", "Density of the bare paper.", { above: 0, code: "baseTooLight" }));
const logExposures = list(number("log10 lx·s", "Exposure."), "Exposures as log10 of lx·s.");
const range = positive("", "ISO R.");

const sheetKeys = {
  ...settings,
  flashS: preset(0, flashS),
  meanLogExposure: preset(-30, number("log10 lx·s", "Mean image exposure of the frame, which flare comes from.")),
};

const ofSheet = whole("", "Index of its sheet.", { least: 0 });

/** What a strip processed apart has of its own. */
const ownSettings = { u1: optional(u1), rounds: optional(rounds), u2: optional(u2), flashS: optional(flashS) };

const numbers = (description: string) => list(number("", description), description);

function greyCauses(description: string) {
  return object(
    {
      underexposed: number("", "Too little light."),
      firstDevelopment: number("", "Missed by the first development."),
      bleach: number("", "Kept by the bleach."),
      stain: number("", "Stain."),
    },
    { description },
  );
}

function patchCauses(description: string) {
  return object(
    {
      firstDevelopment: number("", "Missed by the first development."),
      bleach: number("", "Kept by the bleach."),
      stain: number("", "Stain."),
    },
    { description },
  );
}

/** A paper placed by its exposure index; without one as assumed. */
const indexed = object(
  {
    exposureIndex: positive("", "Exposure index."),
    exposureIndexSdStops: preset(0.7, notNegative("stops", "Its doubt.")),
  },
  { description: "Places the curve." },
);

const rate = {
  rateLx: number("lx·s/s", "Flash a second."),
  sdLn: number("", "Doubt of its natural logarithm."),
  stripSdLn: number("", "The same without the paper’s own doubt."),
};

/** The functions of the tone folder. */
export const toneFormulas: readonly Formula[] = [
  formula({
    name: "paperSpeed",
    does: "The speed of a paper as its maker would quote it, before rounding.",
    input: object({ speedPointLxS }),
    output: number("", "ISO P, not rounded."),
    source: "iso-6846, none",
    example: { speedPointLxS: 2 },
    call: tone.paperSpeed,
  }),
  formula({
    name: "paperRange",
    does: "The exposure range of a paper as its maker would quote it, before rounding.",
    input: object({
      toeLxS: positive("lx·s", "Exposure at the toe."),
      shoulderLxS: positive("lx·s", "Exposure at the shoulder, above the toe."),
    }),
    output: number("", "ISO R, not rounded."),
    source: "focal-encyclopedia, iso-6846",
    codes: ["curveNotRising"],
    example: { toeLxS: 0.4, shoulderLxS: 6 },
    call: tone.paperRange,
  }),
  formula({
    name: "gradeOfRange",
    does: "The grade a paper of an ISO range is called.",
    input: object({ range }),
    output: orNull(whole("", "Grade, 0 to 6; null outside the scale.")),
    source: "focal-encyclopedia",
    example: { range: 100 },
    call: tone.gradeOfRange,
  }),
  formula({
    name: "isoPaperPoints",
    does: "The three points of a measured negative curve by which a paper's speed and range are quoted.",
    input: object({
      logExposure: list(number("log10 lx·s", "Exposure."), "Exposures as log10 of lx·s, rising."),
      density: list(number("", "Density."), "Densities, never falling; the first is Dmin, the last Dmax."),
    }),
    output: object({
      toeLxS: number("lx·s", "Toe."),
      speedPointLxS: number("lx·s", "Speed point."),
      shoulderLxS: number("lx·s", "Shoulder."),
      speed: number("", "ISO P, not rounded."),
      range: number("", "ISO R, not rounded."),
    }),
    source: "focal-encyclopedia, iso-6846, none",
    codes: ["curveNotRising", "speedPointNotReached"],
    example: { logExposure: [-1, 1], density: [0.05, 2.05] },
    call: tone.isoPaperPoints,
  }),
  formula({
    name: "filmSpeed",
    does: "The speed of a negative film, for contrast with a paper's only.",
    input: object({ speedPointLxS }),
    output: number("", "ISO."),
    source: "iso-6",
    example: { speedPointLxS: 0.008 },
    call: tone.filmSpeed,
  }),
  formula({
    name: "exposureIndexFromAim",
    does: "The exposure index at which a placed tone receives the exposure aimed at.",
    input: object({
      aimLxS: positive("lx·s", "The exposure that prints the aimed-at density."),
      placeStops,
      meterK,
      exposureConstant,
    }),
    output: index,
    source: "iso-12232, iso-2720, none",
    example: { aimLxS: 2.5 },
    call: tone.exposureIndexFromAim,
  }),
  formula({
    name: "exposureIndexFromPaperSpeed",
    does: "The exposure index to begin with, from the speed a maker quotes for enlarging.",
    input: object({
      paperSpeed: positive("", "ISO P."),
      placeStops,
      actinicStops: preset(
        0,
        number("stops", "What the light of the scene does to the paper, less the printing lamp."),
      ),
      meterK,
      exposureConstant,
    }),
    output: index,
    source: "iso-6846, iso-12232, none",
    example: { paperSpeed: 160 },
    call: tone.exposureIndexFromPaperSpeed,
  }),
  formula({
    name: "layerConstants",
    does: "What the surface between air and the clear gelatin of a paper does to light.",
    input: object({ refractiveIndex }),
    output: object({
      normalReflectance: number("", "Share thrown back, light square to the surface."),
      reflectance45: number("", "The same at 45°."),
      secInside45: number("", "Length of the way inside for light at 45°, in thicknesses."),
      couplingC: number("", "Share of light at 45° that meets the eye of a white base, without returns."),
      internalDiffuse: number("", "Share of diffuse light thrown back from inside."),
      externalDiffuse: number("", "The same from outside."),
      cosCritical: number("", "Cosine inside beyond which light leaves."),
      slopeIntegralJ: number("", "How steeply returns fail with the first silver."),
    }),
    source: "walsh-1926, surface-reflection, williams-clapper-1953",
    example: {},
    call: tone.layerConstants,
  }),
  formula({
    name: "returnFactor",
    does: "Share of the light from the base that the surface sends down again through the layer.",
    input: object({ layerDensity: notNegative("", "Density of the silver layer alone."), refractiveIndex }),
    output: object({
      factor: number("", "Share that comes down again."),
      slope: number("", "Its slope by layer density."),
    }),
    source: "williams-clapper-1953, none",
    example: { layerDensity: 0.1 },
    call: tone.returnFactor,
  }),
  formula({
    name: "reflectionDensity",
    does: "The density of a print from that of its silver layer, which light crosses many times.",
    input: object(
      {
        layerDensity: oneOrMany("", "Density of the silver layer alone; one or a list.", { least: 0 }),
        baseDensity,
        ...face,
        refractiveIndex,
      },
      { ways: faceWays },
    ),
    output: object({
      density: oneOrMany("", "Density of the print."),
      slope: oneOrMany("", "Its slope by layer density."),
      slopeByBase: oneOrMany("", "Its slope by base density."),
      baseReflectance: number("", "Reflectance of the base under the layer."),
    }),
    source: "williams-clapper-1953, simonot-2006, none",
    codes: ["baseTooLight"],
    example: { layerDensity: [0, 0.1, 0.4] },
    call: tone.reflectionDensity,
  }),
  formula({
    name: "layerDensity",
    does: "The density of the silver layer that a measured print density speaks of.",
    input: object(
      { density: number("", "Density of the print as measured."), baseDensity, ...face, refractiveIndex },
      { ways: faceWays },
    ),
    output: number("", "Density of the silver layer alone."),
    source: "williams-clapper-1953, none",
    codes: ["belowBase", "aboveSurfaceCap", "baseTooLight"],
    example: { density: 0.5217 },
    call: tone.layerDensity,
  }),
  formula({
    name: "developable",
    does: "Share of the exposed halide that a developer can find, and its slopes.",
    input: object({
      logExposure: logExposures,
      x50: preset(0.8, number("log10 lx·s", "Exposure at which half is developable.")),
      width: preset(0.75, positive("log10", "Exposure range from a tenth to nine tenths.")),
      q: preset(1, positive("", "Asymmetry: below 1 a long toe, above 1 a long shoulder.")),
    }),
    output: object({
      share: numbers("Shares."),
      byLogExposure: numbers("Slopes by log exposure."),
      byLnWidth: numbers("Slopes by ln width."),
      byLnQ: numbers("Slopes by ln q."),
    }),
    source: "none",
    example: { logExposure: [0.5, 0.8, 1.2] },
    call: tone.developable,
  }),
  formula({
    name: "forward",
    does: "What a paper prints: from exposure, flash and baths to densities, with all slopes.",
    input: object(
      {
        curve: presetObject(curve),
        sheets: list(object(sheetKeys), "Sheets, each with its baths and its flash."),
        patches: list(
          kinds("kind", [
            object({
              sheet: ofSheet,
              kind: tacit(preset("image", word(["image"], "A part of the picture."))),
              logExposure: optional(number("log10 lx·s", "Image light; left out, there was none.")),
              ...ownSettings,
            }),
            object({
              sheet: ofSheet,
              kind: word(
                ["black", "fogged", "base", "baseProcessed", "bleachOnly"],
                "How a control patch was treated.",
              ),
              ...ownSettings,
            }),
          ]),
          "Parts of the sheets.",
        ),
        ...face,
        offsetsStops: optional(
          list(number("stops", "Offset."), "What each sheet got beyond what was counted. Default: zeros."),
        ),
      },
      { ways: faceWays },
    ),
    output: object({
      density: numbers("Densities."),
      layerDensity: numbers("Layer densities."),
      developed: numbers("Shares developed in the first bath."),
      jacobian: list(
        numbers("Slopes of one patch."),
        "Slopes by the thirteen parameters on their scale of learning, then by the offset of each sheet in stops.",
      ),
    }),
    source: "none, williams-clapper-1953",
    example: {
      sheets: [{}],
      patches: [
        { sheet: 0, logExposure: 1.2 },
        { sheet: 0, kind: "fogged" },
      ],
    },
    call: tone.forward,
  }),
  formula({
    name: "isoFromCurve",
    does: "Speed and range that a maker would quote for a paper of this curve, developed as a negative.",
    input: object({ curve: presetObject(curve), ...face }, { ways: faceWays }),
    output: object({
      minDensity: number("", "Thinnest density."),
      maxDensity: number("", "Densest."),
      logToe: number("log10 lx·s", "Toe."),
      logSpeedPoint: number("log10 lx·s", "Speed point."),
      logShoulder: number("log10 lx·s", "Shoulder."),
      speed: number("", "ISO P, not rounded."),
      range: number("", "ISO R, not rounded."),
      averageGradient: number("", "Density by log exposure between toe and shoulder."),
    }),
    source: "focal-encyclopedia, iso-6846, none",
    codes: ["speedPointNotReached"],
    example: {},
    call: tone.isoFromCurve,
  }),
  formula({
    name: "exposureIndexFromCurve",
    does: "The exposure index of a paper and its recipe, from their curve.",
    input: object({ curve: presetObject(curve), ...settings, ...face, meterK, exposureConstant }, { ways: faceWays }),
    output: object({
      exposureIndex: index,
      aimDensity: number("", "The density meant for mid."),
      aimLxS: number("lx·s", "The exposure that prints it."),
    }),
    source: "iso-12232, iso-6846, none",
    codes: ["toneOutOfReach"],
    example: {},
    call: tone.exposureIndexFromCurve,
  }),
  formula({
    name: "defaultWants",
    does: "The white and the black to plan for, of the curve in hand, so that a first plan can be met.",
    input: object({ curve: presetObject(curve), ...settings, ...face }, { ways: faceWays }),
    output: object({
      highlightDensity: number("", "Of a white; in a negative, of the dense end."),
      shadowDensity: number("", "Of a black; in a negative, of the thin end."),
    }),
    source: "none",
    example: {},
    call: tone.defaultWants,
  }),
  formula({
    name: "widthForRange",
    does: "The width of the curve of a paper whose range its maker quotes.",
    input: object({ range, curve: presetObject(curve), ...face }, { ways: faceWays }),
    output: number("log10", "Width."),
    source: "iso-6846, none",
    codes: ["speedPointNotReached"],
    example: { range: 110 },
    call: tone.widthForRange,
  }),
  formula({
    name: "filterCurve",
    does: "The curve of a variable-contrast paper under a filter, from that without one.",
    input: object(
      {
        range,
        filterStops: number("stops", "Extra exposure the filter asks for at the speed point."),
        curve: presetObject(curve),
        ...face,
      },
      { ways: faceWays },
    ),
    output: object({
      x50: number("log10 lx·s", "Exposure of half development."),
      width: number("log10", "Width."),
    }),
    source: "iso-6846, none",
    codes: ["speedPointNotReached"],
    example: { range: 70, filterStops: 1.3 },
    call: tone.filterCurve,
  }),
  formula({
    name: "planExposureFlash",
    does: "The exposure and the flash that print a highlight and a shadow at the densities wanted.",
    input: object(
      {
        highlightLxS: positive("lx·s", "Image light of the highlight, as now metered."),
        shadowLxS: positive("lx·s", "The same of the shadow; below the highlight."),
        meanLxS: notNegative("lx·s", "Mean image light of the frame, which flare comes from."),
        highlightDensity: number("", "Density wanted of the highlight."),
        shadowDensity: number("", "Density wanted of the shadow."),
        curve: presetObject(curve),
        ...settings,
        ...face,
      },
      { ways: faceWays },
    ),
    output: object({
      logHighlight: number("log10 lx·s", "All the light that prints the highlight."),
      logShadow: number("log10 lx·s", "The same of the shadow."),
      exposureFactor: number("", "On the exposure as now metered."),
      exposureStops: number("stops", "The same in stops."),
      flashLxS: number("lx·s", "Flash."),
      flashS: number("s", "Its seconds; below 0 no flash can do it."),
      sceneRange: number("log10", "Range of the scene, with flare."),
      paperRange: number("log10", "Range of exposure between the densities wanted."),
      sceneLongerByStops: number("stops", "By how much the scene is longer than the paper."),
      verdict: word(["sceneLongerThanPaper", "sceneShorterThanPaper"], "Which of them is longer."),
    }),
    source: "none",
    codes: ["toneOutOfReach"],
    example: { highlightLxS: 30, shadowLxS: 1.5, meanLxS: 6, highlightDensity: 0.55, shadowDensity: 1.6 },
    call: tone.planExposureFlash,
  }),
  formula({
    name: "flashThreshold",
    does: "The least flash that shows beside paper that had none.",
    input: object(
      {
        paper: optional(indexed),
        leastLightness: preset(1.5, positive("", "How much two tones that touch must differ in L* to be told apart.")),
        leastLightnessSdLn: preset(0.4, notNegative("", "Doubt of its natural logarithm.")),
        ...settings,
        ...face,
      },
      { ways: faceWays },
    ),
    output: object({
      logExposure: number("log10 lx·s", "Flash that just shows."),
      exposureLxS: number("lx·s", "The same."),
      sdLn: number("", "Doubt of its natural logarithm, paper and eye."),
      eyeSdLn: number("", "What the eye adds to it."),
      bareDensity: number("", "Density without flash."),
      seenDensity: number("", "Density that can just be told from it."),
    }),
    source: "jnd-pages, cie-15, none",
    codes: ["toneOutOfReach"],
    example: { paper: { exposureIndex: 0.7 } },
    call: tone.flashThreshold,
  }),
  formula({
    name: "planFlashStrip",
    does: "The seconds of a flash strip, a constant factor apart.",
    input: object({
      rateLx: positive("lx·s/s", "What the lamp is thought to give the paper."),
      rateSdLn: preset(1, notNegative("", "Doubt of its natural logarithm.")),
      thresholdLxS: positive("lx·s", "The least flash that shows."),
      thresholdSdLn: preset(0, notNegative("", "Doubt of its natural logarithm.")),
      steps: preset(
        7,
        whole("", "Steps with flash; the bare one comes beside them.", { least: 2, most: 12, code: "outOfRange" }),
      ),
    }),
    output: object({
      timesS: list(number("s", "From the start of the flash."), "Of each step, rising."),
      factor: number("", "From step to step."),
      middleS: number("s", "Where the first step that shows is expected."),
      verdict: word(["fits", "lampTooBright", "lampTooDim"], "Whether a hand can give it."),
    }),
    source: "none",
    example: { rateLx: 0.1, thresholdLxS: 1.6 },
    call: tone.planFlashStrip,
  }),
  formula({
    name: "flashRateFromStrip",
    does: "What a flash lamp gives the paper a second, from the first step of a strip that shows.",
    input: object({
      lastUnseenS: positive("s", "The longest step that cannot be told from the bare one."),
      firstSeenS: positive("s", "The shortest step that can; above the other."),
      thresholdLxS: positive("lx·s", "The least flash that shows."),
      thresholdSdLn: preset(0, notNegative("", "Doubt of its natural logarithm, paper and eye.")),
      eyeSdLn: preset(0, notNegative("", "Of that doubt what the eye adds.")),
    }),
    output: object(rate),
    source: "none",
    example: { lastUnseenS: 6, firstSeenS: 12, thresholdLxS: 1.2 },
    call: tone.flashRateFromStrip,
  }),
  formula({
    name: "flashRateFromDensities",
    does: "What a flash lamp gives the paper a second, from the measured densities of a flash strip.",
    input: object(
      {
        bareDensity: number("", "Density of the paper that had no flash."),
        steps: list(
          object({ timeS: positive("s", "Flash."), density: number("", "Density.") }),
          "The steps of the strip.",
        ),
        densitySd: preset(0.02, positive("", "Doubt of one density.")),
        paper: optional(indexed),
        ...settings,
        ...face,
      },
      { ways: faceWays },
    ),
    output: object({ ...rate, used: number("", "How many steps tell.") }),
    source: "none",
    codes: ["tooFew", "toneOutOfReach"],
    example: {
      bareDensity: 2.0,
      steps: [
        { timeS: 8, density: 2.0 },
        { timeS: 32, density: 1.6 },
      ],
    },
    call: tone.flashRateFromDensities,
  }),
  formula({
    name: "whyGrey",
    does: "Why a tone of a direct positive is greyer than the bare paper, cause by cause.",
    input: object(
      {
        logExposure: number("log10 lx·s", "Image light at the area asked about."),
        sheet: presetObject(object(sheetKeys, { description: "Baths and flash of its sheet." })),
        curve: presetObject(curve),
        ...face,
      },
      { ways: faceWays },
    ),
    output: object({
      density: number("", "Density."),
      base: number("", "Density of the bare base."),
      excess: number("", "Density over the base."),
      layerDensity: number("", "Density of the silver layer alone."),
      parts: greyCauses("Parts of the layer density."),
      shares: greyCauses("Shares of the excess; they add up to it."),
      gains: greyCauses("What curing one alone would take off."),
    }),
    source: "none, williams-clapper-1953",
    example: { logExposure: 1.5 },
    call: tone.whyGrey,
  }),
  formula({
    name: "patchArithmetic",
    does: "Why the whites are grey, from four patches on one sheet and without any fit.",
    input: object(
      {
        fogged: number("", "Room light before the first bath, then the whole process."),
        bleachOnly: number("", "Room light, first bath and bleach, then fixed."),
        baseProcessed: number("", "Fixed out first, then all baths."),
        base: number("", "Fixed out and washed.", { above: 0, code: "baseTooLight" }),
        ...face,
      },
      { ways: faceWays },
    ),
    output: object({
      layerDensity: patchCauses("Layer densities."),
      shares: patchCauses("Shares of the excess."),
      excess: number("", "Density of the fogged patch over the base."),
    }),
    source: "none, williams-clapper-1953",
    codes: ["aboveSurfaceCap", "baseTooLight"],
    example: { fogged: 0.41, bleachOnly: 0.23, baseProcessed: 0.11, base: 0.06 },
    call: tone.patchArithmetic,
  }),
  formula({
    name: "contactPrint",
    does: "From camera exposure to the print made by contact from a paper negative.",
    input: object({
      negative: curve,
      paper: curve,
      logExposure: logExposures,
      clearLogExposure: number("log10 lx·s", "Exposure of the second sheet through the clear negative."),
    }),
    output: object({
      negativeDensity: numbers("Densities of the negative as looked at."),
      printingDensity: numbers("The same as printed through."),
      printDensity: numbers("Densities of the print."),
    }),
    source: "none",
    example: { negative: {}, paper: {}, logExposure: [0.2, 0.7, 1.3], clearLogExposure: 1.9 },
    call: tone.contactPrint,
  }),
  formula({
    name: "printingDensity",
    does: "What a paper negative holds back when it is lit through its own base.",
    input: object({
      layerDensity: notNegative("", "Density of the negative's silver layer alone."),
      baseReflectance: number("", "Reflectance of its base, seen from the layer.", { least: 0, most: 1 }),
    }),
    output: number("", "Printing density, over the clear part."),
    source: "none",
    example: { layerDensity: 0.4, baseReflectance: 0.94 },
    call: tone.printingDensity,
  }),
  formula({
    name: "lightness",
    does: "How light a tone looks beside a perfect white.",
    input: object({ density: number("", "Density against the perfect diffuser.") }),
    output: number("", "L*."),
    source: "cie-15",
    example: { density: 0.75 },
    call: tone.lightness,
  }),
  formula({
    name: "densityOfLightness",
    does: "The density of a tone that looks so light.",
    input: object({ lightness: number("", "L*.", { above: 0, most: 100 }) }),
    output: number("", "Density against the perfect diffuser."),
    source: "cie-15",
    example: { lightness: 50 },
    call: tone.densityOfLightness,
  }),
];
