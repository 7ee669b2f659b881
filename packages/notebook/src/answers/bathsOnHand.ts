import type { Bath } from "../records/index.ts";
import { type BathWearOf, bathWearOf, type Passed } from "./bathWearOf.ts";

export interface BathOnHand {
  readonly bath: Bath;
  readonly wear: BathWearOf;
  /** It may go into a run: neither discarded nor past its last hour. */
  readonly isOffered: boolean;
  /** Holds peroxide that was mixed for one sitting: when that ends it is discarded, open. */
  readonly endsWithSitting: boolean;
}

export interface BathsOnHandInput {
  readonly baths: readonly Bath[];
  readonly atMs: number;
  readonly passedBy?: (bath: Bath) => readonly Passed[];
}

/** Baths that are not discarded yet, those mixed last first; one past its last hour stands there only to be discarded. */
export function bathsOnHand({ baths, atMs, passedBy = () => [] }: BathsOnHandInput): readonly BathOnHand[] {
  return baths
    .filter(({ discardedAt, removedAt }) => discardedAt === undefined && removedAt === undefined)
    .map((bath) => {
      const wear = bathWearOf({ bath, atMs, passed: passedBy(bath) });
      return {
        bath,
        wear,
        isOffered: wear.verdict !== "over",
        endsWithSitting: bath.role === "acidAndPeroxide" || bath.role === "peroxide",
      };
    })
    .sort((a, b) => (b.bath.mixedAt?.at ?? 0) - (a.bath.mixedAt?.at ?? 0));
}
