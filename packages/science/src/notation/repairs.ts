type Field = "time" | "fNumber" | "ev" | "length" | "number";
type Repair = (text: string) => string;

/** Signs that look alike: a letter o or l among digits, strokes and minus signs of other alphabets. */
const lookAlikes: Repair = (text) =>
  text
    .replace(/[\\⁄∕／]/g, "/")
    .replace(/[‐‑‒–—]/g, "-")
    .replace(/(?<=[\d./,:]\s?)[oO]|[oO](?=[\d.,:])/g, "0")
    .replace(/(?<=[\d./,:])[oO]/g, "0")
    .replace(/(?<=[\d./,:])[lI|]|(?<![a-z])[lI|](?=[\d./,:])/gi, "1");

const doubledPoint: Repair = (text) => text.replace(/([.,])[.,]+/g, "$1");

/** A sign the hand has not finished, or one too many, behind a number. */
const looseEnd: Repair = (text) => text.replace(/(?<=[\d½⅓⅔¼¾])\s*[.,;:!?+]+\s*$/, "");

/** Words in front of the number: about, ca. */
const wordsBefore: Repair = (text) => text.replace(/^[^\d.,½⅓⅔¼¾\-−]+/, "");

/** Words behind it, so long as they hold no other number. */
const wordsBehind: Repair = (text) => text.replace(/(?<=[\d½⅓⅔¼¾"'″′])\s*[\p{L}][^\d½⅓⅔¼¾]*$/u, "");

const unitWords: Repair = (text) =>
  text
    .replace(/\b(?:hours?|hrs?)\b\.?/gi, "h")
    .replace(/\b(?:minutes?|mins)\b\.?/gi, "min")
    .replace(/\b(?:seconds?|secs)\b\.?/gi, "s")
    .replace(/(?<=\d)(?:hours?|hrs?)\b\.?/gi, "h")
    .replace(/(?<=\d)(?:minutes?|mins)\b\.?/gi, "min")
    .replace(/(?<=\d)(?:seconds?|secs)\b\.?/gi, "s")
    .replace(/\band\b/gi, " ")
    .replace(/''|’’|′′/g, '"');

/** 1:75 cannot be on a watch; written with letters it can be meant. */
const letterForm: Repair = (text) =>
  text
    .replace(/^(\s*\d+):(\d+):(\d+)/, "$1h$2m$3")
    .replace(/^(\s*\d+):(\d+)/, "$1m$2")
    .replace(/^(\s*\d+)\s+(\d+)\s*$/, "$1m$2");

const lengthWords: Repair = (text) =>
  text
    .replace(/milli?met(?:re|er)s?/gi, "mm")
    .replace(/centimet(?:re|er)s?/gi, "cm")
    .replace(/met(?:re|er)s?/gi, "m")
    .replace(/''|’’|′′/g, '"')
    .replace(/(\d)-(?=\d+\/\d)/g, "$1 ");

/** Engraved on lenses: 1:5.6; typed in haste: f:8, f=8, f.8. */
const fSigns: Repair = (text) => text.replace(/^\s*(?:f\s*[:=.\\|]+|1\s*:)\s*/i, "f/");

const withSeconds: Repair = (text) => `${wordsBehind(text)} s`;

const REPAIRS: Readonly<Record<Field, readonly Repair[]>> = {
  time: [unitWords, letterForm, doubledPoint, looseEnd, wordsBefore, withSeconds, wordsBehind],
  fNumber: [fSigns, doubledPoint, looseEnd, wordsBefore, wordsBehind],
  ev: [doubledPoint, looseEnd, wordsBefore, wordsBehind],
  length: [lengthWords, doubledPoint, looseEnd, wordsBefore, wordsBehind],
  number: [doubledPoint, looseEnd, wordsBefore, wordsBehind],
};

/** Longer than any number somebody types: not worth guessing at. */
const LONGEST = 60;

/** What may have been meant, most probable first: each repair alone, then one upon the other. */
export function repairsOf(text: string, field: Field): readonly string[] {
  if (text.length > LONGEST) return [];
  const start = lookAlikes(text.trim());
  const alone = REPAIRS[field].map((repair) => repair(start).trim());
  const together: string[] = [];
  let sum = start;
  for (const repair of REPAIRS[field]) {
    sum = repair(sum).trim();
    together.push(sum);
  }
  return [...new Set([start, ...alone, ...together])].filter((candidate) => candidate !== text && candidate !== "");
}
