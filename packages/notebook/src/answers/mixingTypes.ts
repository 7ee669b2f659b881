import type { BathStrengths, Held, MixCompany, MixWarning, ShownCaution } from "@captray/science/chemistry";
import type { OutOfDomain } from "@captray/science/errors";
import type { BathRole, StockKind, StrengthBasis } from "../records/index.ts";

/** What stands in the jar or bottle, as it was said; what was not said is asked for. */
export interface StockAsked {
  readonly what: StockKind;
  readonly name: string;
  /** The figure on the label; without a basis a bare per cent. */
  readonly strength?: { readonly value: number; readonly basis?: StrengthBasis | undefined } | undefined;
  /** 1+4 as written; 1:5 is asked about. */
  readonly ratioText?: string | undefined;
  /** Which salt is in the jar. */
  readonly formula?: string | undefined;
}

/** One substance of the bath, and how much of it is wanted in 100 ml. */
export interface Wanted {
  readonly what: string;
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
  readonly seen?: readonly string[];
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
      /** What the bath holds, for the cautions of the trays. */
      readonly held: readonly Held[];
      readonly lastHours: number | undefined;
    }
  /** A jar or bottle, or what it says, is still to be named. */
  | {
      readonly kind: "needs";
      readonly what: StockKind;
      readonly need: "stock" | "strength" | "ratio" | "formula" | "wanted";
    }
  /** What was said means two things: both are worked out, none is taken. */
  | {
      readonly kind: "ask";
      readonly what: StockKind;
      readonly asks: "ratio" | "basis";
      readonly said: string;
      readonly readings: readonly MixingReading[];
    }
  | { readonly kind: "refused"; readonly fault: OutOfDomain }
  /** The stocks together are more than the bath: they are too weak for it. */
  | { readonly kind: "noRoom"; readonly stocksMl: number; readonly volumeMl: number }
  /** The tool works out no amounts for it. */
  | { readonly kind: "notHere"; readonly what: string };

export type MixingReading =
  | { readonly ratioText: string; readonly meaning: "oneWith" | "oneIn"; readonly stockMl: number }
  | { readonly basis: StrengthBasis; readonly percentWv: number; readonly stockMl: number | undefined };
