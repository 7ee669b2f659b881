import type {
  BathRole,
  BathSubstance,
  ControlPatch,
  Recipe,
  Result,
  StepDoes,
  StepLight,
} from "@captray/notebook/records";

/** A step as it is being written: figures stay texts until they are kept. */
export interface StepDraft {
  readonly id: string;
  readonly does: StepDoes;
  readonly name: string;
  readonly bath: BathRole | "";
  /** What is in the bath, each with the text of its strength. */
  readonly holds: Readonly<Partial<Record<BathSubstance, string>>>;
  readonly least: string;
  readonly aim: string;
  readonly most: string;
  readonly coolest: string;
  readonly warmth: string;
  readonly warmest: string;
  readonly agitation: string;
  readonly drain: string;
  readonly light: StepLight;
  readonly leaves: "onTime" | "mayWait" | "either";
  readonly cautions: readonly string[];
  /** The round it belongs to, or "". */
  readonly roundId: string;
}

/** The steps of one round stand together. */
export interface RoundDraft {
  readonly id: string;
  readonly least: string;
  readonly most: string;
  /** Ended by eye, when no dark silver is left; else every round is done. */
  readonly byEye: boolean;
}

export interface RecipeDraft {
  readonly name: string;
  readonly result: Result | "";
  readonly steps: readonly StepDraft[];
  readonly rounds: readonly RoundDraft[];
  /** Rounds of bleach to count on. */
  readonly usual: string;
  readonly patches: readonly ControlPatch[];
  readonly knowingly: NonNullable<Recipe["knowingly"]>;
  readonly notes: string;
  /** Its ranges are a frame's, and nobody has tried them. */
  readonly untested: boolean;
}

export type TemperatureUnit = "celsius" | "fahrenheit";

/** Figures of a step, by the keys of its texts. */
export type StepText = "name" | "least" | "aim" | "most" | "coolest" | "warmth" | "warmest" | "agitation" | "drain";

export type RecipeEvent =
  | { readonly kind: "said"; readonly key: "name" | "notes" | "usual"; readonly text: string }
  | { readonly kind: "gives"; readonly result: Result }
  | { readonly kind: "stepSaid"; readonly stepId: string; readonly key: StepText; readonly text: string }
  | { readonly kind: "stepDoes"; readonly stepId: string; readonly does: StepDoes }
  | { readonly kind: "stepBath"; readonly stepId: string; readonly bath: BathRole | "" }
  | {
      readonly kind: "stepHolds";
      readonly stepId: string;
      readonly what: BathSubstance;
      readonly text: string | undefined;
    }
  | { readonly kind: "stepLight"; readonly stepId: string; readonly light: StepLight }
  | { readonly kind: "stepLeaves"; readonly stepId: string; readonly leaves: StepDraft["leaves"] }
  | { readonly kind: "moved"; readonly stepId: string; readonly by: -1 | 1 }
  /** After a step, or first of all. */
  | { readonly kind: "added"; readonly stepId: string; readonly afterId: string | undefined; readonly does: StepDoes }
  | { readonly kind: "removed"; readonly stepId: string }
  | { readonly kind: "roundBegun"; readonly stepId: string }
  | { readonly kind: "roundEnded"; readonly roundId: string }
  | { readonly kind: "roundSaid"; readonly roundId: string; readonly key: "least" | "most"; readonly text: string }
  | { readonly kind: "roundByEye"; readonly roundId: string; readonly byEye: boolean }
  | { readonly kind: "patched"; readonly patch: ControlPatch; readonly on: boolean }
  | { readonly kind: "known"; readonly code: string; readonly stepId: string | undefined; readonly on: boolean }
  | { readonly kind: "tested" }
  | { readonly kind: "laidOut"; readonly draft: RecipeDraft };
