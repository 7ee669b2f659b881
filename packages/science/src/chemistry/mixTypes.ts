import type { CautionAct, Substance } from "./cautionTypes.ts";

/** What a figure on a label or in a recipe means. */
export type StrengthBasis = "percentWw" | "percentWv" | "gramsPerL" | "molar" | "volumes";

/** A figure, and what it means; without a basis it is per cent of whatever kind. */
export interface StatedStrength {
  readonly value: number;
  readonly basis?: StrengthBasis;
}

/** `1+7` of a stock. */
export interface MixRatio {
  readonly text: string;
  readonly volumeMl: number;
}

/** A stock of one strength to be brought to another. */
export interface MixStrength {
  /** "peroxide", "acetic", "citric" or a formula. */
  readonly what: string;
  readonly have: StatedStrength;
  readonly want: StatedStrength;
  readonly volumeMl: number;
}

/** A solid to be dissolved. */
export interface MixWeigh {
  readonly formula: string;
  readonly gramsPerL: number;
  readonly volumeMl: number;
  /** What is in the jar, another hydrate perhaps. */
  readonly have?: string;
}

/** What else is in the bath or in the room. */
export type MixCompany =
  | "peroxide"
  | "acetic"
  | "citric"
  | "hypochlorite"
  | "sulfite"
  | "fixer"
  | "ammonia"
  | "silver"
  | "acetone"
  | "alcohol";

/** Exactly one of `ratio`, `strength` and `weigh`. */
export interface MixInput {
  readonly ratio?: MixRatio;
  readonly strength?: MixStrength;
  readonly weigh?: MixWeigh;
  readonly with?: readonly MixCompany[];
  readonly act?: CautionAct;
}

export type Pour =
  | { readonly what: string; readonly amountMl: number }
  | { readonly what: string; readonly amountG: number };

/** The strength of the mixed bath in every way it can be said; null where it cannot. */
export interface BathStrengths {
  readonly percentWw: number | null;
  readonly percentWv: number;
  readonly gramsPerL: number;
  readonly molar: number;
  readonly volumes: number | null;
}

export type MixWarning =
  /** A bare per cent was taken for g in 100 mL. */
  | { readonly kind: "basisAssumed"; readonly key: "have" | "want" }
  /** Strong peroxide softens the layer: more rounds rather than more strength. */
  | { readonly kind: "gelatinAtRisk"; readonly percentWv: number }
  /** Above 20 % volumes no longer simply add. */
  | { readonly kind: "volumesNotAdditive" }
  /** Peroxide with acid in one tray has a last hour, not a last day. */
  | { readonly kind: "lastHour"; readonly hours: number }
  /** Less than a kitchen measure can show. */
  | { readonly kind: "tooSmallToMeasure"; readonly what: string };

export interface MixAnswer {
  readonly pours: readonly Pour[];
  /** What the hands do, in order. */
  readonly steps: readonly string[];
  readonly strengths: BathStrengths | null;
  /** Hazard classes of the stock. */
  readonly classes: readonly string[];
  readonly cautions: readonly { readonly id: string; readonly text: string }[];
  /** Peroxide: what the bare ratio of the two figures would pour. */
  readonly naiveMl: number | null;
  readonly warnings: readonly MixWarning[];
}

/** What one way of mixing gives; company and act come on top. Inner. */
export interface Mixed {
  readonly pours: readonly Pour[];
  readonly steps: readonly string[];
  readonly strengths: BathStrengths | null;
  readonly classes: readonly string[];
  readonly naiveMl: number | null;
  readonly warnings: readonly MixWarning[];
  /** What is poured, with the strength of the stock and of the bath in % w/w (or w/v, which is never less). */
  readonly held: { readonly substance: Substance; readonly stockW: number; readonly bathW: number } | null;
  readonly form: "powder" | "liquid";
}
