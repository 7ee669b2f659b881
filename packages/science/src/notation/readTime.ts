import { timeInWords } from "./inWords.ts";
import { parseTime, type TextInput } from "./parseTime.ts";
import { figures, plainDigits } from "./plainDigits.ts";
import { type ReadAnswer, readField } from "./readField.ts";

/**
 * A field for a time, read at every key stroke; it never throws.
 *
 * Formula  the grammar of `parseTime`; what is unreadable comes back with the place, a sentence and the likely meaning.
 * Units    s
 * Holds    for a time with the cap, said or of a bath, which is what the watch says; for a meter reading `readDialTime`.
 *
 * @source none: see parseTime (common practice)
 * @example readTime({ text: "1m20" }).understood // "one minute twenty, 80 s"
 */
export function readTime({ text }: TextInput): ReadAnswer {
  return readField(text, {
    field: "time",
    parse: (candidate) => ({ value: parseTime({ text: candidate }) }),
    understand: ({ value }) => understandTime(value),
  });
}

const LONGEST_IN_WORDS_S = 360_000;

export function understandTime(timeS: number): string {
  const seconds = `${timeS < 1 ? figures(timeS, 3) : readable(timeS)} s`;
  if (timeS >= 60 && timeS < LONGEST_IN_WORDS_S && Number.isInteger(timeS)) return `${timeInWords(timeS)}, ${seconds}`;
  const below = Math.round(1 / timeS);
  if (below < 2 || Math.abs(timeS * below - 1) > 1e-9) return seconds;
  return `${below === 2 ? "half a second" : `1/${figures(below, 4)} s`}, ${seconds}`;
}

/** Every digit of what people type; of an endless one five figures. */
function readable(timeS: number): string {
  const digits = plainDigits(timeS);
  return digits.length <= 7 ? digits : figures(timeS, 5);
}
