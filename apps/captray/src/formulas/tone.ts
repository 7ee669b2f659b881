import * as tone from "@captray/science/tone";
import { list, number, object, positive, preset } from "../declare/fields.ts";
import { type Formula, formula } from "./formula.ts";

const speedPointLxS = positive("lx·s", "Exposure at the speed point.");
const placeStops = preset(0, number("stops", "How far above (+) or below (−) mid the aim is placed."));
const meterK = preset(12.5, positive("", "Calibration constant of a reflected-light meter."));
const exposureConstant = preset(0.65, positive("", "Constant q of the camera equation."));
const index = number("", "Exposure index.");

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
];
