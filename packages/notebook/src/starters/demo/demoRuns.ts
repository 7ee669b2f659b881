import { runLane } from "@captray/science/process";
import { processRecipeOf } from "../../answers/processRecipeOf.ts";
import type { FaultKind, Json, Moment, RecordId } from "../../records/index.ts";
import type { DemoJournal } from "./demoJournal.ts";

export interface DemoRun {
  /** When the first sheet went into the first bath. */
  readonly at: Moment;
  readonly recipeId: RecordId;
  readonly code: string;
  readonly sheetId: RecordId;
  readonly bathIds: readonly RecordId[];
  readonly developerC: number;
  /** Rounds of bleach until no dark silver was seen. */
  readonly rounds: number;
  /** Seconds late (+) or early (−) of each press, in turn; null: nobody pressed. Beyond them every press is a second late. */
  readonly late: readonly (number | null)[];
}

/** Writes down a run as it was pressed; gives the moment the sheet came out of the wash. */
export function writeRun(journal: DemoJournal, asked: DemoRun): Moment {
  const { at, recipeId, code, sheetId, developerC, rounds, late } = asked;
  const held = journal.peek(recipeId);
  if (held?.kind !== "recipe") throw new Error(`The demo's run of ${code} has no recipe.`);
  const recipe = processRecipeOf({
    recipe: held,
    bathC: { developer: developerC, firstDeveloper: developerC, secondDeveloper: developerC },
  });
  const events: { atS: number; press: "start" | "next" | "another" | "clear" }[] = [{ atS: 0, press: "start" }];
  let untilS = 0;
  for (let turn = 0; turn < 100; turn++) {
    const lane = runLane({ recipe, events, untilS, startS: null });
    if (lane.stay === null) break;
    const { endS, goesOnS } = lane.stay;
    const offS = turn < late.length ? (late[turn] ?? null) : 1;
    if (offS === null && goesOnS !== null) {
      untilS = goesOnS;
      continue;
    }
    const atS = Math.round(10 * (endS + (offS ?? 1))) / 10;
    const round = lane.stay.round;
    const press = lane.means?.kind === "round" ? (round >= rounds ? "clear" : "another") : "next";
    events.push({ atS, press });
    untilS = atS;
  }
  const momentAt = (atS: number): Moment => ({ ...at, at: Math.round(at.at + 1000 * atS) });
  const endedAt = momentAt(events.at(-1)?.atS ?? 0);
  const [runId, laneId, readingId] = [journal.idAt(at), journal.idAt(at), journal.idAt(at)];
  const set: Record<string, Json> = {
    recipeId,
    recipe: plainCopy(recipe),
    recipeThen: plainCopy({ name: held.name, result: held.result, steps: held.steps }),
    ...(asked.bathIds.length > 0 && { bathIds: asked.bathIds }),
    startedAt: at,
    createdAt: at,
    [`lanes.${laneId}.code`]: code,
    [`lanes.${laneId}.sheetIds`]: [sheetId],
    [`lanes.${laneId}.plannedStartS`]: 0,
    [`readings.${readingId}.reading`]: {
      bath: recipe.kind === "positive" ? "firstDeveloper" : "developer",
      bathC: developerC,
      sinceStartMs: 0,
    },
    endedAt,
  };
  for (const { atS, press } of events) {
    set[`events.${journal.idAt(momentAt(atS))}.event`] = {
      laneId,
      press,
      sinceStartMs: Math.round(1000 * atS),
      wallMs: momentAt(atS).at,
    };
  }
  journal.write(endedAt, `${code} through the trays`, [{ id: runId, kind: "run", set }]);
  return endedAt;
}

/** A fault as it was seen: what, its middle and its size as shares of the sheet, and words to it. */
export function demoFault(
  journal: DemoJournal,
  at: Moment,
  what: FaultKind,
  [x, y, width, height]: readonly [number, number, number, number],
  words?: string,
): Json {
  return { id: journal.idAt(at), what, x, y, width, height, noticedAt: at, ...(words !== undefined && { words }) };
}

/** Plain data without the keys that are not there. */
function plainCopy(value: unknown): Json {
  return JSON.parse(JSON.stringify(value)) as Json;
}
