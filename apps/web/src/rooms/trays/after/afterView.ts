import type { RunDoneOf } from "@captray/notebook/answers";
import type { Moment, Run } from "@captray/notebook/records";

/** One lane of the page: what went together, and the sheets whose faults are marked. */
export interface AfterLane {
  readonly id: string;
  readonly head: string;
  /** “in at 20:02, out at 20:51”. */
  readonly when: string;
  readonly sheets: readonly { readonly sheetId: string; readonly letter: string | undefined }[];
}

export interface AfterView {
  readonly title: string;
  readonly aside: string;
  readonly lanes: readonly AfterLane[];
  /** “first developer 20.5 °C at 0:00”. */
  readonly readings: readonly string[];
  /** What is to be said of baths that this notebook no longer has. */
  readonly gone: string | null;
}

const roleWords: Readonly<Record<string, string>> = {
  developer: "developer",
  firstDeveloper: "first developer",
  secondDeveloper: "second developer",
  stop: "stop",
  acid: "acid",
  peroxide: "peroxide",
  acidAndPeroxide: "acid and peroxide",
  clear: "clearing bath",
  fix: "fixer",
  washAid: "wash aid",
  water: "water",
};

/** What the page of a run says beside its tables. */
export function afterView({
  run,
  done,
  unit,
  isKnown = () => true,
}: {
  readonly run: Run;
  readonly done: RunDoneOf;
  readonly unit: "celsius" | "fahrenheit";
  /** Whether the notebook still has a record. */
  readonly isKnown?: (id: string) => boolean;
}): AfterView {
  const recipe = nameOf(run.recipeThen);
  const day = run.startedAt === undefined ? "" : dayOf(run.startedAt);
  const gone = (run.bathIds ?? []).filter((id) => !isKnown(id)).length;
  return {
    title: "Afterwards",
    aside: [recipe, day].filter(Boolean).join(", "),
    lanes:
      done.kind === "unreadable"
        ? []
        : done.lanes.map(({ id, code, startedS, endedS, sheetIds, pieces }) => ({
            id,
            head: code === "" ? "Sheets" : code,
            when: [
              startedS !== null && `in at ${hourAt(run, startedS)}`,
              endedS !== null && `out at ${hourAt(run, endedS)}`,
            ]
              .filter(Boolean)
              .join(", "),
            sheets: [
              ...sheetIds.map((sheetId) => ({ sheetId, letter: undefined })),
              ...pieces.map(({ sheetId, letter }) => ({ sheetId, letter })),
            ],
          })),
    readings: run.readings.flatMap(({ reading }) => {
      if (reading === undefined) return [];
      const warm =
        unit === "celsius" ? `${Number(reading.bathC.toFixed(1))} °C` : `${Math.round(1.8 * reading.bathC + 32)} °F`;
      return [`${roleWords[reading.bath] ?? reading.bath} ${warm} at ${hourAt(run, reading.sinceStartMs / 1000)}`];
    }),
    gone:
      gone === 0
        ? null
        : `${gone === 1 ? "One bath" : `${gone} baths`} of this run can no longer be found in this notebook: the times stand, what went through ${gone === 1 ? "it" : "them"} is not counted.`,
  };
}

/** The hour by the clock the person lived in. */
function hourAt({ startedAt }: Run, sinceS: number): string {
  if (startedAt === undefined) return "an hour unknown";
  const there = new Date(startedAt.at + 1000 * sinceS + startedAt.offsetMin * 60_000);
  return `${String(there.getUTCHours()).padStart(2, "0")}:${String(there.getUTCMinutes()).padStart(2, "0")}`;
}

const day = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "short", year: "numeric", timeZone: "UTC" });

function dayOf({ at, offsetMin }: Moment): string {
  return day.format(new Date(at + offsetMin * 60_000));
}

function nameOf(recipeThen: Run["recipeThen"]): string {
  const name = (recipeThen as { readonly name?: unknown } | undefined)?.name;
  return typeof name === "string" ? name : "";
}
