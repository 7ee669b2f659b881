import { parseNumber, type ReadAnswer } from "@captray/science/notation";

/** Reads a density as measured on a band. */
export function readDensity(text: string): ReadAnswer {
  if (text.trim() === "") return { kind: "empty" };
  try {
    const value = parseNumber({ text });
    if (value >= 0 && value <= 4) return { kind: "read", value, understood: "" };
  } catch {
    // What cannot be read and what does not fit are answered alike.
  }
  return { kind: "unreadable", text, at: 0, message: "A density lies between 0 and 4: bare paper about 0.06." };
}
