import { lightTestAnswer, lightTestSteps } from "@captray/notebook/answers";
import type { RecordSet } from "@captray/notebook/journal";
import type { Json, Moment, Test } from "@captray/notebook/records";
import { movesOf } from "../../../kit/timedLevels.ts";
import { type GivenMove, type LightTimerState, startLight } from "./lightTimerState.ts";

/** The minutes a test may have, beside the band that stays covered. */
export const lightPlans: readonly {
  readonly value: string;
  readonly name: string;
  readonly timesS: readonly number[];
}[] = [
  { value: "1-3-7", name: "1, 3, 7 min", timesS: [60, 180, 420] },
  { value: "2-5-10-20", name: "2, 5, 10, 20 min", timesS: [120, 300, 600, 1200] },
  { value: "half-1-2-4", name: "30 s, 1, 2, 4 min", timesS: [30, 60, 120, 240] },
];

/** Which plan a test follows; one of its own has none. */
export function planOfTest(test: Test): string | undefined {
  const timesS = movesOf(test);
  return lightPlans.find((plan) => plan.timesS.join() === timesS.join())?.value;
}

/** What is set on a test so that it says what the page of its light knows; nothing where it says so already. */
export function givenSets(state: LightTimerState, test: Test, now: Moment): readonly RecordSet[] {
  const { phase } = state;
  const isLit = phase.name === "on" || phase.name === "greyRight" || phase.name === "after";
  const isDark = phase.name === "greyRight" || phase.name === "after";
  const set: Record<string, Json> = {};
  for (const [place, step] of lightTestSteps({ test })
    .filter(({ plannedS }) => plannedS > 0)
    .entries()) {
    const move = isDark ? state.given[place] : undefined;
    const level = test.levels.find(({ id }) => id === step.id);
    if (level?.givenS !== move?.atS) set[`levels.${step.id}.givenS`] = move?.atS ?? null;
    const assumed = move?.by === "asPlanned";
    if ((level?.takenAsPlanned ?? false) !== assumed) set[`levels.${step.id}.takenAsPlanned`] = assumed;
  }
  const at = isLit ? { at: Math.round(phase.zeroMs), offsetMin: now.offsetMin } : null;
  if ((test.doneAt?.at ?? null) !== (at?.at ?? null)) set.doneAt = at;
  return Object.keys(set).length === 0 ? [] : [{ id: test.id, kind: "test", set }];
}

/** A page as its record has it: given, or before it. */
export function lightFromRecords(test: Test): LightTimerState {
  const start = startLight({ movesS: movesOf(test), byScreen: test.light === "screen" });
  if (test.doneAt === undefined) return start;
  const given = lightTestSteps({ test })
    .filter(({ plannedS }) => plannedS > 0)
    .map(({ timeS, takenAsPlanned }): GivenMove => ({ atS: timeS, by: takenAsPlanned ? "asPlanned" : "press" }));
  const wasGiven = test.levels.some(({ givenS }) => givenS !== undefined);
  const zeroMs = test.doneAt.at;
  return wasGiven ? { ...start, given, phase: { name: "after", zeroMs } } : { ...start, phase: { name: "on", zeroMs } };
}

/** What was seen or measured, and the answer it comes to, in one change. */
export function saidSets(test: Test, set: Readonly<Record<string, Json>>): readonly RecordSet[] {
  const answer = lightTestAnswer({ test: testWith(test, set) });
  const kept = answer.kind === "open" ? null : ({ ...answer } as Json);
  return [{ id: test.id, kind: "test", set: { ...set, answer: kept } }];
}

/** A test as it will be once these fields are set. */
function testWith(test: Test, set: Readonly<Record<string, Json>>): Test {
  const changed: Record<string, unknown> = { ...test };
  for (const name of ["seenBefore", "seenAfter", "seenAlone", "result"]) {
    if (set[name] === null) delete changed[name];
    else if (set[name] !== undefined) changed[name] = set[name];
  }
  changed.levels = test.levels.map((level) => {
    const one: Record<string, unknown> = { ...level };
    for (const name of ["densityBefore", "densityAfter"]) {
      const value = set[`levels.${level.id}.${name}`];
      if (value === null) delete one[name];
      else if (value !== undefined) one[name] = value;
    }
    return one;
  });
  return changed as unknown as Test;
}
