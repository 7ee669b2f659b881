/**
 * ln Γ(x) for x > 0, to some 1e-14 of its size: lifted above 10 by the recursion, there Stirling's series.
 */
export function logGamma(x: number): number {
  let lifted = x;
  let product = 1;
  while (lifted < 10) {
    product *= lifted;
    lifted += 1;
  }
  const inverse = 1 / (lifted * lifted);
  const series =
    1 / 12 -
    inverse * (1 / 360 - inverse * (1 / 1260 - inverse * (1 / 1680 - inverse * (1 / 1188 - inverse * (691 / 360360)))));
  return (lifted - 0.5) * Math.log(lifted) - lifted + Math.log(2 * Math.PI) / 2 + series / lifted - Math.log(product);
}
