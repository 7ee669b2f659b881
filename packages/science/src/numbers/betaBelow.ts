import { logGamma } from "./logGamma.ts";

/**
 * The share of a beta distribution that lies below `x`: the regularised incomplete beta function I_x(a, b).
 *
 * By its continued fraction, on the side where that converges fast.
 */
export function betaBelow(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
  return x < (a + 1) / (a + b + 2) ? (front * fraction(x, a, b)) / a : 1 - (front * fraction(1 - x, b, a)) / b;
}

/** Lentz's way, from the front. */
function fraction(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  let c = 1;
  let d = 1 / guarded(1 - ((a + b) * x) / (a + 1));
  let value = d;
  for (let m = 1; m <= 5000; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / guarded(1 + even * d);
    c = guarded(1 + even / c);
    value *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / guarded(1 + odd * d);
    c = guarded(1 + odd / c);
    const step = d * c;
    value *= step;
    if (Math.abs(step - 1) < 1e-16) break;
  }
  return value;

  function guarded(part: number): number {
    return Math.abs(part) < tiny ? tiny : part;
  }
}
