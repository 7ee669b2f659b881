import { betaBelow } from "./betaBelow.ts";

/** The value that a beta distribution stays below with probability `p`; found by halving, in its logarithm near 0. */
export function betaQuantile(p: number, a: number, b: number): number {
  if (p <= 0) return 0;
  if (p >= 1) return 1;
  // The middle of a bracket far from its ends is a geometric one: small values keep their digits.
  let low = 1e-300;
  let high = 1;
  for (let step = 0; step < 200; step += 1) {
    const middle = high > 4 * low ? Math.sqrt(low * high) : (low + high) / 2;
    if (middle <= low || middle >= high) break;
    if (betaBelow(middle, a, b) < p) low = middle;
    else high = middle;
  }
  return high;
}
