import { betaBelow } from "./betaBelow.ts";

/** The share of Student's t below `t`; the degrees of freedom need not be whole. */
export function studentBelow(t: number, degrees: number): number {
  const square = t * t;
  // The smaller of the two ways of saying the same share is the exact one.
  const beyond =
    square < degrees
      ? (1 - betaBelow(square / (degrees + square), 0.5, degrees / 2)) / 2
      : betaBelow(degrees / (degrees + square), degrees / 2, 0.5) / 2;
  return t > 0 ? 1 - beyond : beyond;
}
