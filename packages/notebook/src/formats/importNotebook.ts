import type { Change } from "../journal/change.ts";
import { timeOf } from "../journal/hybridClock.ts";
import type { Notebook } from "../journal/notebook.ts";
import { stableJson } from "../journal/stableJson.ts";
import type { Kind } from "../records/kinds.ts";
import type { ImportProblem, ImportRefused } from "./importProblem.ts";
import { readNotebookJson } from "./readNotebookJson.ts";

export interface ImportNotebookInput {
  readonly notebook: Notebook;
  readonly text: string;
  /** Without it the file is only looked at, and nothing changes. */
  readonly commit?: boolean;
  /** Takes what is sound although there are problems. */
  readonly allowProblems?: boolean;
  /** Whole milliseconds since 1970, UTC: changes of a clock far ahead of it are not taken. */
  readonly nowMs?: number;
}

/** What would come of it, and with `committed` what came. */
export type ImportOutcome =
  | {
      readonly kind: "read";
      /** Changes the notebook has not got yet. */
      readonly fresh: number;
      /** Changes it has already; they are left as they are. */
      readonly known: number;
      /** How many records of each kind the file holds. */
      readonly records: Readonly<Record<Kind, number>>;
      readonly problems: readonly ImportProblem[];
      readonly committed: boolean;
    }
  | ImportRefused;

/** A wrong clock is let pass up to this much. */
const mostAheadMs = 3_600_000;

/**
 * Takes a whole notebook from its text, into an empty notebook or beside what is there, field by field as the log says.
 *
 * Nothing is written unless `commit` is asked for and there is no problem, or problems are allowed. Every change is
 * checked before the first one is written; taking the same file twice does nothing the second time, so that an import
 * that was interrupted is finished by asking again.
 */
export async function importNotebook({
  notebook,
  text,
  commit = false,
  allowProblems = false,
  nowMs,
}: ImportNotebookInput): Promise<ImportOutcome> {
  const file = readNotebookJson({ text });
  if (file.kind === "refused") return file;
  const here = new Map<string, string>();
  for await (const change of notebook.log()) here.set(change.h, stableJson(change));
  const problems = [...file.problems];
  const fresh: Change[] = [];
  let known = 0;
  for (const { pointer, change } of file.changes) {
    const { h: name } = change;
    const held = here.get(name);
    if (held !== undefined) {
      if (held === stableJson(change)) known++;
      else problems.push({ pointer, code: "otherContent", facts: { name } });
    } else if (nowMs !== undefined && timeOf(name) > nowMs + mostAheadMs) {
      problems.push({ pointer, code: "fromTheFuture", facts: { name, aheadMs: timeOf(name) - nowMs } });
    } else {
      fresh.push(change);
    }
  }
  const committed = commit && (problems.length === 0 || allowProblems);
  if (committed) await notebook.apply(fresh);
  return { kind: "read", fresh: fresh.length, known, records: file.records, problems, committed };
}
