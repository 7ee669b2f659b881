/**
 * The value that χ² stays below with probability `p`, for a whole number of degrees of freedom.
 *
 * The share below is the series of the incomplete gamma function, all of whose terms are positive; the value is found by halving.
 */
export function chiSquared(p: number, degrees: number): number {
  let low = 0;
  let high = degrees + 40 + 12 * Math.sqrt(2 * degrees);
  for (let step = 0; step < 70; step++) {
    const middle = (low + high) / 2;
    if (shareBelow(middle, degrees) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function shareBelow(value: number, degrees: number): number {
  if (value <= 0) return 0;
  // In logarithms: a thousand degrees of freedom overflow the powers, not their logarithms.
  let term = 1;
  let sum = 1;
  for (let k = 2; term > sum * 1e-17; k += 2) {
    term *= value / (degrees + k);
    sum += term;
  }
  return Math.exp(Math.log(sum) + (degrees / 2) * Math.log(value / 2) - value / 2 - logGammaHalf(degrees + 2));
}

/** ln Γ(n/2) for a whole n. */
function logGammaHalf(n: number): number {
  let sum = n % 2 === 0 ? 0 : Math.log(Math.PI) / 2;
  for (let k = n - 2; k > 0; k -= 2) sum += Math.log(k / 2);
  return sum;
}
