import { curvePriors } from "@captray/science/tone";
import { notNegative, number, object, optional, positive, preset, whole, word } from "./fields.ts";
import type { Ways } from "./ways.ts";

/** Keys that the functions of tone and the expected print share. */

/** The face of a paper: its finish, or the light of its first surface. */
export const face = {
  finish: preset("gloss", word(["gloss", "semimatt", "matt"], "Finish: first-surface light 0.003, 0.012 or 0.025.")),
  surface: optional(notNegative("", "First-surface light, instead of finish.")),
};

export const faceWays: Ways = { choices: [{ lead: "finish" }, { lead: "surface" }], mayLack: true };

export const u1 = positive("", "Dose of the first development; 1 is the recipe as written.");
export const rounds = whole("", "Rounds of bleach.", { least: 0 });
export const u2 = positive("", "Dose of the second development.");
export const flashS = notNegative("s", "Seconds of flash.");

/** How a sheet is processed. */
export const settings = {
  process: preset("reversal", word(["reversal", "negative"], "Direct positive or negative.")),
  u1: preset(1, u1),
  rounds: preset(2, rounds),
  u2: preset(1, u2),
};

const words = {
  x50: ["log10 lx·s", "Exposure of half development."],
  width: ["log10", "Exposure range from a tenth to nine tenths developed."],
  q: ["", "Asymmetry: below 1 a long toe, above 1 a long shoulder."],
  S: ["", "Layer density of the whole coating in the second bath."],
  a0: ["", "Fog of the first development."],
  m1: ["", "Share missed by the first development."],
  m2: ["", "Share missed by re-exposure and second development."],
  k1: ["", "Silver kept by one round of bleach."],
  s: ["", "Layer density of the stain."],
  Db: ["", "Density of the bare base."],
  vd: ["", "Speed gained by ten times the first development, log10."],
  fr: ["lx·s/s", "Flash, in lx·s per second."],
  phi: ["", "Flare by mean image exposure."],
} as const;

type Name = keyof typeof words;

/** One parameter within its bounds. */
export function curveNumber(name: Name) {
  const [unit, description] = words[name];
  const { least, most } = curvePriors[name];
  return number(unit, description, { least, most, code: "outOfRange" });
}

function parameter(name: Name) {
  return preset(curvePriors[name].mean, curveNumber(name));
}

/** A paper in thirteen numbers; what is left out takes the mean of what is assumed. */
export const curve = object(
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
  { description: "The curve: thirteen numbers of paper, baths, lamp and lens." },
);
