import { type FindsRecords, type FlashPaper, flashSteps, flashStripAnswer } from "@captray/notebook/answers";
import type { RecordSet } from "@captray/notebook/journal";
import type { FlashLamp, Json, Moment, Sheet, Test } from "@captray/notebook/records";
import { type FlashTimerState, type GivenMove, graceS, startFlash } from "./flashTimerState.ts";

/** What is set on a strip and its sheet so that they say what the timed page knows. */
export function stripSets({
  state,
  test,
  sheet,
  now,
}: {
  readonly state: FlashTimerState;
  readonly test: Test;
  readonly sheet: Sheet | undefined;
  readonly now: Moment;
}): readonly RecordSet[] {
  const { phase } = state;
  const lit = flashSteps({ test }).filter(({ plannedS }) => plannedS > 0);
  const isGiven = phase.name === "on" || phase.name === "after";
  const onTest: Record<string, Json> = {};
  for (const [place, step] of lit.entries()) {
    const level = test.levels.find(({ id }) => id === step.id);
    const move = state.given[place];
    const givenS = isGiven ? (move?.atS ?? step.plannedS) : undefined;
    const assumed = isGiven ? (move ?? { by: "asPlanned" }).by === "asPlanned" : undefined;
    if (level?.givenS !== givenS) onTest[`levels.${step.id}.givenS`] = givenS ?? null;
    if ((level?.takenAsPlanned ?? false) !== (assumed ?? false)) {
      onTest[`levels.${step.id}.takenAsPlanned`] = assumed ?? null;
    }
  }
  const at = isGiven ? { at: Math.round(phase.zeroMs), offsetMin: now.offsetMin } : null;
  if ((test.doneAt?.at ?? null) !== (at?.at ?? null)) onTest.doneAt = at;
  const sets: RecordSet[] = Object.keys(onTest).length === 0 ? [] : [{ id: test.id, kind: "test", set: onTest }];
  if (sheet === undefined) return sets;
  const lastS = isGiven ? (state.given.at(-1)?.atS ?? lit.at(-1)?.plannedS ?? null) : null;
  const onSheet = flashedSet(sheet, at, lastS);
  return Object.keys(onSheet).length === 0 ? sets : [...sets, { id: sheet.id, kind: "sheet", set: onSheet }];
}

/** What is set on a sheet whose flash was given, or not. */
export function sheetSets({
  state,
  sheet,
  now,
}: {
  readonly state: FlashTimerState;
  readonly sheet: Sheet;
  readonly now: Moment;
}): readonly RecordSet[] {
  const { phase } = state;
  const isGiven = phase.name === "on" || phase.name === "after";
  const at = isGiven ? { at: Math.round(phase.zeroMs), offsetMin: now.offsetMin } : null;
  const set = flashedSet(sheet, at, isGiven ? (state.given[0]?.atS ?? state.movesS[0] ?? null) : null);
  return Object.keys(set).length === 0 ? [] : [{ id: sheet.id, kind: "sheet", set }];
}

function flashedSet(sheet: Sheet, at: Moment | null, givenS: number | null): Record<string, Json> {
  const set: Record<string, Json> = {};
  if ((sheet.flashedAt?.at ?? null) !== (at?.at ?? null)) set.flashedAt = at === null ? null : { ...at };
  if ((sheet.flashGivenS ?? null) !== givenS) set.flashGivenS = givenS;
  return set;
}

/** A timed page as its records have it: given, or still within the burning of the lamp, or before it. */
export function flashFromRecords({
  movesS,
  given,
  onAt,
  nowMs,
}: {
  readonly movesS: readonly number[];
  readonly given: readonly (GivenMove | undefined)[];
  readonly onAt: Moment | undefined;
  readonly nowMs: number;
}): FlashTimerState {
  const start = startFlash({ movesS });
  if (onAt === undefined) return start;
  const endS = movesS.at(-1) ?? 0;
  const untouched = given.every((move) => move === undefined || move.by === "asPlanned");
  if (untouched && nowMs >= onAt.at && nowMs < onAt.at + (endS + graceS(endS)) * 1000) {
    return { ...start, phase: { name: "on", zeroMs: onAt.at, auto: false } };
  }
  return {
    ...start,
    given: movesS.map((atS, place) => given[place] ?? { atS, by: "asPlanned" }),
    phase: { name: "after", zeroMs: onAt.at },
  };
}

/** What the levels of a strip say was given. */
export function givenOf(test: Test): readonly (GivenMove | undefined)[] {
  return flashSteps({ test })
    .filter(({ plannedS }) => plannedS > 0)
    .map(({ id, timeS, takenAsPlanned }) => {
      const held = test.levels.find((level) => level.id === id);
      return held?.givenS === undefined ? undefined : { atS: timeS, by: takenAsPlanned ? "asPlanned" : "press" };
    });
}

/**
 * The lamp's rate as a strip says it, in the same change as whatever changed the strip; a strip that says nothing any more takes back only
 * the rate that came from it.
 */
export function rateSets({
  notebook,
  test,
  now,
}: {
  readonly notebook: FindsRecords;
  readonly test: Test;
  readonly now: Moment;
}): readonly RecordSet[] {
  const lamp = lampOf(notebook, test.flashLampId);
  if (lamp === undefined) return [];
  const answer = flashStripAnswer({ notebook, test });
  if (answer.kind !== "seen" && answer.kind !== "measured") {
    return lamp.rate?.testId === test.id ? [{ id: lamp.id, kind: "flashLamp", set: { rate: null } }] : [];
  }
  const rate = {
    valueLx: answer.rateLx,
    sdLn: answer.sdLn,
    stripSdLn: answer.stripSdLn,
    testId: test.id,
    foundAt: { ...(test.doneAt ?? now) },
    ...(test.paperBoxId !== undefined && { paperBoxId: test.paperBoxId }),
    ...(test.exposureIndexId !== undefined && { exposureIndexId: test.exposureIndexId }),
  };
  return [{ id: lamp.id, kind: "flashLamp", set: { rate } }];
}

/** The lamp's rate once a strip is put away: that of the newest other strip that tells one, else none. */
export function rateWithout({
  notebook,
  strip,
  strips,
  now,
}: {
  readonly notebook: FindsRecords;
  readonly strip: Test;
  readonly strips: readonly Test[];
  readonly now: Moment;
}): readonly RecordSet[] {
  if (lampOf(notebook, strip.flashLampId)?.rate?.testId !== strip.id) return [];
  const other = strips.findLast(
    (one) =>
      one.id !== strip.id &&
      one.flashLampId === strip.flashLampId &&
      ["seen", "measured"].includes(flashStripAnswer({ notebook, test: one }).kind),
  );
  return rateSets({ notebook, test: other ?? { ...strip, levels: [] }, now });
}

/** A strip as it will be once these fields are set. */
export function testWith(test: Test, set: Readonly<Record<string, Json>>): Test {
  const levels = test.levels.map((level) => {
    const changed: Record<string, unknown> = { ...level };
    for (const name of ["plannedS", "givenS", "takenAsPlanned", "density"]) {
      const value = set[`levels.${level.id}.${name}`];
      if (value === null) delete changed[name];
      else if (value !== undefined) changed[name] = value;
    }
    return changed as Test["levels"][number];
  });
  const { leastSeen, ...rest } = test;
  const said = "leastSeen" in set ? set.leastSeen : leastSeen;
  return { ...rest, levels, ...(typeof said === "number" ? { leastSeen: said } : {}) };
}

/** A lamp set-up by its id, or nothing. */
export function lampOf(notebook: FindsRecords, id: string | undefined): FlashLamp | undefined {
  const found = id === undefined ? undefined : notebook.peek(id);
  return found?.kind === "flashLamp" ? found : undefined;
}

/** The fields of a strip that say what it is of. */
export function paperSet(paper: FlashPaper): Record<string, Json> {
  return {
    ...(paper.paperBoxId !== undefined && { paperBoxId: paper.paperBoxId }),
    ...(paper.exposureIndexId !== undefined && { exposureIndexId: paper.exposureIndexId }),
    ...(paper.recipeId !== undefined && { recipeId: paper.recipeId }),
    ...(paper.result !== undefined && { result: paper.result }),
  };
}
