import type { OutOfDomain } from "@captray/science/errors";
import type { PlanKind } from "@captray/science/process";

/** A sheet's stay in one tray, as planned; seconds from the first sheet's start. */
export interface PlannedStay {
  /** Which lane, from 0. */
  readonly lane: number;
  /** Which step of the recipe, from 0. */
  readonly at: number;
  readonly step: string;
  readonly round: number;
  readonly inS: number;
  readonly outS: number;
  /** By how much longer than its time it stays, because another sheet is seen to. */
  readonly waitsS: number;
}

export interface TimetablePlan {
  readonly kind: "plan";
  readonly spacing: PlanKind;
  /** When each lane goes into the first bath. */
  readonly startsS: readonly number[];
  readonly endS: number;
  readonly oneSheetS: number;
  /** Whether no plan can end sooner; never said where sheets wait for white light. */
  readonly best: boolean;
  /** The shortest even spacing, and when that would end; nothing where sheets wait for white light, or there is one. */
  readonly even: { readonly intervalS: number; readonly endS: number } | undefined;
  /** When white light may come on for the first time because it must; nothing where no step needs it. */
  readonly whiteS: number | undefined;
  /** In the order in which sheets go in. */
  readonly stays: readonly PlannedStay[];
  /** The same in sentences, to be read before the lights go out. */
  readonly says: readonly string[];
}

export type TimetableOf = TimetablePlan | { readonly kind: "refused"; readonly fault: OutOfDomain };
