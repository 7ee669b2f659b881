import * as z from "zod/mini";

/** An id has 26 characters of Crockford's base 32, the first at most 7 (48 bits of time). */
const form = /^[0-7][0-9A-HJKMNP-TV-Z]{25}$/;

/** What a record or a list item is called in links, routes and names; never a sheet's code. */
export const recordId = z.string().check(z.regex(form)).brand<"RecordId">();
export type RecordId = z.output<typeof recordId>;

/** Whether a text, of an address for instance, has the form of an id. */
export function isRecordId(text: string): text is RecordId {
  return form.test(text);
}
