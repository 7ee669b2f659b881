/** What the tests and the snapshots of this folder draw: W31 and W32 on the bench, as on the mock-up. */
import type { BenchInput, Station, Visit } from "./benchTypes.ts";
import type { LightTestDrawingInput } from "./lightTestDrawing.ts";

const visits = (...all: readonly Visit[]) => all;
const toCome = visits("toCome", "toCome");

/** A tray no sheet lies in. */
function tray(id: string, name: string, seen: readonly Visit[], isInRound = false): Station {
  return { id, name, kind: "tray", isInRound, visits: seen };
}

const positive: readonly Station[] = [
  {
    ...tray("dev", "First developer", visits("done", "now")),
    lying: { codes: ["W32"], figure: "1:42", leftShare: 0.85 },
  },
  tray("stop", "Stop", visits("done", "toCome")),
  tray("rinse", "Rinse", visits("done", "toCome")),
  tray("acid", "Acid", visits("done", "done", "toCome"), true),
  tray("peroxide", "Peroxide", visits("done", "now", "toCome"), true),
  tray("rinse2", "Rinse", visits("done", "toCome", "toCome"), true),
  tray("clear", "Clear", toCome),
  tray("rinse3", "Rinse", toCome),
  { id: "light", name: "Re-exposure", kind: "light", isInRound: false, visits: toCome },
  tray("dev2", "Second developer", toCome),
  tray("wash", "Wash", toCome),
];

const phone = { widthPx: 358, heightPx: 482, letterPx: 17 } as const;

export const benchCases: Readonly<Record<string, BenchInput>> = {
  "bench-positive-phone": {
    ...phone,
    stations: positive,
    roundWords: "bleach round 2 of 3",
    open: {
      id: "peroxide",
      codes: ["W31"],
      figure: "0:19",
      leftShare: 19 / 90,
      liftShare: 80 / 90,
      rockShares: [15 / 90, 30 / 90, 45 / 90, 60 / 90, 75 / 90],
    },
    says: "Next move: W31 from the peroxide to the rinse, in 19 seconds.",
  },
  "bench-positive-wash": {
    ...phone,
    stations: positive.map((station) =>
      station.id === "wash"
        ? { ...station, lying: { codes: ["W30", "W29"], figure: "4:10", leftShare: 0.4 } }
        : station,
    ),
    roundWords: "bleach round 2 of 3",
    open: { id: "clear", codes: ["W31"], figure: "0:48", leftShare: 0.8, liftShare: 0.75, rockShares: [0.5] },
    says: "Next move: W31 from the clearing bath to the rinse, in 48 seconds.",
  },
  "bench-negative-desk": {
    widthPx: 760,
    heightPx: 640,
    letterPx: 17,
    stations: [
      tray("dev", "Developer", visits("now")),
      tray("stop", "Stop", visits("toCome")),
      tray("fix", "Fix", visits("toCome")),
      tray("wash", "Wash", visits("toCome")),
    ],
    open: {
      id: "dev",
      codes: ["W35", "W36"],
      figure: "12:19",
      leftShare: 0.66,
      liftShare: 0.9,
      rockShares: [0.1, 0.4, 0.7],
    },
    says: "Next move: W35 and W36 from the developer to the stop, in 12 minutes 19.",
  },
  "bench-large-letters": {
    widthPx: 358,
    heightPx: 300,
    letterPx: 34,
    stations: positive,
    roundWords: "bleach round 2 of 3",
    open: { id: "stop", codes: ["W31"], figure: "0:04", leftShare: 0.2, liftShare: 0.8, rockShares: [] },
    says: "Next move: W31 from the stop to the rinse, in 4 seconds.",
  },
  "bench-40-stations": {
    ...phone,
    stations: Array.from({ length: 40 }, (_, place) => tray(`t${place}`, `Toning bath ${place + 1}`, toCome.slice(1))),
    open: { id: "t21", codes: ["W40"], figure: "0:30", leftShare: 0.5, rockShares: [] },
    says: "Next move: W40 from toning bath 22 to toning bath 23, in 30 seconds.",
  },
  "bench-before-the-first": {
    ...phone,
    stations: positive.map(({ lying, ...station }) => ({ ...station, visits: toCome })),
    says: "The bench: eleven stations, no sheet in them yet.",
  },
};

const bands = { letterPx: 15, bands: ["0", "1 min", "3 min", "7 min"] } as const;

/** The sheet of a light's test: masked for the grey on the left, under the light, and as it comes out. */
export const lightTestCases: Readonly<Record<string, LightTestDrawingInput>> = {
  "light-test-grey-left": { ...bands, widthPx: 170, stage: "greyLeft" },
  "light-test-light": { ...bands, widthPx: 170, stage: "light" },
  "light-test-whole": { ...bands, widthPx: 320, stage: "whole" },
  "light-test-large-letters": { widthPx: 320, letterPx: 30, bands: bands.bands, stage: "greyRight" },
};
