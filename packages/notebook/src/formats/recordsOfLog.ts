import { applyChange } from "../journal/applyChange.ts";
import type { ReadyChange } from "../journal/readChange.ts";
import { type Row, recordOfRow } from "../journal/row.ts";
import { type AnyRecord, type Kind, kinds } from "../records/kinds.ts";

/** Every record the changes come to, by kind and in the order of the ids; also those put away. */
export function recordsOfLog(changes: readonly ReadyChange[]): Readonly<Record<Kind, readonly AnyRecord[]>> {
  const rows = new Map<string, Row>();
  for (const change of changes) applyChange(rows, change);
  const byKind = Object.fromEntries(Object.keys(kinds).map((kind) => [kind, [] as AnyRecord[]])) as Record<
    Kind,
    AnyRecord[]
  >;
  for (const row of [...rows.values()].sort((a, b) => (a.id < b.id ? -1 : 1))) {
    const record = recordOfRow(row);
    if (record) byKind[record.kind].push(record);
  }
  return byKind;
}
