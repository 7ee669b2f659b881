import { type Cursor, checked, openText, refuse, refuseUnlessAtEnd, skipSpaces, take, takeQuantity } from "./cursor.ts";

export interface TextInput {
  readonly text: string;
}

const UNIT_S = [3600, 60, 1] as const;

/**
 * The seconds a text means, as photographers write times. Never snapped to a mark of a dial: see `dialTime`.
 *
 * Formula  [H h][M m|min|'][S s|sec|"] · H:M:S · M:SS; each part a decimal (point or comma), a fraction 1/60, 1 1/2 or one of
 *          ½ ⅓ ⅔ ¼ ¾. A bare number is seconds; after h or m it is the next smaller unit. Behind a colon two digits below 60.
 *          Primes, typewriter and curly quotes serve for ' and ", capitals for small letters.
 * Units    s
 * Holds    for every time above zero; a text that comes to 0 cannot be read.
 *
 * @throws {OutOfDomain} unreadable, with the text and the place of the first sign that cannot be read
 * @source none: times as they are written on dials and in darkroom notes (common practice)
 * @example parseTime({ text: "1m20" }) // 80, one minute twenty
 */
export function parseTime({ text }: TextInput): number {
  const cursor = openText(text, "a time");
  const hoursOrMinutes = take(cursor, /(\d+)(?=:)/y);
  const timeS = hoursOrMinutes === undefined ? takeParts(cursor) : takeClock(cursor, Number(hoursOrMinutes[1]));
  refuseUnlessAtEnd(cursor);
  return checked(cursor, timeS);
}

function takeClock(cursor: Cursor, first: number): number {
  const lower: number[] = [];
  while (lower.length < 2 && cursor.text.charAt(cursor.at) === ":") {
    cursor.at += 1;
    const part = take(cursor, /[0-5]\d(?!\d)/y);
    if (part === undefined) return refuse(cursor);
    lower.push(Number(part[0]));
  }
  return lower.reduce((sum, part) => sum * 60 + part, first);
}

function takeParts(cursor: Cursor): number {
  let timeS = 0;
  let rank = -1;
  do {
    if (rank === UNIT_S.length - 1) refuse(cursor);
    const amount = takeQuantity(cursor);
    skipSpaces(cursor);
    const place = cursor.at;
    const unit = takeUnit(cursor);
    const isLast = unit === undefined;
    const next = unit ?? (rank < 0 ? UNIT_S.length - 1 : rank + 1);
    if (next <= rank) refuse(cursor, place);
    rank = next;
    timeS += amount * (UNIT_S[rank] ?? 1);
    skipSpaces(cursor);
    if (isLast) break;
  } while (cursor.at < cursor.text.length);
  return timeS;
}

function takeUnit(cursor: Cursor): number | undefined {
  const unit = take(cursor, /h|min|m|sec|s|['′’"″”]/iy)?.[0].toLowerCase();
  if (unit === undefined) return undefined;
  if (unit === "h") return 0;
  return ["m", "min", "'", "′", "’"].includes(unit) ? 1 : 2;
}
