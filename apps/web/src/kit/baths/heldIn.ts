import type { Bath } from "@captray/notebook/records";
import type { Held } from "@captray/science/chemistry";

/** What a bath holds, as the cautions ask; in dilute water grams in 100 ml are no fewer than in 100 g. */
export function heldIn({ holds = [] }: Bath): readonly Held[] {
  return holds.map(({ what, percentWv }) => ({
    substance: what,
    ...(percentWv !== undefined && { percentWw: Math.min(100, percentWv) }),
  }));
}
