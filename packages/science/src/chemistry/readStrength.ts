import type { StrengthBasis } from "./mixTypes.ts";
import { peroxideStrength } from "./peroxideStrength.ts";
import { type RatioReading, readRatio } from "./readRatio.ts";

export interface ReadStrengthInput {
  /** As it stands on the label or in the recipe: 12 %, 3 % w/v, 20 vol, 30 g/L, 1+4. */
  readonly text: string;
  /** What it is of; left out: unknown. */
  readonly what?: string;
}

/** One thing a figure may mean. */
export interface StrengthReading {
  readonly basis: StrengthBasis;
  readonly value: number;
  /** The same as grams in 100 mL; null where no density is known. */
  readonly percentWv: number | null;
}

export type ReadStrength =
  | { readonly kind: "strength"; readonly value: number; readonly basis: StrengthBasis }
  | { readonly kind: "ratio"; readonly parts: number }
  /** A bare per cent or number: asked, never guessed. `apart` is the largest over the smallest; 1.02 hardly matters. */
  | { readonly kind: "askBasis"; readonly readings: readonly StrengthReading[]; readonly apart: number | null }
  | { readonly kind: "askRatio"; readonly readings: readonly RatioReading[] }
  | { readonly kind: "unreadable"; readonly at: number };

const FIGURE = /^\s*(\d{1,6}(?:[.,]\d{1,6})?)\s*/;

/** What may stand behind the figure, in small letters and without blanks. */
const UNITS: readonly (readonly [RegExp, StrengthBasis])[] = [
  [/^(?:%(?:w\/w|m\/m|byweight)|(?:w\/w|m\/m)%?|g\/100g)$/, "percentWw"],
  [/^(?:%(?:w\/v|m\/v)|(?:w\/v|m\/v)%?|g\/100ml)$/, "percentWv"],
  [/^(?:v|vols?|volumes?)\.?$/, "volumes"],
  [/^g\/l(?:itre|iter)?$/, "gramsPerL"],
  [/^(?:m|mol\/l|molar)$/, "molar"],
];

/**
 * Reads a strength as labels and recipes write it; what can mean two things is handed back as a question.
 *
 * Grammar  figure, then % w/w, % w/v, vol, g/L or M; or 1+n; a bare %, a bare figure and 1:n are asked about
 * Units    as written; the readings also in g in 100 mL
 * Holds    for point and comma, with and without blanks; volumes are read for peroxide only.
 *
 * @source none: what stands on labels (common practice); handbook-densities: peroxide in g in 100 mL (from memory)
 * @example readStrength({ text: "20 vol", what: "peroxide" }) // { "kind": "strength", "value": 20, "basis": "volumes" }
 */
export function readStrength({ text, what }: ReadStrengthInput): ReadStrength {
  const ratio = readRatio({ text });
  if (ratio.kind === "read") return { kind: "ratio", parts: ratio.parts };
  if (ratio.kind === "ask") return { kind: "askRatio", readings: ratio.readings };
  const [figure, digits = ""] = FIGURE.exec(text) ?? [];
  if (figure === undefined) return { kind: "unreadable", at: /^\s*/.exec(text)?.[0].length ?? 0 };
  const value = Number(digits.replace(",", "."));
  const unit = text.slice(figure.length).toLowerCase().replace(/\s+/g, "");
  const isPeroxide = what === undefined || what === "peroxide";
  if (unit === "" || unit === "%") {
    const bases: readonly StrengthBasis[] =
      unit === "%" || !isPeroxide ? ["percentWv", "percentWw"] : ["percentWv", "percentWw", "volumes"];
    return ask(value, bases, what === "peroxide");
  }
  const basis = UNITS.find(([pattern]) => pattern.test(unit))?.[1];
  if (basis === undefined || (basis === "volumes" && !isPeroxide)) return { kind: "unreadable", at: figure.length };
  return { kind: "strength", value, basis };
}

function ask(value: number, bases: readonly StrengthBasis[], isPeroxide: boolean): ReadStrength {
  const readings = bases.map((basis) => ({ basis, value, percentWv: isPeroxide ? wvOf(value, basis) : null }));
  const known = readings.flatMap(({ percentWv }) => (percentWv === null || percentWv === 0 ? [] : [percentWv]));
  const apart = known.length === readings.length ? Math.max(...known) / Math.min(...known) : null;
  return { kind: "askBasis", readings, apart };
}

function wvOf(value: number, basis: StrengthBasis): number | null {
  try {
    return basis === "gramsPerL" ? value / 10 : peroxideStrength({ value, basis }).percentWv;
  } catch {
    // Stronger than any peroxide that is mixed here: then it does not mean this.
    return null;
  }
}
