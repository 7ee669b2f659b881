/** What the tests and the snapshots of this folder draw: invented scenes on curves that science makes. */
import { expectPrint, type ProcessSettings } from "@captray/science/tone";
import type { ToneArea, ToneCurvePoint, ToneDrawingInput } from "./toneTypes.ts";

const stop = Math.log10(2);
/** log10 lx·s that prints mid at the exposure index of these scenes. */
const mid = Math.log10(8.125 / 1.4);

/** Five areas of a winter boatyard, from the placed hull. */
const yard = [
  ["Snow", 3],
  ["Jug", 2.32],
  ["Hull", 0],
  ["Rope", -1],
  ["Shed door", -4],
] as const;

function printed(stops: readonly number[], settings: ProcessSettings, flashS = 0, sdStops = 0.3) {
  const print = expectPrint({
    areas: stops.map((at, place) => ({ area: String(place), logExposure: mid + at * stop, sdStops: 0.1 })),
    meanLogExposure: -9,
    paper: { exposureIndex: 1.4, exposureIndexSdStops: sdStops },
    flashS,
    draws: 0,
    ...settings,
  });
  return print.areas.map(({ density, interval }) => ({
    density: density.value,
    low: Math.max(0.05, interval.low),
    high: Math.min(2.2, interval.high),
  }));
}

function curveOf(settings: ProcessSettings, sdStops?: number): ToneCurvePoint[] {
  const stops = Array.from({ length: 95 }, (_, step) => -5.1 + step / 10);
  return printed(stops, settings, 0, sdStops).map((point, place) => ({ stops: stops[place] ?? 0, ...point }));
}

function areasOf(named: readonly (readonly [string, number])[], settings: ProcessSettings, sdStops?: number) {
  const tones = printed(
    named.map(([, stops]) => stops),
    settings,
    0,
    sdStops,
  );
  return named.map(([name, stops], place): ToneArea => ({ name, stops, ...(tones[place] ?? nothing) }));
}

const nothing = { density: 0, low: 0, high: 0 };

/** The same areas after a flash that adds this much of the mid exposure. */
function flashed(areas: readonly ToneArea[], addedOfMid: number, settings: ProcessSettings): ToneArea[] {
  const moved = areas.map(({ stops }) => Math.log2(2 ** stops + addedOfMid));
  const tones = printed(moved, settings);
  return areas.map(({ name, stops, density }, place) => ({
    name,
    stops: moved[place] ?? 0,
    ...(tones[place] ?? nothing),
    other: { stops, density },
  }));
}

const phone = { widthPx: 358, letterPx: 15, perDensityPx: 97 };
const desk = { widthPx: 500, letterPx: 15, perDensityPx: 124 };
const positive: ProcessSettings = { process: "reversal", rounds: 2 };
const negative: ProcessSettings = { process: "negative" };

const onPhone: ToneDrawingInput = {
  ...phone,
  kind: "positive",
  of: "paper box C with recipe 4",
  curve: curveOf(positive),
  areas: areasOf(yard, positive),
  wanted: [
    { words: "wanted white 0.45", density: 0.45 },
    { words: "wanted black 1.80", density: 1.8 },
  ],
  dimensions: [
    { words: "the scene: 7.0 stops", from: -4, to: 3 },
    { words: "this paper: 4.0 stops", from: -2.1, to: 1.9 },
  ],
  leastNameRows: 2,
};

/** Every drawing that is kept as a snapshot, by its name. */
export const toneCases: Readonly<Record<string, ToneDrawingInput>> = {
  "tone-positive-phone": onPhone,
  "tone-positive-desk-flash": {
    ...onPhone,
    ...desk,
    areas: flashed(onPhone.areas, 0.17, positive),
    dimensions: [
      { words: "scene with flash: 5.1 stops", from: -2.1, to: 3.03 },
      { words: "this paper: 4.0 stops", from: -2.1, to: 1.9 },
    ],
  },
  "tone-negative-phone": {
    ...onPhone,
    perDensityPx: 72,
    kind: "negative",
    of: "box D",
    curve: curveOf(negative, 0.7),
    areas: areasOf(yard, negative, 0.7),
    wanted: [
      { words: "densest that prints 1.71", density: 1.71 },
      { words: "thinnest 0.25", density: 0.25 },
    ],
    dimensions: [
      { words: "the scene: 7.0 stops", from: -4, to: 3 },
      { words: "second paper: 3.0 stops", from: -1.6, to: 1.45 },
    ],
  },
  "tone-one-area": { ...onPhone, areas: onPhone.areas.slice(2, 3), dimensions: onPhone.dimensions.slice(1) },
  "tone-twelve-areas": {
    ...onPhone,
    areas: areasOf(
      Array.from({ length: 12 }, (_, place) => [`Strake ${place + 1}`, -4.4 + place * 0.7] as const),
      positive,
    ),
  },
  "tone-beyond": {
    ...onPhone,
    areas: areasOf(
      [
        ["Sun on the ice of the slip", 7],
        ["Hull", 0],
        ["Under the keel", -8],
      ],
      positive,
    ),
    dimensions: [{ words: "the scene: 15.0 stops", from: -8, to: 7 }],
  },
  "tone-flat": {
    ...onPhone,
    curve: [-5.1, -2, 0, 2, 4.3].map((stops) => ({ stops, density: 1.98, low: 1.9, high: 2.05 })),
    areas: yard.map(([name, stops]) => ({ name, stops, density: 1.98, low: 1.9, high: 2.05 })),
    wanted: [],
    dimensions: onPhone.dimensions.slice(0, 1),
  },
  "tone-large-letters": { ...onPhone, letterPx: 30, leastNameRows: 3 },
};
