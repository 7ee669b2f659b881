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
    since: sinceWords(thing.since, nowMs),
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

/** “since 20:24, 35 min”, the day before “since 1 Dec 2025, 20:24”; a clock that was set back says nothing of the time between. */
function sinceWords(since: DryingThing["since"], nowMs: number): string {
  const minutes = (nowMs - since.at) / 60_000;
  if (minutes >= 1440) return `since ${day.format(new Date(since.at + since.offsetMin * 60_000))}, ${hour(since)}`;
  const ago =
    minutes >= 120 ? `${Math.round(minutes / 60)} h` : minutes >= 1 ? `${Math.floor(minutes)} min` : "just now";
  return `since ${hour(since)}, ${ago}`;
}

const day = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "short", year: "numeric", timeZone: "UTC" });

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
