import { formatLength } from "./formatLength.ts";
import { parseLength } from "./parseLength.ts";
import type { TextInput } from "./parseTime.ts";
import { type ReadAnswer, readField } from "./readField.ts";

/**
 * A field for a length, read at every key stroke; it never throws.
 *
 * Formula  the grammar of `parseLength`; a bare number is millimetres.
 * Units    mm
 * Holds    from 0 up; a place that needs more than 0 says so itself.
 *
 * @source none: see parseLength (common practice)
 * @example readLength({ text: "8 1/2 in" }).understood // "215.9 mm, 8 1/2 in"
 */
export function readLength({ text }: TextInput): ReadAnswer {
  return readField(text, {
    field: "length",
    parse: (candidate) => ({ value: parseLength({ text: candidate }) }),
    understand: ({ value }, candidate) => {
      const inMm = formatLength({ lengthMm: value, unit: "mm" });
      return /in|["″”]/i.test(candidate) ? `${inMm}, ${formatLength({ lengthMm: value, unit: "inch" })}` : inMm;
    },
  });
}
