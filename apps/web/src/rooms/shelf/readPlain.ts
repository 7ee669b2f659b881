import { parseNumber, type ReadAnswer } from "@captray/science/notation";

/** Reads a number of sheets: a whole one from 0 up. */
export function readCount(text: string): ReadAnswer {
  return plain(
    text,
    (value) => Number.isInteger(value) && value >= 0 && value <= 1_000_000,
    "Whole sheets, from 0 up.",
  );
}

/** Reads the exponent of a paper's long exposures. */
export function readExponent(text: string): ReadAnswer {
  return plain(text, (value) => value > 0.5 && value <= 1, "An exponent lies above 0.5, up to 1.");
}

/** Reads stops of either sign. */
export function readOffset(text: string): ReadAnswer {
  return plain(text.replace("−", "-"), (value) => Math.abs(value) <= 20, "Stops, from −20 to 20.", true);
}

function plain(text: string, fits: (value: number) => boolean, message: string, signed = false): ReadAnswer {
  if (text.trim() === "") return { kind: "empty" };
  const negative = signed && text.trim().startsWith("-");
  try {
    const size = parseNumber({ text: negative ? text.trim().slice(1) : text });
    const value = negative ? -size : size;
    if (fits(value)) return { kind: "read", value, understood: "" };
  } catch {
    // What cannot be read and what does not fit are answered alike.
  }
  return { kind: "unreadable", text, at: 0, message };
}
