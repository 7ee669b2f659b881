import * as z from "zod/mini";
import { isPlainJson, type Json } from "../records/plainJson.ts";
import type { FieldSet } from "../records/record.ts";
import { isRecordId, type RecordId } from "../records/recordId.ts";

/** Sets fields of one record; null clears. */
export type Op = readonly [id: RecordId, kind: string, set: FieldSet];
/** What stood there before: by `kind/id` and path, the value and the name of the change that had set it. */
export type Was = Readonly<Record<string, Readonly<Record<string, readonly [value: Json, name: string]>>>>;

/**
 * One thing a person did, as it lies in the log. `h` is its place in the order of time and its name; `v` the form it was
 * written in; `back` the change it takes back.
 */
export interface Change {
  readonly h: string;
  readonly v: number;
  readonly ops: readonly Op[];
  readonly was: Was;
  readonly note?: string;
  readonly back?: string;
}

/** Time (9 digits of base 36, none after the year 2200), counter (4), device (8), tab (2). */
export const changeName = /^[0-2][0-9a-z]{22}$/;

export const mostOps = 2000;
export const mostBodyCharacters = 1_000_000;

const op = z.tuple([
  z.string().check(z.refine((id) => isRecordId(id))),
  z.string().check(z.regex(/^[a-zA-Z]{1,40}$/)),
  z
    .unknown()
    .check(z.refine((set) => isPlainJson(set) && set !== null && typeof set === "object" && !Array.isArray(set))),
]);

/** The outer form of a change; whether its fields are those of their kind is asked after the upgrades. */
export const changeSchema = z.strictObject({
  h: z.string().check(z.regex(changeName)),
  v: z.int().check(z.gte(0)),
  ops: z.array(op).check(z.maxLength(mostOps)),
  was: z
    .unknown()
    .check(z.refine((was) => isPlainJson(was) && was !== null && typeof was === "object" && !Array.isArray(was))),
  note: z.exactOptional(z.string().check(z.maxLength(400))),
  back: z.exactOptional(z.string().check(z.regex(changeName))),
});
