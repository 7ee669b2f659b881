/** What the hand goes by: ticks that it hears, sees and feels, or its own counting in silence. */
export type CapWay = "ticks" | "counted";

/** What is to be given, and what is known of the hand in this way. */
export interface CapPlan {
  /** The ledger's time. */
  readonly wantedS: number;
  readonly way: CapWay;
  /** + when this hand gives too long. */
  readonly biasS: number;
  /** How many seconds one counted second of this hand is; 1 to the ticks. */
  readonly rate: number;
  /** A step test: several strips of one sheet. */
  readonly strips?: CapStrips;
}

/** The strips of a step test. */
export interface CapStrips {
  /** What each strip has had in the end, in whole ticks; the least first. */
  readonly totalsS: readonly number[];
  /** The cap on between them, or the card moved on while it is off. */
  readonly manner: "openings" | "cardMoved";
}

/** Below this nobody can put a cap off and on: what is left is not given. */
export const leastS = 0.1;

/**
 * The ticks, or own counts, after which the cap goes on.
 *
 * Formula  (wanted − bias) / rate to the nearest whole one from 2 up, else the nearest half, at least a half; a half goes up.
 *
 * @source none: what can be said to a hand (common practice)
 */
export function countFor({ wantedS, biasS, rate }: Pick<CapPlan, "wantedS" | "biasS" | "rate">): number {
  const exact = (wantedS - biasS) / rate;
  // A hair of slack, so that 4.3 − 0.3 is four.
  const half = (step: number) => Math.floor(exact / step + 0.5 + 1e-9) * step;
  return exact >= 2 ? half(1) : Math.max(0.5, half(0.5));
}

/** What is given if the cap goes on at that count. */
export function givenAtCount({
  count,
  biasS,
  rate,
}: { readonly count: number } & Pick<CapPlan, "biasS" | "rate">): number {
  return tenth(Math.max(leastS, count * rate + biasS));
}

/** Rounded to 0.1 s, which is what a press is good for. */
export function tenth(seconds: number): number {
  return Math.round(seconds * 10) / 10;
}
