import type { Drawing } from "../shapes/shape.ts";
import { type FieldCardInput, fieldCard } from "./fieldCard.ts";
import { trueScalePage } from "./trueScalePage.ts";

const readings = ["1 s", "1/2", "1/4", "1/8", "1/15", "1/30", "1/60", "1/125", "1/250", "1/500"];
const columns = [
  { distance: "distant", mark: "210" },
  { distance: "3 m", mark: "226" },
  { distance: "2 m", mark: "235" },
  { distance: "1.37 m", mark: "248", isOwn: true },
  { distance: "1 m", mark: "266" },
];

/** An invented card: its times are only there to be found again. */
export const cardInput: FieldCardInput = {
  title: "210 mm at f/11.4, Box C, positive",
  under: "recipe 4; daylight; meter at f/8, ISO 100, placed on mid grey",
  corner: ["meter", "bed"],
  columns,
  rows: readings.map((reading) => ({ reading, isOwn: reading === "1/15" })),
  cells: readings.map((_, row) =>
    columns.map((__, column) => {
      const isTime = row < 8;
      return { text: isTime ? `${160 - 20 * row + column} s` : "short", isTime };
    }),
  ),
  foot: [
    "Give or take 0.44 stop: 13 s is 9 to 17 s.",
    "Short: no cap can, below 1.4 s.",
    "Taken for granted: EI 1.4 from own sheets; daylight; no filter; the hand to the ticks.",
    "Made 1 Dec 2025.",
  ],
  more: "the rest in the app.",
  blanks: ["code", "reading", "bed", "gave"],
};

/** Pages as they are kept in snapshots. */
export const trueScaleCases: Readonly<Record<string, Drawing>> = {
  "field-card-a6": trueScalePage({ paper: "a6", piece: fieldCard(cardInput) }),
  "field-card-a4": trueScalePage({ paper: "a4", piece: fieldCard(cardInput), isCut: true }),
};
