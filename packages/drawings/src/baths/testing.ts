/** What the tests and the snapshots of this folder draw. */
import type { BathDrawingInput } from "./bathDrawing.ts";
import type { BathLabelInput } from "./bathLabel.ts";

const hour = (at: number) => ({ at, words: `${at}:00` });

export const bathCases: Readonly<Record<string, BathDrawingInput>> = {
  "bath-bleach": {
    widthPx: 358,
    letterPx: 15,
    scale: { from: 18.67, to: 24, ticks: [19, 20, 21, 22, 23, 24].map(hour) },
    filledTo: 20.83,
    nowWords: "now",
    strokes: [19.1, 19.55, 20, 20.45],
    end: { value: 22, low: 21.1, high: 23.17, words: "discard" },
    says: "Mixed today 18:40, now 20:50, good until about 22:00, between about 21:05 and 23:10.",
  },
  "bath-over": {
    widthPx: 358,
    letterPx: 15,
    scale: { from: 18.67, to: 24.67, ticks: [19, 20, 21, 22, 23, 24].map(hour) },
    filledTo: 24.67,
    nowWords: "now",
    strokes: [19.1],
    end: { value: 24.67, low: 22, high: 24.67, words: "discard" },
    says: "Mixed 18:40, its last hour is over.",
  },
  "bath-sheets-large-letters": {
    widthPx: 358,
    letterPx: 30,
    scale: { from: 0, to: 60, ticks: [0, 10, 20, 30, 40, 50, 60].map((at) => ({ at, words: String(at) })) },
    filledTo: 12,
    strokes: Array.from({ length: 12 }, (_, place) => place + 0.5),
    end: { value: 43, low: 14, high: 60, words: "worn" },
    says: "12 sheets, worn at about 43, between 14 and 60 or more.",
  },
};

export const labelCases: Readonly<Record<string, BathLabelInput>> = {
  "label-bleach": {
    title: "bleach, acid and peroxide",
    lines: ["citric acid 2 % w/v, peroxide 3 % w/v", "1000 ml"],
    mixed: "mixed 1 December 2025, 18:40",
    lastHour: "last hour 00:40",
    isVented: true,
    foot: ["Used: into the vessel for used bleach, open. The supplier’s safety sheet comes first."],
  },
};
