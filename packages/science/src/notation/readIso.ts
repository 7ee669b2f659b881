import { parseIso } from "./parseIso.ts";
import type { TextInput } from "./parseTime.ts";
import { figures } from "./plainDigits.ts";
import { type ReadAnswer, readField } from "./readField.ts";

/**
 * A field for the speed set on the meter, read at every key stroke; it never throws.
 *
 * Formula  the grammar of `parseIso`.
 * Units    none
 * Holds    above zero.
 *
 * @source none: see parseIso (common practice)
 * @example readIso({ text: "100/21°" }).understood // "ISO 100"
 */
export function readIso({ text }: TextInput): ReadAnswer {
  return readField(text, {
    field: "number",
    parse: (candidate) => ({ value: parseIso({ text: candidate }) }),
    understand: ({ value }) => `ISO ${figures(value, 4)}`,
  });
}
