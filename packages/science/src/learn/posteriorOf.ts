import { choleskyFlat, inverseFlat } from "../numbers/choleskyFlat.ts";
import { type Campaign, nu } from "./campaign.ts";
import { curveCount } from "./layPatches.ts";
import type { Optimum } from "./optimum.ts";

/** How sure an optimum is. */
export interface Posterior {
  /** Thirteen parameters, then the sheets; row by row. */
  readonly covariance: Float64Array;
  readonly size: number;
  /** Of each patch, in its own deviations. */
  readonly residual: Float64Array;
  /** Student-t weight of each patch. */
  readonly weight: Float64Array;
  /** How far each patch decides its own value. */
  readonly leverage: Float64Array;
  readonly effectiveParameters: number;
}

/**
 * Covariance from the Fisher information of Student's t, switched off for outliers; the sheets' offsets are taken out first, which
 * leaves one matrix of thirteen to invert.
 */
export function posteriorOf({ laid, density, sigma, sd }: Campaign, { printed }: Optimum): Posterior {
  const size = sd.length;
  const { count, sheets } = laid;
  const residual = new Float64Array(count);
  const weight = new Float64Array(count);
  const information = new Float64Array(count);
  const matrix = new Float64Array(curveCount * curveCount);
  const cross = new Float64Array(sheets * curveCount);
  const own = Float64Array.from({ length: sheets }, (_, sheet) => 1 / (sd[curveCount + sheet] ?? 1) ** 2);
  for (let one = 0; one < curveCount; one += 1) matrix[one * curveCount + one] = 1 / (sd[one] ?? 1) ** 2;
  for (let patch = 0; patch < count; patch += 1) {
    const off = ((density[patch] ?? 0) - (printed.density[patch] ?? 0)) / (sigma[patch] ?? 1);
    residual[patch] = off;
    weight[patch] = (nu + 1) / (nu + off * off);
    const known = (((nu + 1) / (nu + 3)) * Math.min(1, weight[patch] ?? 1)) / (sigma[patch] ?? 1) ** 2;
    information[patch] = known;
    const row = patch * curveCount;
    const sheet = laid.sheet[patch] ?? 0;
    const slope = printed.byStop[patch] ?? 0;
    for (let one = 0; one < curveCount; one += 1) {
      const left = known * (printed.rows[row + one] ?? 0);
      for (let other = 0; other <= one; other += 1) {
        add(matrix, one * curveCount + other, left * (printed.rows[row + other] ?? 0));
      }
      add(cross, sheet * curveCount + one, left * slope);
    }
    add(own, sheet, known * slope * slope);
  }
  for (let sheet = 0; sheet < sheets; sheet += 1) {
    const start = sheet * curveCount;
    for (let one = 0; one < curveCount; one += 1) {
      const left = (cross[start + one] ?? 0) / (own[sheet] ?? 1);
      for (let other = 0; other <= one; other += 1) {
        add(matrix, one * curveCount + other, -left * (cross[start + other] ?? 0));
      }
    }
  }
  // Positive definite: the prior's information is in it, and what the offsets take is never all of a patch's own.
  choleskyFlat(matrix, curveCount);
  const ofCurve = inverseFlat(matrix, curveCount);
  const covariance = new Float64Array(size * size);
  // What each sheet's offset moves with: Σ_θδ = −Σ_θθ B D⁻¹, Σ_δδ = D⁻¹ + D⁻¹ Bᵀ Σ_θθ B D⁻¹.
  const moved = new Float64Array(sheets * curveCount);
  for (let sheet = 0; sheet < sheets; sheet += 1) {
    for (let one = 0; one < curveCount; one += 1) {
      let sum = 0;
      for (let other = 0; other < curveCount; other += 1) {
        sum += (ofCurve[one * curveCount + other] ?? 0) * (cross[sheet * curveCount + other] ?? 0);
      }
      moved[sheet * curveCount + one] = sum / (own[sheet] ?? 1);
    }
  }
  for (let one = 0; one < curveCount; one += 1) {
    for (let other = 0; other < curveCount; other += 1) {
      covariance[one * size + other] = ofCurve[one * curveCount + other] ?? 0;
    }
    for (let sheet = 0; sheet < sheets; sheet += 1) {
      const value = 0 - (moved[sheet * curveCount + one] ?? 0);
      covariance[one * size + curveCount + sheet] = value;
      covariance[(curveCount + sheet) * size + one] = value;
    }
  }
  for (let first = 0; first < sheets; first += 1) {
    for (let second = 0; second <= first; second += 1) {
      let sum = 0;
      for (let one = 0; one < curveCount; one += 1) {
        sum += (cross[first * curveCount + one] ?? 0) * (moved[second * curveCount + one] ?? 0);
      }
      const value = sum / (own[first] ?? 1) + (first === second ? 1 / (own[first] ?? 1) : 0);
      covariance[(curveCount + first) * size + curveCount + second] = value;
      covariance[(curveCount + second) * size + curveCount + first] = value;
    }
  }
  const leverage = new Float64Array(count);
  let effectiveParameters = 0;
  const row = new Float64Array(size);
  for (let patch = 0; patch < count; patch += 1) {
    row.fill(0);
    row.set(printed.rows.subarray(patch * curveCount, (patch + 1) * curveCount));
    row[curveCount + (laid.sheet[patch] ?? 0)] = printed.byStop[patch] ?? 0;
    const share = (information[patch] ?? 0) * spreadOf(row, covariance, curveCount + (laid.sheet[patch] ?? 0), size);
    leverage[patch] = share;
    effectiveParameters += share;
  }
  return { covariance, size, residual, weight, leverage, effectiveParameters };
}

function add(list: Float64Array, at: number, value: number): void {
  list[at] = (list[at] ?? 0) + value;
}

/** r Σ rᵀ of a row whose only entry beyond the thirteen is at `sheet`. */
function spreadOf(row: Float64Array, covariance: Float64Array, sheet: number, size: number): number {
  const slope = row[sheet] ?? 0;
  let sum = slope * slope * (covariance[sheet * size + sheet] ?? 0);
  for (let one = 0; one < curveCount; one += 1) {
    const left = row[one] ?? 0;
    if (left === 0) continue;
    let line = 2 * slope * (covariance[one * size + sheet] ?? 0);
    for (let other = 0; other < curveCount; other += 1)
      line += (covariance[one * size + other] ?? 0) * (row[other] ?? 0);
    sum += left * line;
  }
  return sum;
}
