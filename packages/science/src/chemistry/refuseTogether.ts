import { OutOfDomain } from "../errors/index.ts";
import type { Substance } from "./cautionTypes.ts";
import { APART, type ApartPair, PERACETIC, STRONGEST_WITH_ACETIC } from "./keepApart.ts";

export interface Together {
  readonly substance: Substance;
  /** Strength of the bottle in % w/w; 0 where it is unknown or a bath. */
  readonly stockW: number;
  /** Where it stands in the input. */
  readonly key: string;
}

/** Refuses what must not come together, at the later of the two. Inner helper of the mixing. */
export function refuseTogether(all: readonly Together[]): void {
  for (const [index, later] of all.entries()) {
    for (const earlier of all.slice(0, index)) {
      const pair = apart(earlier, later);
      if (pair === undefined) continue;
      const { reason, way } = pair;
      throw new OutOfDomain(
        "mixRefused",
        { first: earlier.substance, second: later.substance, reason, way },
        later.key,
      );
    }
  }
}

function apart(one: Together, other: Together): ApartPair | undefined {
  const isPair = ({ first, second }: ApartPair) =>
    (first.includes(one.substance) && second.includes(other.substance)) ||
    (first.includes(other.substance) && second.includes(one.substance));
  if (isPair(PERACETIC)) return Math.max(one.stockW, other.stockW) > STRONGEST_WITH_ACETIC ? PERACETIC : undefined;
  return APART.find(isPair);
}
