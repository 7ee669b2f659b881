import type { DryingOf, DryingThing } from "@captray/notebook/answers";
import { hangWords } from "../../../kit/hangWords.ts";

/** One thing that dries, or is dry. */
export interface DryingRow {
  readonly key: string;
  readonly thing: DryingThing;
  readonly what: string;
  /** “line, place 3”, or that it has no place yet. */
  readonly where: string;
  /** “since 20:24, 35 min”. */
  readonly since: string;
  /** What is written on an unfixed print; empty where it is fixed, or nobody knows. */
  readonly label: string;
}

export interface DryingView {
  readonly hanging: readonly DryingRow[];
  readonly dry: readonly DryingRow[];
  readonly questions: readonly { readonly runId: string; readonly head: string; readonly laneIds: readonly string[] }[];
  readonly someUnfixed: boolean;
  readonly somePositive: boolean;
}

/** What hangs where, in words. */
export function dryingView({
  drying,
  subjectOf,
  nowMs,
}: {
  readonly drying: DryingOf;
  readonly subjectOf: (sheetId: string) => string;
  readonly nowMs: number;
}): DryingView {
  const row = (thing: DryingThing): DryingRow => ({
    key: `${thing.sheetId}${thing.letter ?? ""}`,
    thing,
    what: [kindWords(thing.result), subjectOf(thing.sheetId)].filter(Boolean).join(", "),
    where: thing.hangs === undefined ? "no place yet" : hangWords(thing.hangs),
    since: `since ${hour(thing.since)}, ${agoWords((nowMs - thing.since.at) / 60_000)}`,
    label: thing.fixed === "unfixed" ? "unfixed" : "",
  });
  const all = [...drying.hanging, ...drying.dry];
  return {
    hanging: drying.hanging.map(row),
    dry: drying.dry.map(row),
    questions: drying.leftTogether.map(({ runId, laneIds, codes }) => ({
      runId,
      laneIds,
      head: `${listed(codes)} left the wash together`,
    })),
    someUnfixed: all.some(({ fixed }) => fixed === "unfixed"),
    somePositive: all.some(({ result }) => result === "positive"),
  };
}

/** “35 min”, “3 h”, “2 days”; a clock that was set back says nothing of the time between. */
export function agoWords(minutes: number): string {
  if (!(minutes >= 1)) return "just now";
  if (minutes < 100) return `${Math.floor(minutes)} min`;
  const hours = Math.round(minutes / 60);
  if (hours < 48) return `${hours} h`;
  return `${Math.round(hours / 24)} days`;
}

function hour({ at, offsetMin }: DryingThing["since"]): string {
  const there = new Date(at + offsetMin * 60_000);
  return `${String(there.getUTCHours()).padStart(2, "0")}:${String(there.getUTCMinutes()).padStart(2, "0")}`;
}

function kindWords(result: DryingThing["result"]): string {
  return result === "negative" ? "paper negative" : result === "positive" ? "direct positive" : "";
}

function listed(codes: readonly string[]): string {
  return codes.length < 2 ? codes.join("") : `${codes.slice(0, -1).join(", ")} and ${codes.at(-1)}`;
}
