import { formatLength } from "../notation/formatLength.ts";
import { figures } from "../notation/plainDigits.ts";

const UNITS: readonly (readonly [RegExp, string])[] = [
  [/CdM2$/, " cd/m²"],
  [/MlM2$/, " mL/m²"],
  [/GM2$/, " g/m²"],
  [/M2L$/, " m²/L"],
  [/M2$/, " m²"],
  [/PerMm$/, " per mm"],
  [/LxS$/, " lx·s"],
  [/Stops$|^stops$/, " stops"],
  [/Deg$/, "°"],
  [/Um$/, " µm"],
  [/Nm$/, " nm"],
  [/Lx$/, " lx"],
  [/Ml$/, " mL"],
  [/MgL$/, " mg/L"],
  [/[sS]PerL$/, " g/L"],
  [/Ww$/, " % w/w"],
  [/Wv$/, " % w/v"],
  [/Cd$/, " cd"],
  [/Lm$/, " lm"],
  [/[a-z]M$/, " m"],
  [/[a-z]S$/, " s"],
  [/[a-z]K$/, " K"],
  [/[a-z]G$/, " g"],
  [/[a-z]L$/, " L"],
  [/[a-z]H$/, " h"],
  [/[a-z]C$/, " °C"],
  [/[a-z]Min$/, " min"],
  [/[a-z]V$/, " V"],
  [/[mM]olar$/, " mol/L"],
];

/** Meter constants end in a capital that is no unit. */
const BARE = new Set(["meterK", "meterC"]);

/** Longer texts are cut: a sentence must stay one. */
const LONGEST_TEXT = 40;

/**
 * A value with its unit as a sentence says it, and "" for what is no value; it never throws and never says NaN. Inner
 * helper of the words.
 */
export function sayValue(key: string, value: unknown, lengthUnit: "mm" | "inch"): string {
  if (typeof value === "string") return quoted(value);
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (typeof value !== "number" || !Number.isFinite(value)) return "";
  const last = key.split("/").findLast((part) => !/^\d+$/.test(part)) ?? "";
  const sign = value < 0 ? "−" : "";
  const size = Math.abs(value);
  if (/Mm$/.test(last) && !/PerMm$/.test(last)) return sign + formatLength({ lengthMm: size, unit: lengthUnit });
  if (/^fNumbers?$|FNumbers?$/.test(last)) return `f/${sign}${digits(size)}`;
  const unit = BARE.has(last) ? "" : (UNITS.find(([pattern]) => pattern.test(last))?.[1] ?? "");
  return sign + digits(size) + (unit === " stops" && size === 1 ? " stop" : unit);
}

/** Two values that are to be told apart: with all their digits where rounding would make them look alike. */
export function pairOf(
  first: readonly [key: string, value: unknown],
  second: readonly [key: string, value: unknown],
  lengthUnit: "mm" | "inch",
): readonly [string, string] {
  const texts = [sayValue(...first, lengthUnit), sayValue(...second, lengthUnit)] as const;
  if (texts[0] !== texts[1] || first[1] === second[1]) return texts;
  return [exactly(first, lengthUnit), exactly(second, lengthUnit)];
}

export function quoted(text: string): string {
  const shown = text.length > LONGEST_TEXT ? `${text.slice(0, LONGEST_TEXT)}…` : text;
  return `"${shown}"`;
}

/** Some choices of many, as a sentence lists them. */
export function listed(choices: unknown): string {
  if (!Array.isArray(choices)) return "";
  const words = choices.map((choice) => (typeof choice === "string" ? choice : String(choice)));
  if (words.length < 2) return words.join("");
  return `${words.slice(0, -1).join(", ")} or ${words.at(-1)}`;
}

function digits(size: number): string {
  return size !== 0 && (size >= 1e9 || size < 1e-6) ? size.toExponential(3).replace("e+", "e") : figures(size, 6);
}

function exactly([key, value]: readonly [string, unknown], lengthUnit: "mm" | "inch"): string {
  if (typeof value !== "number" || !Number.isFinite(value)) return "";
  const last = key.split("/").at(-1) ?? "";
  if (!/Mm$/.test(last)) return String(value);
  return lengthUnit === "mm" ? `${value} mm` : `${value / 25.4} in`;
}

/** A fact that is a number to be said. */
export function isCount(fact: unknown): fact is number {
  return typeof fact === "number" && Number.isFinite(fact);
}

/** A fact that is a text. */
export function textOf(fact: unknown): string | undefined {
  return typeof fact === "string" ? fact : undefined;
}
