import { parseExposureIndex } from "./parseExposureIndex.ts";
import type { TextInput } from "./parseTime.ts";
import { figures } from "./plainDigits.ts";
import { type ReadAnswer, readField } from "./readField.ts";

/**
 * A field for the exposure index of a paper, read at every key stroke; it never throws.
 *
 * Formula  the grammar of `parseExposureIndex`.
 * Units    none
 * Holds    above zero; far below any dial is usual.
 *
 * @source none: see parseExposureIndex (common practice)
 * @example readExposureIndex({ text: "0,7" }).understood // "EI 0.7"
 */
export function readExposureIndex({ text }: TextInput): ReadAnswer {
  return readField(text, {
    field: "number",
    parse: (candidate) => ({ value: parseExposureIndex({ text: candidate }) }),
    understand: ({ value }) => `EI ${figures(value, 4)}`,
  });
}
