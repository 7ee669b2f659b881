import { definitionOf } from "../records/kinds.ts";
import { checkSet, type FieldSet } from "../records/record.ts";
import type { RecordId } from "../records/recordId.ts";
import { recordsVersion } from "../records/recordsVersion.ts";
import type { LogEntry } from "../storage/storage.ts";
import { type Change, changeSchema, mostBodyCharacters } from "./change.ts";
import { checksum } from "./checksum.ts";
import type { Quarantined } from "./notebook.ts";
import { parseJson } from "./row.ts";

/** One record's part of a change, in today's form and checked. */
export interface ReadyOp {
  readonly id: RecordId;
  readonly kind: string;
  readonly set: FieldSet;
}
/** A change as it was written, and its parts in today's form. */
export interface ReadyChange {
  readonly change: Change;
  readonly ops: readonly ReadyOp[];
}
type Refusal = Quarantined["reason"];

/** Checks a whole change before any row is touched, and brings its parts to today's form. */
export function readChange(given: unknown): ReadyChange | Refusal {
  if (!changeSchema.safeParse(given).success) return "notAChange";
  const change = given as Change;
  if (change.v > recordsVersion) return "newerForm";
  const ops: ReadyOp[] = [];
  for (const [id, kind, written] of change.ops) {
    const definition = definitionOf(kind);
    if (!definition) return "unknownField";
    let set = written;
    for (let form = change.v; form < recordsVersion; form++) set = definition.upgrades[form]?.({ id, set }) ?? set;
    if (!checkSet(definition, set)) return "unknownField";
    ops.push({ id, kind, set });
  }
  return { change, ops };
}

/** Reads a log entry, and does not believe what disagrees with its checksum or its name. */
export function readEntry(entry: LogEntry): ReadyChange | Quarantined {
  const { name, body, sum } = entry;
  const refuse = (reason: Refusal): Quarantined => ({ where: "log", key: name, reason, text: body });
  if (checksum(body) !== sum) return refuse("checksum");
  const parsed = body.length > mostBodyCharacters ? undefined : parseJson(body);
  if (parsed === undefined) return refuse("notJson");
  const read = readChange(parsed);
  if (typeof read === "string") return refuse(read);
  return read.change.h === name ? read : refuse("notAChange");
}

export function isQuarantined(read: ReadyChange | Quarantined): read is Quarantined {
  return "reason" in read;
}
