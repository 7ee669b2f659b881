import { parseNumber } from "@captray/science/notation";
import type { Reading } from "../../../kit/reading.ts";
import { countIn, volumeIn } from "./mixingState.ts";

/** A volume: 650, 650 ml, 1.2 l. */
export function readVolume(text: string): Reading {
  if (text.trim() === "") return { kind: "empty" };
  const value = volumeIn(text);
  return value === undefined
    ? { kind: "unreadable", message: "A volume above 0: 650 ml, or 1.2 l." }
    : { kind: "read", value, understood: `${Math.round(value)} ml` };
}

/** Sheets of one sitting. */
export function readSheets(text: string): Reading {
  if (text.trim() === "") return { kind: "empty" };
  const value = countIn(text);
  return value === undefined
    ? { kind: "unreadable", message: "A whole number of sheets, 1 to 200." }
    : { kind: "read", value, understood: "" };
}

/** Grams in 100 ml. */
export function readPercent(text: string): Reading {
  if (text.trim() === "") return { kind: "empty" };
  try {
    const value = parseNumber({ text });
    if (value > 0 && value <= 100) return { kind: "read", value, understood: "" };
  } catch {
    // Answered below, like a figure that does not fit.
  }
  return { kind: "unreadable", message: "Grams in 100 ml: above 0, up to 100." };
}
