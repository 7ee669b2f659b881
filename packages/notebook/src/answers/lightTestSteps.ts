import type { Test } from "../records/index.ts";

/** One band of a light's test, as planned and as given. */
export interface LightTestStep {
  readonly id: string;
  readonly plannedS: number;
  /** What it was given, or what it is to be given; 0 for the band that stays covered. */
  readonly timeS: number;
  readonly takenAsPlanned: boolean;
  readonly densityBefore: number | undefined;
  readonly densityAfter: number | undefined;
}

/** The bands of a light's test, the covered one first. */
export function lightTestSteps({ test }: { readonly test: Pick<Test, "levels"> }): readonly LightTestStep[] {
  return test.levels
    .map(({ id, plannedS = 0, givenS, takenAsPlanned = false, densityBefore, densityAfter }) => ({
      id,
      plannedS,
      timeS: givenS ?? plannedS,
      takenAsPlanned,
      densityBefore,
      densityAfter,
    }))
    .sort((one, other) => one.plannedS - other.plannedS);
}
