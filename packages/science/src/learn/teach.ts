import { choleskyFlat } from "../numbers/choleskyFlat.ts";
import { nu } from "./campaign.ts";
import { curveCount } from "./layPatches.ts";
import type { Learnt } from "./learn.ts";
import type { PrintRows } from "./printRows.ts";
import { patchSd } from "./readCampaign.ts";

/** What a sheet that has not been made would teach. */
export interface Taught {
  readonly bits: number;
  /** Of the thirteen parameters, after it. */
  readonly covariance: Float64Array;
}

// Student-t scatter tells as much as normal scatter that is wider by this.
const WIDER = (nu + 3) / (nu + 1);

/**
 * What the prints of a new sheet would leave of the doubt: V = diag((se² + σ_m² s_y²)(ν+3)/(ν+1)) + σ_t² j jᵀ, its own unknown
 * offset counted in; bits = ½ log2(det(V + J Σ Jᵀ) / det V), Σ' = Σ − Σ Jᵀ (V + J Σ Jᵀ)⁻¹ J Σ. Inner helper.
 */
export function teach(
  covariance: Float64Array,
  { rows, byStop }: PrintRows,
  noise: { readonly newSd: number; readonly scatterScale: number; readonly timeStops: number },
): Taught {
  const count = byStop.length;
  const variance = WIDER * (noise.newSd ** 2 + (patchSd * noise.scatterScale) ** 2);
  const time = noise.timeStops ** 2;
  // K = J Σ, patch by patch.
  const moved = new Float64Array(count * curveCount);
  for (let patch = 0; patch < count; patch += 1) {
    for (let one = 0; one < curveCount; one += 1) {
      let sum = 0;
      for (let other = 0; other < curveCount; other += 1) {
        sum += (rows[patch * curveCount + other] ?? 0) * (covariance[other * curveCount + one] ?? 0);
      }
      moved[patch * curveCount + one] = sum;
    }
  }
  const whole = new Float64Array(count * count);
  let slopes = 0;
  for (let patch = 0; patch < count; patch += 1) {
    slopes += (byStop[patch] ?? 0) ** 2;
    for (let other = 0; other <= patch; other += 1) {
      let sum = time * (byStop[patch] ?? 0) * (byStop[other] ?? 0) + (patch === other ? variance : 0);
      for (let one = 0; one < curveCount; one += 1) {
        sum += (moved[patch * curveCount + one] ?? 0) * (rows[other * curveCount + one] ?? 0);
      }
      whole[patch * count + other] = sum;
    }
  }
  choleskyFlat(whole, count);
  let logWhole = 0;
  for (let patch = 0; patch < count; patch += 1) logWhole += 2 * Math.log(whole[patch * count + patch] ?? 1);
  const logNoise = count * Math.log(variance) + Math.log1p((time * slopes) / variance);
  // L⁻¹ K, in place of K.
  for (let patch = 0; patch < count; patch += 1) {
    for (let one = 0; one < curveCount; one += 1) {
      let sum = moved[patch * curveCount + one] ?? 0;
      for (let other = 0; other < patch; other += 1) {
        sum -= (whole[patch * count + other] ?? 0) * (moved[other * curveCount + one] ?? 0);
      }
      moved[patch * curveCount + one] = sum / (whole[patch * count + patch] ?? 1);
    }
  }
  const after = Float64Array.from(covariance);
  for (let patch = 0; patch < count; patch += 1) {
    for (let one = 0; one < curveCount; one += 1) {
      for (let other = 0; other < curveCount; other += 1) {
        const at = one * curveCount + other;
        after[at] =
          (after[at] ?? 0) - (moved[patch * curveCount + one] ?? 0) * (moved[patch * curveCount + other] ?? 0);
      }
    }
  }
  return { bits: Math.max(0, (logWhole - logNoise) / (2 * Math.LN2)), covariance: after };
}

/** The scatter that new sheets of a campaign are expected to have. */
export function noiseOf({ scatterScale }: Learnt, newSd: number, timeStops: number): Parameters<typeof teach>[2] {
  return { newSd, scatterScale, timeStops };
}
