import type { Test } from "../records/index.ts";

/** A step of a strip with what it was given, in order of time; the bare one has none. */
export interface FlashStep {
  readonly id: string;
  readonly plannedS: number;
  /** As given; before that as planned. */
  readonly timeS: number;
  readonly takenAsPlanned: boolean;
  readonly density: number | undefined;
}

/** The steps of a strip in order of time, the bare one first. */
export function flashSteps({ test }: { readonly test: Test }): readonly FlashStep[] {
  return test.levels
    .map(({ id, plannedS = 0, givenS, takenAsPlanned = false, density }) => ({
      id,
      plannedS,
      timeS: givenS ?? plannedS,
      takenAsPlanned,
      density,
    }))
    .toSorted((a, b) => a.plannedS - b.plannedS || (a.id < b.id ? -1 : 1));
}
