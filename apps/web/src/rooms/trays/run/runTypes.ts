import type { BenchInput } from "@captray/drawings/trays";
import type { RecipeStep } from "@captray/notebook/records";
import type { LaneState } from "@captray/science/process";

/** What goes through the trays together, and how far it has come; all times on the clock of the run. */
export interface LaneInHand {
  readonly id: string;
  /** "W31", or "W31 a" for a piece. */
  readonly codes: readonly string[];
  /** Of its recipe, as they were that evening. */
  readonly steps: readonly RecipeStep[];
  /** When the timetable has it go in. */
  readonly plannedStartS: number;
  readonly state: LaneState;
}

/** What the run's page is made of, whatever the clock of the machine says. */
export interface RunInHand {
  readonly recipeName: string;
  readonly lanes: readonly LaneInHand[];
  /** Lanes in the order in which the hands will move them; the first is the one next move. */
  readonly order: readonly string[];
  /** Two moves to come for one pair of hands: who has to wait is named beforehand. */
  readonly clash?:
    | { readonly atS: number; readonly firstId: string; readonly loserId: string; readonly step: string }
    | undefined;
  /** Since the run was started. */
  readonly nowS: number;
}

/** What a press does on the page of the run. */
export type RunPress = "start" | "next" | "another" | "clear";

export interface RunHalf {
  readonly press: "another" | "clear";
  readonly word: string;
  readonly line: string;
  readonly more: string;
  readonly noPress?: string | undefined;
}

/** The page of a run in words and numbers. */
export interface RunView {
  readonly laneId: string | null;
  readonly press: RunPress | null;
  readonly top: string;
  readonly since: string;
  readonly figure: string;
  readonly bench: Omit<BenchInput, "widthPx" | "heightPx" | "letterPx">;
  /** The one next move: "W31: peroxide to rinse". */
  readonly move: string;
  readonly rock: { readonly edge: "left" | "right" | null; readonly words: string } | null;
  readonly lift: string;
  /** What follows, what waits, what lies in the wash. */
  readonly lines: readonly string[];
  /** The caution of this bath and of the next. */
  readonly caution: string | null;
  readonly means: readonly [string, string] | null;
  readonly noPress: string;
  /** Two halves in place of the one press. */
  readonly round: {
    readonly top: string;
    readonly head: string;
    readonly say: string;
    readonly halves: readonly RunHalf[];
  } | null;
  readonly paused: boolean;
  readonly over: boolean;
  /** The whole page in a sentence. */
  readonly spoken: string;
}
