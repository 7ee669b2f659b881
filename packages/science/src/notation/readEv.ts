import { parseEv } from "./parseEv.ts";
import type { TextInput } from "./parseTime.ts";
import { figures } from "./plainDigits.ts";
import { type ReadAnswer, readField } from "./readField.ts";

/**
 * A field for an exposure value, read at every key stroke; it never throws.
 *
 * Formula  the grammar of `parseEv`.
 * Units    EV
 * Holds    for every finite number.
 *
 * @source none: see parseEv (common practice)
 * @example readEv({ text: "12⅓" }).understood // "EV 12.33"
 */
export function readEv({ text }: TextInput): ReadAnswer {
  return readField(text, {
    field: "ev",
    parse: (candidate) => ({ value: parseEv({ text: candidate }) }),
    understand: ({ value }) => `EV ${value < 0 ? "−" : ""}${figures(Math.abs(value), 4)}`,
  });
}
