import { type Change, mostBodyCharacters } from "../journal/change.ts";
import { type ReadyChange, readChange } from "../journal/readChange.ts";
import { isObject } from "../journal/row.ts";
import { stableJson } from "../journal/stableJson.ts";
import { type Kind, kinds } from "../records/kinds.ts";
import { recordsVersion } from "../records/recordsVersion.ts";
import { changeProblem } from "./changeProblem.ts";
import { formatName, formatVersion } from "./formatVersion.ts";
import { type ImportProblem, type ImportRefused, pointerPart } from "./importProblem.ts";
import { recordsOfLog } from "./recordsOfLog.ts";
import { whereJsonBreaks } from "./whereJsonBreaks.ts";

/** Beyond this a browser would come to its end before the file does: about 40,000 sheets. */
const mostCharacters = 256_000_000;

export interface ReadNotebookJsonInput {
  readonly text: string;
}

/** What a file holds: its sound changes, how many records of each kind they come to, and everything else with its place. */
export type ReadNotebook =
  | {
      readonly kind: "notebook";
      /** In the order of the file, each with its place there. */
      readonly changes: readonly { readonly pointer: string; readonly change: Change }[];
      readonly records: Readonly<Record<Kind, number>>;
      readonly problems: readonly ImportProblem[];
    }
  | ImportRefused;

/**
 * Reads the text of a whole notebook, and believes none of it before it is checked.
 *
 * `records` may be left out of a file: the log is what counts. Where they stand and say something else, that is said.
 */
export function readNotebookJson({ text }: ReadNotebookJsonInput): ReadNotebook {
  if (text.length > mostCharacters) return refused("tooLarge", "", { characters: text.length, most: mostCharacters });
  const plain = text.startsWith("\ufeff") ? text.slice(1) : text;
  let held: unknown;
  try {
    held = JSON.parse(plain);
  } catch {
    return notJson(plain);
  }
  if (!isObject(held) || typeof held.schema !== "string") return refused("notThisFormat", "");
  const version = versionOf(held.schema);
  if (version === undefined) return refused("notThisFormat", "/schema", { schema: held.schema.slice(0, 60) });
  if (version > formatVersion) return refused("newerVersion", "/schema", { version, newest: formatVersion });
  for (const key of Object.keys(held)) {
    if (key === "__proto__" || key === "constructor" || key === "prototype")
      return refused("hostileKey", pointerPart(key));
    if (key !== "schema" && key !== "log" && key !== "records")
      return refused("unknownField", pointerPart(key), { key });
  }
  if (!Array.isArray(held.log)) return refused("notThisFormat", "/log");

  const problems: ImportProblem[] = [];
  const sound = soundChanges(held.log, problems);
  const records = recordsOfLog(sound.map(({ read }) => read));
  // Where changes are missing, or were written in an older form, the records of the file cannot be those of the log.
  const comparable = problems.length === 0 && sound.every(({ read }) => read.change.v === recordsVersion);
  if (held.records !== undefined && comparable) compareRecords(held.records, records, problems);
  return {
    kind: "notebook",
    changes: sound.map(({ pointer, read }) => ({ pointer, change: read.change })),
    records: Object.fromEntries(Object.entries(records).map(([kind, all]) => [kind, all.length])) as Record<
      Kind,
      number
    >,
    problems,
  };
}

interface Sound {
  readonly pointer: string;
  readonly read: ReadyChange;
}

function soundChanges(log: readonly unknown[], problems: ImportProblem[]): Sound[] {
  const sound: Sound[] = [];
  const bodies = new Map<string, string>();
  for (const [place, given] of log.entries()) {
    const pointer = `/log/${place}`;
    const read = readChange(given);
    if (typeof read === "string") {
      problems.push(changeProblem(given, pointer));
      continue;
    }
    const body = stableJson(given);
    const name = read.change.h;
    const before = bodies.get(name);
    if (body.length > mostBodyCharacters) {
      problems.push({ pointer, code: "tooMuch", facts: { characters: body.length, most: mostBodyCharacters } });
    } else if (before === undefined) {
      bodies.set(name, body);
      sound.push({ pointer, read });
    } else if (before !== body) {
      problems.push({ pointer, code: "twice", facts: { name } });
    }
  }
  return sound;
}

function compareRecords(given: unknown, wanted: ReturnType<typeof recordsOfLog>, problems: ImportProblem[]): void {
  const differs = (pointer: string) => problems.push({ pointer, code: "recordDiffers", facts: {} });
  if (!isObject(given)) {
    differs("/records");
    return;
  }
  for (const kind of Object.keys(given)) if (!Object.hasOwn(kinds, kind)) differs(`/records${pointerPart(kind)}`);
  for (const [kind, all] of Object.entries(wanted)) {
    const listed: unknown = Object.hasOwn(given, kind) ? given[kind] : [];
    if (!Array.isArray(listed)) {
      differs(`/records/${kind}`);
      continue;
    }
    for (let place = 0; place < Math.max(listed.length, all.length); place++) {
      if (!same(listed[place], all[place])) differs(`/records/${kind}/${place}`);
    }
  }
}

function same(given: unknown, wanted: unknown): boolean {
  if (given === undefined || wanted === undefined) return false;
  try {
    return stableJson(given) === stableJson(wanted);
  } catch {
    // Nested so deeply that it cannot be written: no record of ours.
    return false;
  }
}

function versionOf(schema: string): number | undefined {
  const digits = schema.startsWith(formatName) ? schema.slice(formatName.length) : "";
  return /^[1-9]\d{0,5}$/.test(digits) ? Number(digits) : undefined;
}

function refused(
  code: ImportRefused["code"],
  pointer: string,
  facts: ImportRefused["facts"] = {},
  { line, column } = { line: 0, column: 0 },
): ImportRefused {
  return { kind: "refused", code, pointer, line, column, facts };
}

function notJson(text: string): ImportRefused {
  const place = whereJsonBreaks(text);
  const before = text.slice(0, place);
  const line = before.split("\n").length;
  const column = place - before.lastIndexOf("\n");
  return refused(place >= text.length ? "truncated" : "notJson", "", {}, { line, column });
}
