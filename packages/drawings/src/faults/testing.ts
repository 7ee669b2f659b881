/** What the tests and the snapshots of this folder draw. */
import { type DrawnFault, faultWords } from "./faultWords.ts";
import type { SheetDrawingInput } from "./sheetDrawing.ts";

export const everyFault = Object.keys(faultWords) as DrawnFault[];

const phone = { widthPx: 358, mostHeightPx: 520, letterPx: 15, sizeMm: { widthMm: 130, heightMm: 180 } } as const;

export const sheetCases: Readonly<Record<string, SheetDrawingInput>> = {
  "faults-none": { ...phone, code: "W32", faults: [] },
  "faults-every-kind": {
    ...phone,
    code: "W31",
    faults: everyFault.map((what, place) => ({
      what,
      x: 0.18 + 0.32 * (place % 3),
      y: 0.1 + 0.19 * Math.floor(place / 3),
      width: what === "scratch" ? 0.2 : 0.14,
      height: what === "scratch" ? 0.04 : 0.1,
    })),
  },
  "faults-edges-pieces": {
    ...phone,
    code: "W29",
    faults: [
      { what: "lightLeak", x: 0.99, y: 0.3, width: 0.2, height: 0.16 },
      { what: "lightLeak", x: 0.4, y: 0.995, width: 0.2, height: 0.1 },
      { what: "stain", x: 0.02, y: 0.01, width: 0.12, height: 0.1 },
      { what: "scratch", x: 0.6, y: 0.5, width: 0.03, height: 0.4 },
      { what: "fog", x: 0.5, y: 0.5, width: 1, height: 1 },
    ],
    pieces: [
      { letter: "a", place: { x: 0, y: 0, width: 0.5, height: 0.5 } },
      { letter: "b", place: { x: 0.5, y: 0, width: 0.5, height: 0.5 } },
      { letter: "c", place: { x: 0, y: 0.5, width: 0.5, height: 0.5 } },
      { letter: "d", place: { x: 0.5, y: 0.5, width: 0.5, height: 0.5 } },
    ],
    chosen: 3,
    cross: { x: 0.25, y: 0.8 },
  },
  "faults-large-letters": {
    ...phone,
    letterPx: 30,
    code: "W30",
    faults: [
      { what: "tongMark", x: 0.5, y: 0.03, width: 0.08, height: 0.05 },
      { what: "dust", x: 0.52, y: 0.06, width: 0.1, height: 0.08 },
    ],
  },
};
