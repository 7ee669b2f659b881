import type { Bath, Run } from "../records/index.ts";

/** Whether the sitting a bath was mixed for has ended: a run that had it is over, and none goes on with it. */
export function sittingIsOver({ bath, runs }: { readonly bath: Bath; readonly runs: readonly Run[] }): boolean {
  const own = runs.filter(({ bathIds = [], removedAt }) => bathIds.includes(bath.id) && removedAt === undefined);
  const goesOn = own.some(({ startedAt, endedAt }) => startedAt !== undefined && endedAt === undefined);
  return !goesOn && own.some(({ endedAt }) => endedAt !== undefined);
}
