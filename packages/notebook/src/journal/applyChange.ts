import type { ReadyChange } from "./readChange.ts";
import { newRow, type Row, rowKey, setFields } from "./row.ts";

/**
 * Applies a checked change to rows by `kind/id`: in any order, any number of times, always with the same outcome.
 *
 * Gives the keys of the rows that moved.
 */
export function applyChange(rows: Map<string, Row>, { change, ops }: ReadyChange): readonly string[] {
  const moved: string[] = [];
  for (const { id, kind, set } of ops) {
    const key = rowKey(kind, id);
    const row = rows.get(key) ?? newRow(kind, id, change.h);
    rows.set(key, row);
    if (setFields(row, change.h, set)) moved.push(key);
  }
  return moved;
}
