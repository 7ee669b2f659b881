import type { Held } from "@captray/science/chemistry";
import type { Bath, BathSubstance, RecordId, Run } from "../records/index.ts";

/** The baths of a run, and what is left to do with them. */
export interface FinishOf {
  /** A mixed peroxide bath has a last hour: it goes the same sitting. */
  readonly baths: readonly {
    readonly id: RecordId;
    readonly name: string;
    readonly state: "open" | "hasLastHour" | "discarded";
  }[];
  /** For the cautions of discarding; of the recipe's steps where no baths were named. */
  readonly held: readonly Held[];
}

interface Holds {
  readonly holds?: readonly { readonly what: BathSubstance; readonly percentWv?: number | undefined }[] | undefined;
}

/** What stands on the bench when a run is over, and what was poured for it. */
export function finishOf({
  run,
  bathOf,
}: {
  readonly run: Run;
  readonly bathOf: (id: string) => Bath | undefined;
}): FinishOf {
  const baths = (run.bathIds ?? []).flatMap((id) => bathOf(id) ?? []);
  const open = baths.filter(({ discardedAt, removedAt }) => !discardedAt && !removedAt);
  const steps = (run.recipeThen as { readonly steps?: unknown } | undefined)?.steps;
  const from: readonly Holds[] = baths.length > 0 ? open : Array.isArray(steps) ? (steps as readonly Holds[]) : [];
  return {
    baths: baths.map(({ id, name, lastHourAt, discardedAt, removedAt }) => ({
      id,
      name,
      state: (discardedAt ?? removedAt) ? "discarded" : lastHourAt === undefined ? "open" : "hasLastHour",
    })),
    held: from.flatMap(({ holds = [] }) =>
      // In dilute water solutions % w/v is the larger of the two: what is said is never too weak.
      holds.map(({ what, percentWv }) => ({
        substance: what,
        ...(percentWv !== undefined && { percentWw: Math.min(100, percentWv) }),
      })),
    ),
  };
}
