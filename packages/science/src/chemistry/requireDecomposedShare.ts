import { requireWithin } from "../errors/index.ts";

/** Refuses a share of decomposed peroxide outside 0 … 1. Inner helper. */
export function requireDecomposedShare(decomposedShare: number): void {
  requireWithin({ decomposedShare }, { least: 0, most: 1, code: "shareOutOfRange" });
}
