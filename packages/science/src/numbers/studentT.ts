import { betaQuantile } from "./betaQuantile.ts";

const MOST_TERMS = 2000;

/**
 * The value that Student's t stays below with probability `p` (0.5 up to 1).
 *
 * For whole degrees of freedom, not too many, the share below is a finite sum in the angle θ = atan(t/√ν), and θ is found by
 * halving; else t² = ν (1 − y) / y with y a beta variable.
 */
export function studentT(p: number, degrees: number): number {
  if (!Number.isInteger(degrees) || degrees > MOST_TERMS) {
    const y = betaQuantile(2 * (1 - p), degrees / 2, 0.5);
    return Math.sqrt((degrees * (1 - y)) / y);
  }
  let low = 0;
  let high = Math.PI / 2;
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (shareBelow(middle, degrees) < p) low = middle;
    else high = middle;
  }
  return Math.sqrt(degrees) * Math.tan(low);
}

function shareBelow(angle: number, degrees: number): number {
  const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
  const odd = degrees % 2 === 1;
  let term = odd ? cosine : 1;
  let sum = degrees === 1 ? 0 : term;
  for (let k = odd ? 3 : 2; k < degrees - 1; k += 2) {
    term *= ((k - 1) / k) * cosine ** 2;
    sum += term;
  }
  const within = odd ? (2 / Math.PI) * (angle + sine * sum) : sine * sum;
  return 0.5 + within / 2;
}
