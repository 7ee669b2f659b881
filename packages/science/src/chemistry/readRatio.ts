export interface ReadRatioInput {
  /** As it was written: 1+7, 1 + 1,5 or 1:7. */
  readonly text: string;
}

export type ReadRatio =
  | { readonly kind: "read"; readonly parts: number }
  /** `1:n` means two things in the trade: it is asked, never guessed. */
  | { readonly kind: "ask"; readonly readings: readonly RatioReading[] }
  | { readonly kind: "unreadable"; readonly at: number };

export interface RatioReading {
  readonly meaning: "oneWith" | "oneIn";
  /** How it is then written and kept. */
  readonly text: string;
  readonly parts: number;
}

const NUMBER = "\\d{1,6}(?:[.,]\\d{1,6})?";
const RATIO = new RegExp(`^\\s*1(?:[.,]0+)?\\s*([+:])\\s*(${NUMBER})\\s*$`);

/**
 * Reads a dilution as it stands in a recipe: `1+n` is one part with n parts, `1:n` is asked about.
 *
 * Grammar  1 + n or 1 : n, blanks allowed, n with point or comma
 * Units    none: parts
 * Holds    `1:n` may be one part with n (1+n) or one part in n (1 + (n − 1)); both are handed back.
 *
 * @source iso-78-2: the form (V1 + V2) (from memory); none: 1:n is read both ways (common practice)
 * @example readRatio({ text: "1 : 5" }).readings // [{ "meaning": "oneWith", "text": "1+5", "parts": 5 }, { "meaning": "oneIn", "text": "1+4", "parts": 4 }]
 */
export function readRatio({ text }: ReadRatioInput): ReadRatio {
  const [, sign, figure = ""] = RATIO.exec(text) ?? [];
  if (sign === undefined) return { kind: "unreadable", at: firstOdd(text) };
  const parts = Number(figure.replace(",", "."));
  if (sign === "+") return { kind: "read", parts };
  if (parts < 1) return { kind: "unreadable", at: text.indexOf(figure) };
  const reading = (meaning: RatioReading["meaning"], n: number): RatioReading => ({
    meaning,
    text: `1+${plain(n)}`,
    parts: n,
  });
  return { kind: "ask", readings: [reading("oneWith", parts), reading("oneIn", parts - 1)] };
}

function plain(parts: number): string {
  return String(Number(parts.toFixed(6)));
}

/** Where the text stops being a ratio. */
function firstOdd(text: string): number {
  const good = /^\s*(?:1(?:[.,]0+)?\s*(?:[+:]\s*(?:\d{1,6}(?:[.,]\d{0,6})?)?)?)?\s*/.exec(text)?.[0] ?? "";
  return good.length;
}
