export interface Nodes {
  readonly at: Float64Array;
  readonly weight: Float64Array;
}

/**
 * Places and weights that integrate over 0 … 1 exactly, as far as polynomials of degree 2 count − 1 go.
 *
 * The places are the zeros of the Legendre polynomial, found by Newton's method from their known neighbourhood.
 */
export function gaussLegendre(count: number): Nodes {
  const at = new Float64Array(count);
  const weight = new Float64Array(count);
  for (let index = 0; index < count; index += 1) {
    let x = Math.cos((Math.PI * (index + 0.75)) / (count + 0.5));
    let slope = 1;
    // Quadratic convergence from a start this near: five steps reach the last digit.
    for (let step = 0; step < 6; step += 1) {
      let [before, value] = [1, x];
      for (let degree = 2; degree <= count; degree += 1) {
        [before, value] = [value, ((2 * degree - 1) * x * value - (degree - 1) * before) / degree];
      }
      slope = (count * (x * value - before)) / (x * x - 1);
      x -= value / slope;
    }
    at[index] = (1 - x) / 2;
    weight[index] = 1 / ((1 - x * x) * slope * slope);
  }
  return { at, weight };
}
