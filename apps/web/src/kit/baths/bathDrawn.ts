import type { BathDrawingInput } from "@captray/drawings/baths";
import type { BathOnHand } from "@captray/notebook/answers";
import { hourWords, mixedWords } from "./bathWords.ts";

const hourMs = 3_600_000;

/** A bath over the scale that ends it: hours where it has a last one, else sheets; nothing where neither is known. */
export function bathDrawn({
  onHand,
  nowMs,
  sheetM2,
  widthPx,
  letterPx,
}: {
  readonly onHand: BathOnHand;
  readonly nowMs: number;
  /** One sheet, where none has gone through yet. */
  readonly sheetM2: number;
  readonly widthPx: number;
  readonly letterPx: number;
}): BathDrawingInput | undefined {
  const { bath, wear } = onHand;
  const common = { widthPx, letterPx };
  if (bath.mixedAt !== undefined && wear.lastHourMs !== undefined) {
    const { at: from, offsetMin } = bath.mixedAt;
    const to = wear.lastHourMs;
    const first = Math.ceil((from + offsetMin * 60_000) / hourMs) * hourMs - offsetMin * 60_000;
    const ticks = Array.from({ length: Math.max(0, Math.floor((to - first) / hourMs) + 1) }, (_, place) => ({
      at: first + place * hourMs,
      words: hourWords(first + place * hourMs, offsetMin),
    }));
    const until = wear.goodUntilMs ?? { value: to, low: to, high: to };
    return {
      ...common,
      scale: { from, to, ticks },
      filledTo: Math.min(to, Math.max(from, nowMs)),
      nowWords: "now",
      strokes: strokesOf(onHand, (to - from) / 60),
      end: { ...until, words: "discard" },
      says: `${mixedWords(onHand, nowMs)} Nine in ten: worn between ${hourWords(until.low, offsetMin)} and ${hourWords(until.high, offsetMin)}. ${wear.sheets} sheets went through.`,
    };
  }
  if (wear.wornAtM2 === undefined) return undefined;
  const one = wear.sheets > 0 && wear.areaM2 > 0 ? wear.areaM2 / wear.sheets : sheetM2;
  const end = {
    value: wear.wornAtM2.value / one,
    low: wear.wornAtM2.low / one,
    high: wear.wornAtM2.high / one,
  };
  const isWorn = wear.wornAtM2.value <= wear.areaM2;
  const to = Math.max(4, Math.ceil(Math.max(end.value * 1.6, wear.sheets * 1.25)));
  const step = niceStep(to / 6);
  const about = (sheets: number) => Math.max(0, Math.round(sheets));
  return {
    ...common,
    scale: {
      from: 0,
      to,
      ticks: Array.from({ length: Math.floor(to / step) + 1 }, (_, place) => ({
        at: place * step,
        words: place === 0 ? "0 sheets" : String(place * step),
      })),
    },
    // Worn by its age alone it is used up, however few sheets went through.
    filledTo: isWorn ? to : Math.min(to, wear.sheets),
    strokes: Array.from({ length: Math.min(60, wear.sheets) }, (_, place) => place + 0.5),
    ...(!isWorn && { end: { ...end, words: "worn" } }),
    says: isWorn
      ? `${wear.sheets} sheets went through; it is worn by now.`
      : `${wear.sheets} sheets of about this size went through; worn at about ${about(end.value)}, nine in ten between ${about(end.low)} and ${about(end.high)}.`,
  };
}

/** A stroke a sheet; those that went in together stand side by side. */
function strokesOf({ wear }: BathOnHand, apart: number): readonly number[] {
  return wear.through.flatMap(({ at, sheets }) =>
    Array.from({ length: Math.min(20, sheets) }, (_, place) => at + place * apart),
  );
}

function niceStep(least: number): number {
  for (let ten = 1; ; ten *= 10) for (const step of [1, 2, 5]) if (step * ten >= least) return step * ten;
}
