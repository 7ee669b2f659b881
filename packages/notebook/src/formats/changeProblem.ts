import { changeSchema } from "../journal/change.ts";
import { isObject } from "../journal/row.ts";
import { definitionOf } from "../records/kinds.ts";
import { isPlainJson } from "../records/plainJson.ts";
import type { FieldSet } from "../records/record.ts";
import { recordsVersion } from "../records/recordsVersion.ts";
import { type ImportProblem, pointerPart } from "./importProblem.ts";

const hostile = new Set(["__proto__", "constructor", "prototype"]);
const known = new Set(["h", "v", "ops", "was", "note", "back"]);

/** What is wrong with a change that was refused, and where. Inner helper of the reader. */
export function changeProblem(given: unknown, at: string): ImportProblem {
  if (!isObject(given)) return { pointer: at, code: "notAChange", facts: {} };
  const key = hostileKeyIn(given, at, 0);
  if (key !== undefined) return { pointer: key, code: "hostileKey", facts: {} };
  for (const name of Object.keys(given)) {
    if (!known.has(name)) return { pointer: at + pointerPart(name), code: "unknownField", facts: { key: name } };
  }
  const issue = changeSchema.safeParse(given).error?.issues[0];
  if (issue) {
    const place = issue.path.map((part) => pointerPart(String(part))).join("");
    return { pointer: at + place, code: "notAChange", facts: {} };
  }
  const { v: version, ops } = given as { readonly v: number; readonly ops: readonly [string, string, FieldSet][] };
  if (version > recordsVersion) {
    return { pointer: `${at}/v`, code: "newerForm", facts: { form: version, newest: recordsVersion } };
  }
  return opsProblem(ops, version, at) ?? { pointer: at, code: "notAChange", facts: {} };
}

function opsProblem(
  ops: readonly (readonly [string, string, FieldSet])[],
  version: number,
  at: string,
): ImportProblem | undefined {
  for (const [place, [id, kind, written]] of ops.entries()) {
    const definition = definitionOf(kind);
    if (!definition) return { pointer: `${at}/ops/${place}/1`, code: "unknownKind", facts: { kind } };
    let set = written;
    for (let form = version; form < recordsVersion; form++) set = definition.upgrades[form]?.({ id, set }) ?? set;
    for (const [path, value] of Object.entries(set)) {
      const pointer = `${at}/ops/${place}/2${pointerPart(path)}`;
      const type = definition.fieldAt(path);
      if (!type) return { pointer, code: "unknownField", facts: { kind, key: path } };
      if (value !== null && !type.safeParse(value).success) {
        return { pointer, code: "unfitValue", facts: { kind, key: path } };
      }
    }
  }
  return undefined;
}

/** The place of a key that could reach a prototype. What lies deeper than any record is not looked through. */
function hostileKeyIn(value: unknown, at: string, depth: number): string | undefined {
  if (typeof value !== "object" || value === null || depth > 20 || isPlainJson(value)) return undefined;
  for (const [key, item] of Object.entries(value)) {
    if (hostile.has(key)) return at + pointerPart(key);
    const inside = hostileKeyIn(item, at + pointerPart(key), depth + 1);
    if (inside !== undefined) return inside;
  }
  return undefined;
}
