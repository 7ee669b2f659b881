import { sizeMm, word } from "./fields.ts";
import { type RecordFrom, record } from "./record.ts";

/** A holder and its sides. What is in a side is derived from the sheets, never kept here. */
export const holder = record("holder", {
  fields: { name: word, format: sizeMm },
  start: { name: "" },
  lists: { sides: { fields: { name: word }, start: { name: "" } } },
});
export type Holder = RecordFrom<typeof holder>;
