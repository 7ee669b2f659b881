import {
  parseNumber,
  type ReadAnswer,
  readExposureIndex,
  readFNumber,
  readIso,
  readLength,
  readTime,
} from "@captray/science/notation";

/** The largest figure a record takes. */
const most = 1e8;

/** A length that is more than nothing. */
export function readMm(text: string): ReadAnswer {
  return aboveZero(readLength({ text }), "A length is more than 0.");
}

export function readStop(text: string): ReadAnswer {
  return aboveZero(readFNumber({ text }), "An f-number is more than 0.");
}

/** The ISO of a dial or of a paper. */
export function readSpeed(text: string): ReadAnswer {
  return aboveZero(readIso({ text }), "An ISO is more than 0.");
}

/** The exposure index of a paper. */
export function readIndex(text: string): ReadAnswer {
  return aboveZero(readExposureIndex({ text }), "An exposure index is more than 0.");
}

/** Seconds that a watch says, not the mark of a dial. */
export function readSeconds(text: string): ReadAnswer {
  return aboveZero(readTime({ text }), "A time is more than 0.");
}

/** A number of things: a whole one. */
export function readCount(words: string, least = 0, mostOf = 1_000_000): (text: string) => ReadAnswer {
  return (text) => readPlain(text, (value) => Number.isInteger(value) && value >= least && value <= mostOf, words);
}

/** A number that must lie within limits, both included. */
export function readWithin(words: string, least: number, mostOf: number): (text: string) => ReadAnswer {
  return (text) => readPlain(text, (value) => value >= least && value <= mostOf, words);
}

/** The exponent of a paper's long exposures. */
export const readExponent = readPlainly("An exponent lies above 0.5, up to 1.", (value) => value > 0.5 && value <= 1);

/** Stops of either sign. */
export const readStops = readWithin("Stops, from −20 to 20.", -20, 20);

/** A ± in stops, nine in ten. */
export const readDoubt = readWithin("A doubt in stops, from 0 to 5.", 0, 5);

/** Several lengths in a row, parted by spaces or semicolons: the answer is their mean. */
export function readLengths(text: string): ReadAnswer {
  if (text.trim() === "") return { kind: "empty" };
  const values = lengthsIn(text);
  if (values === undefined) return unreadable(text, "Readings in mm, parted by spaces: 18.3 18.5 18.4.");
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const understood = values.length === 1 ? `${values[0]} mm` : `${values.length} readings, mean ${mean.toFixed(2)} mm`;
  return { kind: "read", value: mean, understood };
}

/** The lengths of such a row, or nothing where one of them cannot be read. */
export function lengthsIn(text: string): readonly number[] | undefined {
  const parts = text
    .replace(/\s*mm\b/gi, "")
    .split(/[\s;]+/)
    .filter(Boolean);
  const read = parts.map((part) => readMm(part));
  const values = read.flatMap((answer) => (answer.kind === "read" && answer.value <= most ? [answer.value] : []));
  return values.length === parts.length && values.length > 0 && values.length <= 20 ? values : undefined;
}

const months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

/** A day: 9.11.2026, 9 November 2026 or 2026-11-09; its value is noon of it in ms since 1970, as if in UTC. */
export function readDay(text: string): ReadAnswer {
  const said = text.trim().toLowerCase();
  if (said === "") return { kind: "empty" };
  const byYear = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(said);
  const byDay = /^(\d{1,2})[./](\d{1,2})[./](\d{4})$/.exec(said);
  const byName = /^(\d{1,2})\.?\s+([a-z]{3,9})\.?\s+(\d{4})$/.exec(said);
  const [year, month, day] = byYear
    ? [Number(byYear[1]), Number(byYear[2]), Number(byYear[3])]
    : byDay
      ? [Number(byDay[3]), Number(byDay[2]), Number(byDay[1])]
      : byName
        ? [Number(byName[3]), months.indexOf((byName[2] ?? "").slice(0, 3)) + 1, Number(byName[1])]
        : [0, 0, 0];
  const at = Date.UTC(year, month - 1, day, 12);
  const back = new Date(at);
  const real = year >= 1970 && back.getUTCMonth() === month - 1 && back.getUTCDate() === day;
  return real
    ? { kind: "read", value: at, understood: dayWords(at) }
    : unreadable(text, "A day: 9.11.2026 or 9 November 2026.");
}

/** A day in words: “9 November 2026”. */
export function dayWords(at: number): string {
  return new Date(at).toLocaleDateString("en-GB", { day: "numeric", month: "long", year: "numeric", timeZone: "UTC" });
}

/** A plain number of any kind that fits. */
function readPlain(text: string, fits: (value: number) => boolean, message: string): ReadAnswer {
  if (text.trim() === "") return { kind: "empty" };
  try {
    const value = parseNumber({ text });
    if (fits(value)) return { kind: "read", value, understood: "" };
  } catch {
    // What cannot be read and what does not fit are answered alike.
  }
  return unreadable(text, message);
}

function readPlainly(words: string, fits: (value: number) => boolean): (text: string) => ReadAnswer {
  return (text) => readPlain(text, fits, words);
}

function aboveZero(answer: ReadAnswer, message: string): ReadAnswer {
  if (answer.kind !== "read" || (answer.value > 0 && answer.value <= most)) return answer;
  return { kind: "unreadable", text: "", at: 0, message };
}

function unreadable(text: string, message: string): ReadAnswer {
  return { kind: "unreadable", text, at: 0, message };
}
