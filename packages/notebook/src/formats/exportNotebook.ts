import type { Change } from "../journal/change.ts";
import type { Notebook } from "../journal/notebook.ts";
import { readChange } from "../journal/readChange.ts";
import { stableJson } from "../journal/stableJson.ts";
import { formatName, formatVersion } from "./formatVersion.ts";
import { recordsOfLog } from "./recordsOfLog.ts";

/** They stand in every file, if only as an empty list; a kind that came later stands where there is one of it, so that an old file comes out as it went in. */
const firstKinds: ReadonlySet<string> = new Set([
  "camera",
  "exposureIndex",
  "hand",
  "holder",
  "lamp",
  "lens",
  "meter",
  "paperBox",
  "scene",
  "sheet",
]);

export interface ExportNotebookInput {
  readonly notebook: Notebook;
}

/**
 * The whole notebook as one JSON text: `{ log, records, schema }`.
 *
 * The log is every change in the order of the names, as it was written; from it alone everything comes back, byte for
 * byte. The records are what the changes come to, for people and other programs. Keys are sorted and every change and
 * record has a line of its own, so that one notebook has one text, whatever order its changes arrived in.
 */
export async function exportNotebook({ notebook }: ExportNotebookInput): Promise<string> {
  const log: Change[] = [];
  for await (const change of notebook.log()) log.push(change);
  log.sort((a, b) => (a.h < b.h ? -1 : 1));
  const sound = log.map(readChange).filter((read) => typeof read !== "string");
  const records = Object.entries(recordsOfLog(sound))
    .filter(([kind, ofKind]) => firstKinds.has(kind) || ofKind.length > 0)
    .sort(([a], [b]) => (a < b ? -1 : 1));
  const lists = records.map(([kind, ofKind]) => `${JSON.stringify(kind)}:${lines(ofKind)}`);
  return `{"log":${lines(log)},\n"records":{\n${lists.join(",\n")}\n},\n"schema":${JSON.stringify(`${formatName}${formatVersion}`)}}\n`;
}

function lines(values: readonly unknown[]): string {
  return values.length === 0 ? "[]" : `[\n${values.map(stableJson).join(",\n")}\n]`;
}
