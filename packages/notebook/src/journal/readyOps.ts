import { definitionOf } from "../records/kinds.ts";
import { isPlainJson, type Json } from "../records/plainJson.ts";
import type { Definition } from "../records/record.ts";
import { isRecordId, type RecordId } from "../records/recordId.ts";
import { mostOps } from "./change.ts";
import { ChangeRefused } from "./changeRefused.ts";
import type { RecordSet } from "./notebook.ts";
import type { ReadyOp } from "./readChange.ts";
import { type Row, rowKey } from "./row.ts";

/** A change together may hold so many characters of JSON. */
const mostCharacters = 400_000;

/**
 * Checks what a room wants set before anything is touched, and copies it, so that nobody can alter it later.
 *
 * @throws {ChangeRefused}
 */
export function readyOps(sets: readonly RecordSet[], rowOf: (id: string) => Row | undefined): readonly ReadyOp[] {
  if (sets.length > mostOps) throw new ChangeRefused("tooMuch", "");
  const merged = new Map<string, { id: RecordId; kind: string; set: Record<string, Json> }>();
  for (const { id, kind, set } of sets) {
    const key = rowKey(kind, id);
    const definition = definitionOf(kind);
    if (!definition || !isRecordId(id)) throw new ChangeRefused("unknownKind", key);
    const op = merged.get(key) ?? { id, kind, set: {} };
    merged.set(key, op);
    for (const [path, given] of Object.entries(set)) {
      const type = definition.fieldAt(path);
      if (!type) throw new ChangeRefused("unknownField", `${key}/${path}`);
      const value = withoutUndefined(given);
      if (!isPlainJson(value) || (value !== null && !type.safeParse(value).success)) {
        throw new ChangeRefused("unfitValue", `${key}/${path}`);
      }
      op.set[path] = value;
    }
    checkItems(definition, op, rowOf(id));
  }
  const ops = [...merged.values()];
  if (JSON.stringify(ops).length > mostCharacters) throw new ChangeRefused("tooMuch", "");
  return ops;
}

/** A member that is undefined says nothing, and JSON cannot hold it. */
function withoutUndefined(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutUndefined);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, item]) => (item === undefined ? [] : [[key, withoutUndefined(item)]])),
  );
}

function checkItems(definition: Definition, op: ReadyOp, row: Row | undefined): void {
  for (const list of definition.lists) {
    const items = new Set<string>();
    for (const path of [...(row?.fields.keys() ?? []), ...Object.keys(op.set)]) {
      if (path.startsWith(`${list}.`)) items.add(path.slice(list.length + 1, list.length + 27));
    }
    if (items.size > definition.mostOf(list)) throw new ChangeRefused("tooMuch", `${rowKey(op.kind, op.id)}/${list}`);
  }
}
