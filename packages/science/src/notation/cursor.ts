import { OutOfDomain } from "../errors/outOfDomain.ts";

/** A text and how far it has been read. It lives inside one call and never leaves it. */
export interface Cursor {
  readonly text: string;
  readonly wanted: string;
  at: number;
}

const VULGAR: Readonly<Record<string, number>> = { "½": 1 / 2, "⅓": 1 / 3, "⅔": 2 / 3, "¼": 1 / 4, "¾": 3 / 4 };

/** Rules of lengths come in eighths, too. */
export const WITH_EIGHTHS: Readonly<Record<string, number>> = {
  ...VULGAR,
  "⅛": 1 / 8,
  "⅜": 3 / 8,
  "⅝": 5 / 8,
  "⅞": 7 / 8,
};

// Helpers keep positions as arguments: they are called sign by sign.

export function openText(text: string, wanted: string): Cursor {
  const cursor = { text, wanted, at: 0 };
  skipSpaces(cursor);
  return cursor;
}

/** Says that the sign at `at` cannot be read; `reason` only where every sign is good but the whole is not. */
export function refuse(cursor: Cursor, at: number = cursor.at, reason?: string): never {
  const { text, wanted } = cursor;
  throw new OutOfDomain(
    "unreadable",
    reason === undefined ? { text, at, wanted } : { text, at, wanted, reason },
    "text",
  );
}

export function refuseUnlessAtEnd(cursor: Cursor): void {
  skipSpaces(cursor);
  if (cursor.at < cursor.text.length) refuse(cursor);
}

/** The value if it is a finite number, and above zero unless `zeroToo`. */
export function checked(cursor: Cursor, value: number, zeroToo = false): number {
  if (!Number.isFinite(value)) refuse(cursor, 0, "it is larger than can be reckoned with");
  if (value === 0 && !zeroToo) refuse(cursor, 0, "it comes to nothing");
  return value;
}

export function skipSpaces(cursor: Cursor): void {
  take(cursor, /\s+/y);
}

/** What a sticky pattern finds at the cursor, which moves behind it. */
export function take(cursor: Cursor, pattern: RegExp): RegExpExecArray | undefined {
  const sticky = new RegExp(pattern.source, pattern.flags);
  sticky.lastIndex = cursor.at;
  const found = sticky.exec(cursor.text);
  if (found === null) return undefined;
  cursor.at = sticky.lastIndex;
  return found;
}

/** `12`, `12.5`, `12,5` or `.5`. */
export function takeDecimal(cursor: Cursor): number | undefined {
  const found = take(cursor, /\d+(?:[.,]\d+)?|[.,]\d+/y);
  return found === undefined ? undefined : Number(found[0].replace(",", "."));
}

/** `½`, or with a stroke `1/2`; the part below the stroke may be a decimal (`1/1.6`). */
export function takeFraction(cursor: Cursor, signs = VULGAR): number | undefined {
  const value = signs[cursor.text.charAt(cursor.at)];
  if (value !== undefined) {
    cursor.at += 1;
    return value;
  }
  const top = take(cursor, /(\d+)\s*\/\s*/y);
  if (top === undefined) return undefined;
  const place = cursor.at;
  const bottom = takeDecimal(cursor);
  if (bottom === undefined || bottom === 0) return refuse(cursor, place);
  return Number(top[1]) / bottom;
}

/** A decimal, a fraction, or a whole number with a fraction: `2,5` · `1/60` · `½` · `1 1/2` · `1½`. */
export function takeQuantity(cursor: Cursor, signs = VULGAR): number {
  const whole = take(cursor, /(\d+)\s+(?=\d+\s*\/)/y);
  if (whole !== undefined) return Number(whole[1]) + (takeFraction(cursor, signs) ?? 0);
  const fraction = takeFraction(cursor, signs);
  if (fraction !== undefined) return fraction;
  const place = cursor.at;
  const decimal = takeDecimal(cursor);
  if (decimal === undefined) return refuse(cursor, place);
  if (!/[.,]/.test(cursor.text.slice(place, cursor.at))) {
    const before = cursor.at;
    skipSpaces(cursor);
    const added = signs[cursor.text.charAt(cursor.at)];
    if (added !== undefined) {
      cursor.at += 1;
      return decimal + added;
    }
    cursor.at = before;
  }
  return decimal;
}
