import { dialTime } from "./dialTime.ts";
import { parseTime, type TextInput } from "./parseTime.ts";
import { figures, plainDigits } from "./plainDigits.ts";
import { type ReadAnswer, readField } from "./readField.ts";
import { understandTime } from "./readTime.ts";

/**
 * A field for the time of a meter reading, read at every key stroke; it never throws.
 *
 * Formula  the grammar of `parseTime`; a mark of the dial means its exact member (`dialTime`).
 * Units    s
 * Holds    for meter readings only; every other time is literal: `readTime`.
 *
 * @source none: see dialTime (common practice)
 * @example readDialTime({ text: "1/15" }).understood // "1/16 s exactly, as the dial means it"
 */
export function readDialTime({ text }: TextInput): ReadAnswer {
  return readField(text, {
    field: "time",
    parse: (candidate) => {
      const { timeS, marked } = dialTime({ text: candidate });
      return { value: timeS, marked };
    },
    understand: ({ value, marked }, candidate) => {
      if (marked !== true) return `${understandTime(value)}, as it stands: no mark of a dial`;
      if (parseTime({ text: candidate }) === value) return `${exactly(value)}, a mark of the dial`;
      const whole = Number.isInteger(Math.log2(value)) ? " exactly" : "";
      return `${exactly(value)}${whole}, as the dial means it`;
    },
  });
}

function exactly(timeS: number): string {
  const below = 1 / timeS;
  if (timeS < 1 && Number.isInteger(below)) return `1/${plainDigits(below)} s`;
  return `${figures(timeS, 3)} s`;
}
