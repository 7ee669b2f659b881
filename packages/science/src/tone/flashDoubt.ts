import { curveFrom, curveNames, curvePriors, fromScale, toScale, type WholeCurve } from "./curve.ts";
import type { ExpectBasis } from "./expectBasis.ts";

const STEP = 1e-4;

/** What the doubt of a paper makes of a logarithm worked from its curve: √(j Σ jᵀ), slopes by central differences. Inner helper. */
export function flashDoubt(
  lnOf: (curve: WholeCurve) => number,
  { curve, covariance }: Pick<ExpectBasis, "curve" | "covariance">,
): number {
  const slopes = curveNames.map((moved) => {
    const { scale } = curvePriors[moved];
    const at = (by: number) =>
      lnOf(curveFrom((name) => (name === moved ? fromScale(toScale(curve[name], scale) + by, scale) : curve[name])));
    return (at(STEP) - at(-STEP)) / (2 * STEP);
  });
  let variance = 0;
  for (const [row, slope] of slopes.entries()) {
    for (const [column, other] of slopes.entries()) variance += slope * (covariance[row]?.[column] ?? 0) * other;
  }
  return Math.sqrt(Math.max(0, variance));
}
