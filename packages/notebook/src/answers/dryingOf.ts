import type { ProcessRecipe } from "@captray/science/process";
import type { Hangs, Moment, RecordId, Run, Sheet } from "../records/index.ts";
import { piecesOf } from "./piecesOf.ts";
import { runOf } from "./runOf.ts";
import { type RunOfSheet, runsOfSheet } from "./runsOfSheet.ts";

/** A sheet or a piece of one that hangs, or was taken down and is still to be looked at. */
export interface DryingThing {
  readonly sheetId: RecordId;
  readonly letter: string | undefined;
  /** “W31” or “W31b”. */
  readonly code: string;
  readonly since: Moment;
  readonly takenDownAt: Moment | undefined;
  readonly hangs: Hangs | undefined;
  /** No fixing bath in any of its runs: what halide is left darkens in light. Unknown without a run. */
  readonly fixed: "fixed" | "unfixed" | "unknown";
  readonly result: "negative" | "positive" | undefined;
}

/** Things that left the wash together and were not told apart yet. */
export interface LeftTogether {
  readonly runId: RecordId;
  readonly laneIds: readonly RecordId[];
  readonly codes: readonly string[];
  readonly sheetIds: readonly RecordId[];
}

export interface DryingOf {
  /** By place: the line, hooks, screens, glass; what has no place yet comes first. */
  readonly hanging: readonly DryingThing[];
  readonly dry: readonly DryingThing[];
  readonly leftTogether: readonly LeftTogether[];
}

/** Hung up within a minute of each other, two things came out of the wash in one hand. */
const togetherMs = 60_000;
const placeOrder = ["line", "hook", "screen", "glass", "elsewhere"] as const;

/**
 * What hangs where to dry, what was taken down dry, and what left the wash together.
 *
 * Things left together are those of one run that went through it in one lane, or were hung up within a minute of each other;
 * the question is asked until the run says that they were told apart.
 */
export function dryingOf({
  sheets,
  runs,
}: {
  /** Those whose cards say that they dry, or are dry; the others are passed over. */
  readonly sheets: readonly Sheet[];
  readonly runs: readonly Run[];
}): DryingOf {
  const things = sheets.flatMap((sheet) => thingsOf(sheet, runsOfSheet({ runs, sheetId: sheet.id })));
  const hanging = things.filter(({ takenDownAt }) => takenDownAt === undefined);
  return {
    hanging: hanging.toSorted(byPlace),
    dry: things.filter(({ takenDownAt }) => takenDownAt !== undefined).toSorted((a, b) => a.since.at - b.since.at),
    leftTogether: runs.flatMap((run) => leftTogether(run, hanging)),
  };
}

function thingsOf(sheet: Sheet, runs: readonly RunOfSheet[]): readonly DryingThing[] {
  const common = { sheetId: sheet.id, result: sheet.result };
  const pieces = piecesOf({ sheet });
  if (pieces.length > 0) {
    return pieces.flatMap(({ piece, code, state }) =>
      piece.dryingAt && (state === "drying" || state === "dry")
        ? [
            {
              ...common,
              letter: piece.letter,
              code,
              since: piece.dryingAt,
              takenDownAt: piece.takenDownAt,
              hangs: piece.hangs,
              fixed: fixedIn(runs.filter(({ letter }) => letter === piece.letter || letter === undefined)),
            },
          ]
        : [],
    );
  }
  const { dryingAt, measuredAt, keptAt, discardedAt } = sheet;
  if (!dryingAt || measuredAt || keptAt || discardedAt) return [];
  const whole = runs.filter(({ letter }) => letter === undefined);
  return [
    {
      ...common,
      letter: undefined,
      code: sheet.code ?? "",
      since: dryingAt,
      takenDownAt: sheet.takenDownAt,
      hangs: sheet.hangs,
      fixed: fixedIn(whole),
    },
  ];
}

function fixedIn(runs: readonly RunOfSheet[]): DryingThing["fixed"] {
  const told = runs.flatMap((one) => fixedBy(one) ?? []);
  if (told.length === 0) return "unknown";
  return told.includes(true) ? "fixed" : "unfixed";
}

/** Whether a stay in a fixing bath was made: one that was left out fixes nothing. Of a run without presses its recipe is asked. */
function fixedBy({ run, laneId }: RunOfSheet): readonly [boolean] | undefined {
  const lastMs = Math.max(0, ...run.events.flatMap(({ event }) => event?.sinceStartMs ?? []));
  const overMs = run.startedAt && run.endedAt ? run.endedAt.at - run.startedAt.at : 0;
  const told = runOf({ run, sinceStartMs: Math.max(lastMs, overMs) });
  const lane = told.kind === "unreadable" ? undefined : told.lanes.find(({ id }) => id === laneId);
  if (lane !== undefined && lane.state.rows.length > 0) {
    return [lane.state.rows.some(({ at, how }) => how !== "skipped" && lane.recipe.steps[at]?.does === "fix")];
  }
  const steps = stepsOf(run);
  return steps && [steps[0]?.some(({ does }) => does === "fix") === true];
}

/** The steps as the engine had them that evening; they were written by our own hand, and are read with care all the same. */
function stepsOf({ recipe }: Run): readonly ProcessRecipe["steps"][] | undefined {
  const steps = (recipe as { readonly steps?: unknown } | undefined)?.steps;
  return Array.isArray(steps) && steps.length > 0 ? [steps as ProcessRecipe["steps"]] : undefined;
}

function leftTogether(run: Run, hanging: readonly DryingThing[]): readonly LeftTogether[] {
  const hung = run.lanes
    .filter(({ toldApartAt }) => toldApartAt === undefined)
    .flatMap((lane) =>
      hanging
        .filter(({ sheetId, letter }) =>
          letter === undefined
            ? lane.sheetIds?.includes(sheetId)
            : lane.pieces?.some((piece) => piece.sheetId === sheetId && piece.letter === letter) ||
              lane.sheetIds?.includes(sheetId),
        )
        .map((thing) => ({ thing, laneId: lane.id })),
    )
    .sort((a, b) => a.thing.since.at - b.thing.since.at);
  const groups: (typeof hung)[] = [];
  for (const one of hung) {
    const last = groups.at(-1);
    const before = last?.at(-1);
    const together =
      before !== undefined &&
      (before.laneId === one.laneId || one.thing.since.at - before.thing.since.at <= togetherMs);
    if (last && together) last.push(one);
    else groups.push([one]);
  }
  return groups
    .filter((group) => group.length > 1)
    .map((group) => ({
      runId: run.id,
      laneIds: [...new Set(group.map(({ laneId }) => laneId))],
      codes: group.map(({ thing }) => thing.code),
      sheetIds: [...new Set(group.map(({ thing }) => thing.sheetId))],
    }));
}

function byPlace(a: DryingThing, b: DryingThing): number {
  return placeRank(a) - placeRank(b) || a.since.at - b.since.at || (a.code < b.code ? -1 : 1);
}

function placeRank({ hangs }: DryingThing): number {
  return hangs === undefined ? -1 : 1000 * placeOrder.indexOf(hangs.on) + (hangs.number ?? 100);
}
