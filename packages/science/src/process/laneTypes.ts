import type { ProcessRecipe, StepLight } from "./processTypes.ts";

/**
 * What a person says to a lane, all by a press:
 *
 * `start` into the first bath · `next` into the next bath · `late` the same, and it was late · `repeat` out and into the same bath again ·
 * `skip` the next step is left out · `another` still dark, another round · `clear` no dark silver seen, go on after this round ·
 * `pause`, `resume` no cues between · `takeBack` undoes the last press · `trouble` something happened, in words · `waitOn`, `waitOff` never
 * or again go on by itself. `killed` and `restored` are no presses: the program was gone between.
 */
export type LanePress =
  | "start"
  | "next"
  | "late"
  | "repeat"
  | "skip"
  | "another"
  | "clear"
  | "pause"
  | "resume"
  | "takeBack"
  | "trouble"
  | "waitOn"
  | "waitOff"
  | "killed"
  | "restored";

export interface LaneEvent {
  /** Never earlier than the event before. */
  readonly atS: number;
  readonly press: LanePress;
  /** What was the matter, with `trouble`. */
  readonly note?: string | undefined;
}

/** The thermometer in the bath of a step: it holds from then on, and drifts to the air if that is known. */
export interface BathReading {
  readonly atS: number;
  /** Which step of the recipe, from 0. */
  readonly step: number;
  readonly bathC: number;
  readonly airC?: number | undefined;
  /** How long that bath takes to come to 37 % of its difference from the air. */
  readonly timeConstantS?: number | undefined;
}

export interface RunLaneInput {
  readonly recipe: ProcessRecipe;
  readonly events: readonly LaneEvent[];
  /** The clock has come to here. */
  readonly untilS: number;
  /** When the sheet went into the first bath; `null`: that is still to be pressed. 0 unless said. */
  readonly startS?: number | null | undefined;
  readonly waitForMe?: boolean | undefined;
  readonly readings?: readonly BathReading[] | undefined;
  /** When an unwashed sheet came into the wash: whoever is in it begins anew. */
  readonly washAnewS?: readonly number[] | undefined;
}

/** One stay in a bath. Planned and actual stand side by side; nothing is overwritten. */
export interface LaneRow {
  /** Its place in the recipe, from 0. */
  readonly at: number;
  readonly step: string;
  readonly id: string | undefined;
  readonly round: number;
  readonly startS: number;
  /** As the recipe says, at its reference temperature. */
  readonly plannedS: number;
  /** What that comes to in the bath as it was. */
  readonly dueS: number;
  /** Null while it runs. */
  readonly actualS: number | null;
  readonly bathC: number | null;
  /** The actual time as the same bath would need it at the reference temperature. */
  readonly effectiveS: number | null;
  readonly log2Ratio: number | null;
  readonly late: boolean;
  /** Null while it runs. */
  readonly how: "tapped" | "assumed" | "skipped" | null;
}

export interface LaneCue {
  readonly atS: number;
  readonly cue: "lift" | "change";
}

export type LaneRefusalCode =
  | "runIsOver"
  | "notStarted"
  | "alreadyStarted"
  | "notPaused"
  | "alreadyPaused"
  | "nothingToTakeBack"
  | "nothingToSkip"
  | "noRoundHere"
  | "sayIfClear"
  | "programGone"
  | "notGone";

export interface LaneRefusal {
  readonly atS: number;
  readonly press: LanePress;
  readonly code: LaneRefusalCode;
}

/** A place in the recipe: which step, and the how-manieth time. */
export interface LanePlace {
  readonly at: number;
  readonly step: string;
  readonly round: number;
  readonly light: StepLight;
}

/** What the next press means. */
export type LaneMeaning =
  | { readonly kind: "start"; readonly to: LanePlace }
  | { readonly kind: "next"; readonly from: LanePlace; readonly to: LanePlace }
  /** Another round in the same bath. */
  | { readonly kind: "again"; readonly from: LanePlace; readonly to: LanePlace }
  /** Two halves: still dark, another round; clear, go on. */
  | {
      readonly kind: "round";
      readonly from: LanePlace;
      readonly another: LanePlace;
      readonly clear: LanePlace | null;
      /** The recipe's most rounds are done: it waits to be told. */
      readonly mustSay: boolean;
    }
  | { readonly kind: "out"; readonly from: LanePlace };

/** The stay that runs. */
export interface LaneStay extends LanePlace {
  readonly startS: number;
  /** When it ends, on the clock of the lane. */
  readonly endS: number;
  readonly liftS: number;
  readonly drainS: number;
  readonly mustLeaveOnTime: boolean;
  /** When the run goes on by itself if nobody presses; null if it waits. */
  readonly goesOnS: number | null;
  /** What was said ahead of the end of this round. */
  readonly said: "another" | "clear" | null;
  /** Names of the steps that will be left out after it. */
  readonly leavesOut: readonly string[];
}

/** A stay to come, if every one before it leaves on time. */
export interface LaneAhead extends LanePlace {
  readonly startS: number;
  readonly endS: number;
  readonly mustLeaveOnTime: boolean;
}

export interface LaneState {
  readonly state: "waiting" | "running" | "paused" | "done";
  /** The program runs; false between `killed` and `restored`. */
  readonly alive: boolean;
  readonly startedAtS: number | null;
  readonly endedAtS: number | null;
  readonly waitForMe: boolean;
  /** One row for each stay, the running one last; steps left out where they would have stood. */
  readonly rows: readonly LaneRow[];
  readonly cues: readonly LaneCue[];
  readonly refused: readonly LaneRefusal[];
  readonly troubles: readonly { readonly atS: number; readonly note: string; readonly step: string }[];
  readonly stay: LaneStay | null;
  /** Null once it is done. */
  readonly means: LaneMeaning | null;
  /** The press that `takeBack` would undo. */
  readonly takesBack: LanePress | null;
  /** Up to the end, or thirty stays on. */
  readonly ahead: readonly LaneAhead[];
}
