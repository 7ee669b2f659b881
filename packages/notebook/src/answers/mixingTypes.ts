import type {
  BathStrengths,
  Held,
  MixCompany,
  MixWarning,
  ShownCaution,
  StrengthBasis,
} from "@captray/science/chemistry";
import type { BathRole, BathSubstance, StockKind } from "../records/index.ts";

/** A jar or a bottle, as its label says it; what was not said is asked for. */
export interface StockAsked {
  readonly what: StockKind;
  readonly name: string;
  /** Of a liquid its strength, of a concentrate its ratio: 12 % w/w, 20 vol, 1+4. */
  readonly label?: string | undefined;
  /** Of a powder which salt is in the jar. */
  readonly formula?: string | undefined;
}

/** One substance of the bath, and how much of it is wanted in 100 ml. */
export interface Wanted {
  readonly what: BathSubstance;
  readonly percentWv?: number | undefined;
}

export interface MixingAsked {
  readonly role: BathRole;
  readonly wants: readonly Wanted[];
  readonly volumeMl: number;
  /** One of a kind. */
  readonly stocks: readonly StockAsked[];
  /** What else is in the room; left out: nobody said. */
  readonly room?: readonly MixCompany[] | undefined;
  /** Cautions read earlier in this sitting. */
  readonly seen?: readonly string[] | undefined;
}

export type MixingPour =
  | { readonly what: StockKind | "water"; readonly name: string; readonly amountMl: number }
  | { readonly what: StockKind; readonly name: string; readonly amountG: number };

/** What the hands do, in safe order, each with the cautions due there. */
export type MixingStep = { readonly cautions: readonly ShownCaution[] } & (
  | { readonly does: "water"; readonly amountMl: number; readonly isForBleach: boolean }
  | { readonly does: "dissolve"; readonly what: StockKind; readonly name: string; readonly amountG: number }
  | { readonly does: "pour"; readonly what: StockKind; readonly name: string; readonly amountMl: number }
  | { readonly does: "topUp"; readonly toMl: number; readonly isForBleach: boolean }
  | { readonly does: "peroxide"; readonly name: string; readonly amountMl: number; readonly toMl: number }
  | { readonly does: "label"; readonly isVented: boolean }
);

/** What the bath holds once it is mixed. */
export interface MixingReached {
  readonly what: StockKind;
  readonly name: string;
  /** Of a concentrate nobody knows the strength: only the share of it. */
  readonly strengths: BathStrengths | undefined;
  readonly share: number | undefined;
  /** Peroxide: what the bare ratio of the two figures would pour. */
  readonly naiveMl: number | undefined;
  /** Hazard classes of the stock. */
  readonly classes: readonly string[];
}

export type Mixing =
  | {
      readonly kind: "mix";
      readonly pours: readonly MixingPour[];
      readonly steps: readonly MixingStep[];
      readonly reached: readonly MixingReached[];
      readonly warnings: readonly MixWarning[];
      /** For the whole of it, `help` last. */
      readonly cautions: readonly ShownCaution[];
      /** What the bath holds at the strengths really reached. */
      readonly held: readonly Held[];
      readonly lastHours: number | undefined;
    }
  /** A jar or bottle, or what it says, is still to be named. */
  | {
      readonly kind: "needs";
      readonly what: StockKind;
      readonly need: "stock" | "strength" | "ratio" | "formula" | "wanted";
    }
  /** What was said means two things: each is worked out, none is taken. */
  | {
      readonly kind: "ask";
      readonly what: StockKind;
      readonly asks: "ratio" | "basis";
      readonly said: string;
      readonly readings: readonly MixingReading[];
    }
  | {
      readonly kind: "unreadable";
      readonly what: StockKind;
      readonly said: string;
      readonly wanted: "ratio" | "strength";
    }
  /** Dangerous, or not possible: with a safer way. */
  | {
      readonly kind: "refused";
      readonly what: StockKind | undefined;
      readonly code: string;
      readonly message: string;
      readonly way: string;
    }
  /** The stocks together are more than the bath: they are too weak for it. */
  | { readonly kind: "noRoom"; readonly stocksMl: number; readonly volumeMl: number }
  /** The tool works out no amounts for it. */
  | { readonly kind: "notHere"; readonly what: string };

/** One thing a label may mean: how it is then written, and what it would pour. */
export interface MixingReading {
  readonly label: string;
  readonly meaning: "oneWith" | "oneIn" | StrengthBasis;
  /** Of a strength the same as g in 100 mL. */
  readonly percentWv?: number | undefined;
  /** Nothing where it would be too weak for the bath. */
  readonly stockMl: number | undefined;
}
