/** What the tests and the snapshots of this folder draw. */
import type { LensSectionInput } from "./lensSection.ts";
import type { SheetStrokesInput } from "./sheetStrokes.ts";
import type { WashersInput } from "./washers.ts";

const phone = { widthPx: 358, letterPx: 15 } as const;

export const lensCases: Readonly<Record<string, LensSectionInput>> = {
  "lens-210": {
    ...phone,
    focalLengthMm: 210,
    pupilMm: 18.4,
    sort: "lens",
    pupilWords: "pupil 18.4 mm ±0.3",
    lengthWords: "210 mm, to scale",
  },
  "lens-single-card-behind": {
    ...phone,
    focalLengthMm: 250,
    pupilMm: 62.5,
    sort: "single",
    card: { side: "behind", distanceMm: 30 },
    pupilWords: "pupil 62.5 mm ±0.5",
    lengthWords: "250 mm, to scale",
  },
  "lens-pinhole-large-letters": {
    widthPx: 358,
    letterPx: 30,
    focalLengthMm: 120,
    pupilMm: 0.5,
    sort: "pinhole",
    pupilWords: "hole 0.50 mm",
    lengthWords: "120 mm, to scale",
  },
};

export const strokeCases: Readonly<Record<string, SheetStrokesInput>> = {
  "strokes-14-of-25": { widthPx: 358, left: 14, full: 25 },
  "strokes-uncounted": { widthPx: 200, left: 23 },
};

export const washerCases: Readonly<Record<string, WashersInput>> = {
  "washers-180": {
    widthMm: 180,
    cardMm: 40,
    washers: [
      { holeMm: 22.5, words: "f/8, 22.5 mm" },
      { holeMm: 15.91, words: "f/11, 15.9 mm" },
      { holeMm: 11.25, words: "f/16, 11.3 mm" },
      { holeMm: 7.95, words: "f/22, 8 mm" },
    ],
  },
};
