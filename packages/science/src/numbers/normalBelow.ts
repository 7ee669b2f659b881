/** The share of the normal distribution below `z`, its far ends to their own last digits. */
export function normalBelow(z: number): number {
  const far = Math.abs(z);
  const height = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  if (far < 3) {
    // z + z³/3 + z⁵/15 + …: all of one sign.
    let term = z;
    let sum = z;
    for (let k = 3; Math.abs(term) > 1e-17 * Math.abs(sum) && k < 400; k += 2) {
      term *= (z * z) / k;
      sum += term;
    }
    return 0.5 + height * sum;
  }
  // The tail over its height, as a continued fraction: 1 / (z + 1 / (z + 2 / (z + …))).
  let tail = far;
  for (let k = 120; k >= 1; k -= 1) tail = far + k / tail;
  const beyond = height / tail;
  return z < 0 ? beyond : 1 - beyond;
}
