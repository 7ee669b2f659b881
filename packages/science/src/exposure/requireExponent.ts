import { OutOfDomain } from "../errors/outOfDomain.ts";

/** Refuses a reciprocity exponent that no paper has: outside 0.5 < p ≤ 1. Inner helper of the long-exposure formulas. */
export function requireExponent(exponent: number, key = "exponent", path = key): void {
  if (!Number.isFinite(exponent)) throw new OutOfDomain("notFinite", { [key]: exponent }, path);
  if (exponent <= 0.5 || exponent > 1) throw new OutOfDomain("exponentOutOfRange", { [key]: exponent }, path);
}
