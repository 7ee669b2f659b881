import { type CurveName, curveFrom, curveNames, curvePriors, fromScale, type WholeCurve } from "../tone/curve.ts";
import { curveCount } from "./layPatches.ts";
import type { Learnt } from "./learn.ts";

/** The curve of an optimum in natural units. Inner helper. */
export function fittedCurve(z: Float64Array): WholeCurve {
  return curveFrom((name, index) => naturalOf(name, z[index] ?? 0));
}

/** One parameter from its scale of learning; a share far out is still one. */
export function naturalOf(name: CurveName, value: number): number {
  return fromScale(value, curvePriors[name].scale);
}

/** Of the parameters only, row by row. */
export function curveCovariance({ posterior: { covariance, size } }: Learnt): Float64Array {
  const part = new Float64Array(curveCount * curveCount);
  for (let row = 0; row < curveCount; row += 1) {
    part.set(covariance.subarray(row * size, row * size + curveCount), row * curveCount);
  }
  return part;
}

/** u Σ vᵀ of two rows of slopes by the parameters. */
export function spread(covariance: Float64Array, left: ArrayLike<number>, right: ArrayLike<number> = left): number {
  let sum = 0;
  for (let row = 0; row < curveNames.length; row += 1) {
    const by = left[row] ?? 0;
    if (by === 0) continue;
    let line = 0;
    for (let column = 0; column < curveCount; column += 1) {
      line += (covariance[row * curveCount + column] ?? 0) * (right[column] ?? 0);
    }
    sum += by * line;
  }
  return sum;
}
