import { normalBelow } from "./normalBelow.ts";

/** The value that a normal number stays below with probability `p`, 0 < p < 1; found by halving. */
export function normalQuantile(p: number): number {
  // Above the middle the small share is the one that keeps its digits.
  if (p > 0.5) return -normalQuantile(1 - p);
  let low = -40;
  let high = 0;
  for (let step = 0; step < 80; step += 1) {
    const middle = (low + high) / 2;
    if (normalBelow(middle) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2 + 0;
}
