import type { Json, Moment, Test } from "@captray/notebook/records";

type Timed = Pick<Test, "levels">;

/** The bands that get light, in order of time: all but the covered one. */
function litBands({ levels }: Timed): readonly { readonly id: string; readonly plannedS: number }[] {
  return levels
    .map(({ id, plannedS = 0 }) => ({ id, plannedS }))
    .filter(({ plannedS }) => plannedS > 0)
    .sort((a, b) => a.plannedS - b.plannedS || (a.id < b.id ? -1 : 1));
}

/** Seconds at which the card moves over a strip or a light's test, the last one the light off. */
export function movesOf(test: Timed): readonly number[] {
  return litBands(test).map(({ plannedS }) => plannedS);
}

/** The levels of a new test: the covered band and one a time. */
export function levelSets(timesS: readonly number[], newId: () => string): Record<string, Json> {
  return Object.fromEntries([0, ...timesS].map((plannedS) => [`levels.${newId()}.plannedS`, plannedS]));
}

/** Other times for a test not given yet: levels that are there are kept, those too many are put away. */
export function levelsAgain(
  test: Timed,
  timesS: readonly number[],
  newId: () => string,
  now: Moment,
): Record<string, Json> {
  const held = litBands(test);
  const set: Record<string, Json> = {};
  for (const [place, timeS] of timesS.entries()) {
    const level = held[place];
    if (level?.plannedS !== timeS) set[`levels.${level?.id ?? newId()}.plannedS`] = timeS;
  }
  for (const { id } of held.slice(timesS.length)) set[`levels.${id}.removedAt`] = { ...now };
  return set;
}
