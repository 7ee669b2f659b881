import {
  parseNumber,
  type ReadAnswer,
  readDialTime,
  readEv,
  readFNumber,
  readIso,
  readLength,
} from "@captray/science/notation";
import type { Draft, FieldName } from "./draft.ts";

/** Reads the meter's first field: a time as its dial marks it, or an exposure value where “EV” stands before it. */
export function readMeter(text: string): ReadAnswer {
  return saysEv(text) ? readEv({ text }) : readDialTime({ text });
}

/** Whether the meter was read in exposure values. */
export function saysEv(text: string): boolean {
  return /^\s*ev/i.test(text);
}

/** Whether the subject is far enough away to count as infinity. */
export function saysDistant(text: string): boolean {
  return /^\s*(distant|infinity|inf|∞)\s*$/i.test(text);
}

/** Reads the board-to-glass field: a length, or “distant”. */
function readExtension(text: string): ReadAnswer {
  return saysDistant(text)
    ? { kind: "read", value: 0, understood: "a distant subject: nothing to add" }
    : readLength({ text });
}

/** Reads the exponent of a paper's long exposures. */
export function readExponent(text: string): ReadAnswer {
  if (text.trim() === "") return { kind: "empty" };
  try {
    const value = parseNumber({ text });
    if (value > 0.5 && value <= 1) return { kind: "read", value, understood: value === 1 ? "none needed" : "" };
  } catch {
    // What cannot be read and what cannot be are answered alike.
  }
  return { kind: "unreadable", text, at: 0, message: "An exponent lies above 0.5, up to 1." };
}

/** Reads a plain figure above nothing, said with its unit. */
export function readPlainNumber(text: string, unit: string): ReadAnswer {
  if (text.trim() === "") return { kind: "empty" };
  const bare = text.trim().toLowerCase().endsWith(unit) ? text.trim().slice(0, -unit.length) : text;
  try {
    const value = parseNumber({ text: bare.trim() });
    if (value > 0 && isSensible(value)) return { kind: "read", value, understood: `${value} ${unit}` };
  } catch {
    // What cannot be read and what cannot be are answered alike.
  }
  return { kind: "unreadable", text, at: 0, message: `A number of ${unit}, above 0.` };
}

const readers: { readonly [F in FieldName]: (text: string) => ReadAnswer } = {
  time: readMeter,
  meterFNumber: (text) => readFNumber({ text }),
  iso: (text) => readIso({ text }),
  focalLength: (text) => readLength({ text }),
  lensFNumber: (text) => readFNumber({ text }),
  extension: readExtension,
};

/** Figures beyond these are slips of the pen: nothing in a camera, a meter or a box of paper is so small or so large. */
const least = 1e-7;
const most = 1e8;

/** How a field's text is read. */
export function readerOf(field: FieldName): (text: string) => ReadAnswer {
  return (text) => {
    const read = readers[field](text);
    if (read.kind !== "read" || isSensible(read.value)) return read;
    const message = Math.abs(read.value) > most ? "That is larger than it can be." : "That is smaller than it can be.";
    return { kind: "unreadable", text, at: 0, message };
  };
}

/** Whether a figure is one that could have been read, measured or told. */
export function isSensible(value: number): boolean {
  return value === 0 || (Math.abs(value) >= least && Math.abs(value) <= most);
}

/** The value of a field, with its text and whether it is a mark; nothing where it cannot be read or is not above zero. */
export function fieldValue(
  { texts }: Draft,
  field: FieldName,
): { value: number; text: string; mark?: boolean } | undefined {
  const text = texts[field];
  const read = readerOf(field)(text);
  if (read.kind !== "read") return undefined;
  if (read.value <= 0 && !(field === "time" && saysEv(text))) return undefined;
  return { value: read.value, text: text.trim().slice(0, 60), ...(read.marked !== undefined && { mark: read.marked }) };
}
