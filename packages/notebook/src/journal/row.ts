import { type AnyRecord, definitionOf } from "../records/kinds.ts";
import type { Json } from "../records/plainJson.ts";
import { checkSet, type FieldSet } from "../records/record.ts";
import { isRecordId, type RecordId } from "../records/recordId.ts";

/**
 * What the changes have come to for one record. `born` names the change that made the row, and stands for every field
 * that `names` does not hold: most rows are written once, so this keeps them small.
 */
export interface Row {
  readonly id: RecordId;
  readonly kind: string;
  readonly born: string;
  readonly fields: Map<string, Json>;
  readonly names: Map<string, string>;
  /** The chunk its card lies in, for sheets that have one. */
  chunk?: string;
}

export function rowKey(kind: string, id: string): string {
  return `${kind}/${id}`;
}

export function newRow(kind: string, id: RecordId, born: string): Row {
  return { id, kind, born, fields: new Map(), names: new Map() };
}

/** The name of the change that a field's value comes from; "" where it was never set. */
export function nameOfField(row: Row | undefined, path: string): string {
  if (!row?.fields.has(path)) return "";
  return row.names.get(path) ?? row.born;
}

/** Field by field, the later name stands. Says whether anything moved. */
export function setFields(row: Row, name: string, set: FieldSet): boolean {
  let moved = false;
  for (const [path, value] of Object.entries(set)) {
    if (name <= nameOfField(row, path)) continue;
    row.fields.set(path, value);
    if (name === row.born) row.names.delete(path);
    else row.names.set(path, name);
    moved = true;
  }
  return moved;
}

/** The record a row stands for; undefined where nothing is set, or all has been cleared again. */
export function recordOfRow(row: Row): AnyRecord | undefined {
  for (const value of row.fields.values()) {
    if (value !== null) return definitionOf(row.kind)?.assemble(row.id, row.fields) as AnyRecord | undefined;
  }
  return undefined;
}

export function rowText(row: Row): string {
  return JSON.stringify({
    b: row.born,
    f: Object.fromEntries(row.fields),
    c: Object.fromEntries(row.names),
    ...(row.chunk === undefined ? {} : { k: row.chunk }),
  });
}

/** Reads a row's text; undefined where it does not parse or does not fit its kind. */
export function readRow(key: string, text: string): Row | undefined {
  const [kind = "", id = ""] = key.split("/");
  const definition = definitionOf(kind);
  const held = parseJson(text);
  if (!definition || !isRecordId(id) || !isObject(held)) return undefined;
  const { b, f, c, k } = held;
  if (typeof b !== "string" || !isObject(c) || !checkSet(definition, f)) return undefined;
  const row = newRow(kind, id, b);
  for (const [path, value] of Object.entries(f)) row.fields.set(path, value);
  for (const [path, name] of Object.entries(c)) {
    if (typeof name !== "string" || !row.fields.has(path)) return undefined;
    row.names.set(path, name);
  }
  if (typeof k === "string") row.chunk = k;
  return row;
}

export function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** What a text holds as JSON; undefined where it is none. */
export function parseJson(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}
