import type { FocusFound } from "@captray/notebook/answers";
import type { Focus, Typed } from "@captray/notebook/records";
import { formatLength, parseLength, parseNumber, type ReadAnswer, readLength } from "@captray/science/notation";
import { honestDigits } from "../../../kit/honestDigits.ts";

export type FocusWay = Focus["by"];

/** The ways to say how the camera stands, the one with a ruler first. */
export const focusWays: readonly { readonly value: FocusWay; readonly name: string }[] = [
  { value: "extension", name: "board to ground glass" },
  { value: "imageSize", name: "image size" },
  { value: "magnification", name: "magnification" },
  { value: "subjectDistance", name: "subject to lens" },
  { value: "totalDistance", name: "subject to paper" },
  { value: "travel", name: "racked out past infinity" },
  { value: "distant", name: "distant" },
];

/** What is typed for a way; `second` is the size of the subject. */
export interface FocusTexts {
  readonly first: string;
  readonly second: string;
}

/** The texts a kept focus was typed as; empty where it was said in another way. */
export function focusTexts(focus: Focus | undefined, way: FocusWay): FocusTexts {
  const none = { first: "", second: "" };
  if (focus === undefined || focus.by !== way) return none;
  const text = (typed: { readonly value: number; readonly text?: string | undefined }) =>
    typed.text ?? String(typed.value);
  switch (focus.by) {
    case "distant":
      return none;
    case "extension":
      return { first: text(focus.extensionMm), second: "" };
    case "travel":
      return { first: text(focus.travelMm), second: "" };
    case "magnification":
      return { first: text(focus.magnification), second: "" };
    case "imageSize":
      return { first: text(focus.imageSizeMm), second: text(focus.subjectSizeMm) };
    case "subjectDistance":
      return { first: text(focus.subjectDistanceMm), second: "" };
    case "totalDistance":
      return { first: text(focus.totalDistanceMm), second: "" };
  }
}

/** The focus that was typed; nothing while something cannot be read. */
export function focusFrom(way: FocusWay, texts: FocusTexts): Focus | undefined {
  if (way === "distant") return { by: "distant" };
  const reader = way === "magnification" ? readMagnification : (text: string) => readLength({ text });
  const first = typedFrom(reader, texts.first);
  if (first === undefined) return undefined;
  switch (way) {
    case "extension":
      return { by: way, extensionMm: first };
    case "travel":
      return { by: way, travelMm: first };
    case "magnification":
      return { by: way, magnification: first };
    case "imageSize": {
      const second = typedFrom(reader, texts.second);
      return second && { by: way, imageSizeMm: first, subjectSizeMm: second };
    }
    case "subjectDistance":
      return { by: way, subjectDistanceMm: first };
    case "totalDistance":
      return { by: way, totalDistanceMm: first };
  }
}

function typedFrom(reader: (text: string) => ReadAnswer, text: string): Typed | undefined {
  const read = reader(text);
  if (read.kind !== "read" || !(read.value > 0) || read.value > 1e9) return undefined;
  return { value: read.value, text: text.trim().slice(0, 60) };
}

/** A magnification as 0.25, 1:4 or 1/4. */
export function readMagnification(text: string): ReadAnswer {
  if (text.trim() === "") return { kind: "empty" };
  const [image = "", subject, more] = text.trim().split(/\s*[:/]\s*/);
  try {
    if (more !== undefined) throw new Error("more than two sides");
    const value = parseNumber({ text: image }) / (subject === undefined ? 1 : parseNumber({ text: subject }));
    if (value > 0 && value < 1000) return { kind: "read", value, understood: ratioWords(value) };
  } catch {
    // What cannot be read and what cannot be are answered alike.
  }
  return { kind: "unreadable", text, at: 0, message: "A magnification: 0.25, or 1:4." };
}

/** “the image is a quarter of the subject” is said as 1 : 4. */
function ratioWords(value: number): string {
  const figures = (size: number) => String(Number(size.toPrecision(2)));
  return value < 1 ? `1 to ${figures(1 / value)}` : `${figures(value)} to 1`;
}

/** The two sides of a picture as 13 × 18 cm, 130x180 or 4x5 in. */
export function parseFormat(text: string): { readonly widthMm: number; readonly heightMm: number } | undefined {
  const parts = /^\s*([\d.,]+)\s*(?:x|×|by)\s*([\d.,]+)\s*(mm|cm|in|inch|")?\s*$/i.exec(text);
  if (parts === null) return undefined;
  const [, width = "", height = "", unit] = parts;
  try {
    const bare = unit === undefined && parseNumber({ text: width }) < 60 ? " cm" : ` ${unit ?? "mm"}`;
    const sides = [parseLength({ text: width + bare }), parseLength({ text: height + bare })];
    const [widthMm = 0, heightMm = 0] = sides.sort((a, b) => a - b);
    return widthMm >= 5 && heightMm <= 3000 ? { widthMm, heightMm } : undefined;
  } catch {
    return undefined;
  }
}

export function readFormat(text: string): ReadAnswer {
  if (text.trim() === "") return { kind: "empty" };
  const format = parseFormat(text);
  return format === undefined
    ? { kind: "unreadable", text, at: 0, message: "Two sides: 13 × 18 cm, or 4x5 in." }
    : { kind: "read", value: format.widthMm, understood: formatWords(format, "mm") };
}

/** “13 × 18 cm”, “4 × 5 in”. */
export function formatWords(
  { widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number },
  lengthUnit: "mm" | "inch",
): string {
  const side = (mm: number) => String(Number((mm / (lengthUnit === "mm" ? 10 : 25.4)).toFixed(1)));
  return `${side(widthMm)} × ${side(heightMm)} ${lengthUnit === "mm" ? "cm" : "in"}`;
}

/** One of the ways the focus can be said, with its doubt. */
export interface FocusRow {
  readonly way: FocusWay | "takesIn";
  readonly name: string;
  readonly value: string;
  readonly plusMinus: string | undefined;
}

/** All the other ways to say what one was typed for. */
export function focusRows({
  found,
  format,
  lengthUnit,
}: {
  readonly found: FocusFound;
  readonly format: { readonly widthMm: number; readonly heightMm: number } | undefined;
  readonly lengthUnit: "mm" | "inch";
}): FocusRow[] {
  const { by, magnification: m, extensionMm, travelMm, subjectDistanceMm, totalDistanceMm } = found;
  const rows: FocusRow[] = [];
  const length = (way: FocusRow["way"], name: string, at: { readonly value: number; readonly sd: number } | null) => {
    if (way === by || at === null) return;
    rows.push({ way, name, ...lengthWithDoubt(at, lengthUnit) });
  };
  length("extension", "Board to ground glass", extensionMm);
  if (m.value > 0) {
    length("travel", "Racked out past infinity", travelMm);
    if (by !== "magnification") {
      const { value, plusMinus } = honestDigits({ ...m, of: "other" });
      rows.push({
        way: "magnification",
        name: "Magnification",
        value: `${value}, ${ratioWords(m.value)}`,
        plusMinus,
      });
    }
    if (by !== "imageSize") {
      const metre = { value: 1000 * m.value, sd: 1000 * m.sd };
      rows.push({ way: "imageSize", name: "A metre of the subject is", ...lengthWithDoubt(metre, lengthUnit) });
    }
    length("subjectDistance", "Subject to lens", subjectDistanceMm);
    length("totalDistance", "Subject to paper", totalDistanceMm);
    if (format !== undefined) {
      const size = { widthMm: format.widthMm / m.value, heightMm: format.heightMm / m.value };
      rows.push({
        way: "takesIn",
        name: "The sheet takes in",
        value: `${formatLength({ lengthMm: Number(size.widthMm.toPrecision(2)), unit: lengthUnit })} × ${formatLength({ lengthMm: Number(size.heightMm.toPrecision(2)), unit: lengthUnit })}`,
        plusMinus: undefined,
      });
    }
  }
  return rows;
}

const footMm = 304.8;

/** A length and its ± in the unit it is spoken in: mm up to a metre, then m; inches up to three feet, then feet. */
export function lengthWithDoubt(
  { value, sd }: { readonly value: number; readonly sd: number },
  lengthUnit: "mm" | "inch",
): { readonly value: string; readonly plusMinus: string | undefined } {
  const [size, unit] =
    lengthUnit === "mm"
      ? value >= 1000
        ? [1000, "m"]
        : [1, "mm"]
      : value >= 3 * footMm
        ? [footMm, "ft"]
        : [25.4, "in"];
  if (sd === 0) return { value: `${Number((value / size).toPrecision(4))} ${unit}`, plusMinus: undefined };
  const said = honestDigits({ value: value / size, sd: sd / size, of: "other" });
  return { value: `${said.value} ${unit}`, plusMinus: said.plusMinus };
}
