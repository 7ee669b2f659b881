/** What a step of the trays does. */
export type StepDoes =
  | "develop"
  | "firstDevelop"
  | "stop"
  | "rinse"
  | "bleach"
  | "clear"
  | "reexpose"
  | "redevelop"
  | "fix"
  | "wash"
  | "other";

/** Which light may be on while a sheet is in it. */
export type StepLight = "dark" | "safelight" | "whiteAllowed" | "whiteRequired";

/** Steps that stand together and are gone through together, `min` to `max` times: acid, peroxide, rinse. */
export interface StepGroup {
  readonly id: string;
  readonly min: number;
  readonly max: number;
  /** What ends the rounds before the most of them, seen by eye; without it every round up to `max` is done. */
  readonly until?: "noDarkSilver" | undefined;
}

export interface ProcessStep {
  /** Its name, as the person says it. */
  readonly step: string;
  /** What it is called in a record, if it comes from one. */
  readonly id?: string | undefined;
  readonly does: StepDoes;
  /** From touching this bath to touching the next, drain included, at the reference temperature. */
  readonly timeS: number;
  /** Rounds that follow each other in the same bath; 1 unless said. */
  readonly repeats?: number | undefined;
  readonly group?: StepGroup | undefined;
  /** Without it the time stands as it is written. */
  readonly bathC?: number | undefined;
  /** 20 unless said. */
  readonly referenceC?: number | undefined;
  /** How many times faster it works 10 °C warmer; 2 unless said. */
  readonly q10?: number | undefined;
  /** 0 unless said. */
  readonly drainS?: number | undefined;
  /** Safelight unless said. */
  readonly light?: StepLight | undefined;
  /** A second too long spoils it: of two moves at once this one goes first. */
  readonly mustLeaveOnTime?: boolean | undefined;
  /** The sheet may stay so much longer while another is seen to; 0 unless said. */
  readonly mayWaitUpToS?: number | undefined;
}

/** What is done in the trays, in the words of the engine; a notebook makes it of a recipe and of the baths of that evening. */
export interface ProcessRecipe {
  readonly kind: "negative" | "positive";
  readonly steps: readonly ProcessStep[];
}
