import type { Kit } from "./kit.ts";
import { planOf } from "./planOf.ts";

/** How much longer this paper's times grow, by one exponent from a time on. */
export interface PaperLaw {
  readonly reciprocityExponent: number;
  readonly reciprocityFromS: number;
}

/**
 * The law of a kit's paper about a time: its own exponent, or what its table does there from one stop to the next.
 *
 * A paper that nobody tested has none (1).
 */
export function paperLawOf({ kit }: { readonly kit: Kit }): PaperLaw {
  const { reciprocity, reciprocityTable = [] } = kit.paperBox ?? {};
  if (reciprocityTable.length >= 2) {
    const index = kit.exposureIndex;
    const stopLess = index?.value && {
      ...index,
      value: { ...index.value, value: index.value.value / 2 },
    };
    const here = planOf(kit);
    const there = planOf({ ...kit, exposureIndex: stopLess });
    if (here.kind === "plan" && there.kind === "plan") {
      const exponent = 1 / Math.log2(there.answer.timeS / here.answer.timeS);
      return { reciprocityExponent: Math.min(1, Math.max(0.51, exponent)), reciprocityFromS: 1e-3 };
    }
  }
  return { reciprocityExponent: reciprocity?.exponent ?? 1, reciprocityFromS: reciprocity?.fromS ?? 1 };
}
