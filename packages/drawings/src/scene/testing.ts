/** What the tests and the snapshots of this folder draw. */
import type { DayDrawingInput } from "./dayDrawing.ts";
import type { DistanceScaleInput } from "./distanceScale.ts";

const phone = { widthPx: 358, letterPx: 15 } as const;

export const distanceCases: Readonly<Record<string, DistanceScaleInput>> = {
  "distance-skiff": { ...phone, nearMm: 1311, farMm: 1434, focusMm: 1370, lengthUnit: "mm" },
  "distance-horizon": { ...phone, nearMm: 27_562, farMm: null, focusMm: null, lengthUnit: "mm" },
  "distance-close-feet": { ...phone, nearMm: 595.5, farMm: 604.6, focusMm: 600, lengthUnit: "inch" },
  "distance-large-letters": { widthPx: 358, letterPx: 30, nearMm: 1311, farMm: 1434, focusMm: 1370, lengthUnit: "mm" },
};

/** An invented winter day: shortest at noon, ten times as long at its ends. */
const moments = Array.from({ length: 43 }, (_, place) => {
  const minute = 520 + 10 * place;
  const timeS = 2 * 2 ** (((minute - 730) / 115) ** 2);
  return { minute, timeS, lowS: timeS / 1.8, highS: timeS * 1.8 };
});

export const dayCases: Readonly<Record<string, DayDrawingInput>> = {
  "day-two-hours": {
    ...phone,
    moments,
    spans: [
      { fromMin: 520, toMin: 615 },
      { fromMin: 845, toMin: 940 },
    ],
    leastS: 4,
  },
  "day-no-hour": { ...phone, moments, spans: [], leastS: 120 },
  "day-large-letters": { widthPx: 358, letterPx: 30, moments, spans: [{ fromMin: 615, toMin: 845 }], mostS: 4 },
};
