import type { Test } from "../records/index.ts";

/** A strip of a step test with what it was given; the least first. */
export interface StripGiven {
  readonly id: string;
  readonly plannedS: number;
  /** As given; before that as planned. */
  readonly timeS: number;
  readonly given: boolean;
}

/** The strips of a step test in their order on the sheet. */
export function stepStrips({ test }: { readonly test: Test }): readonly StripGiven[] {
  return test.levels
    .toSorted((a, b) => (a.order ?? 0) - (b.order ?? 0))
    .map(({ id, plannedS = 0, givenS }) => ({
      id,
      plannedS,
      timeS: givenS ?? plannedS,
      given: givenS !== undefined,
    }));
}
