import { choleskyFlat, solveFlat } from "../numbers/choleskyFlat.ts";
import { type Campaign, nu } from "./campaign.ts";
import { curveCount } from "./layPatches.ts";
import { type PrintRows, printRows, roomFor } from "./printRows.ts";

/** The best parameters, the objective there, and the patches as they print. */
export interface Optimum {
  readonly z: Float64Array;
  readonly objective: number;
  readonly printed: PrintRows;
}

const MOST_STEPS = 400;
const LONGEST = 2;
const FIRST_DAMPING = 1e-3;
/** Steps below this many prior deviations are none. */
const STILL = 1e-8;
/** A first pass with nearly normal scatter leads safely into the neighbourhood. */
const [SAFE_NU, NEAR] = [30, 1e-2];

/** The plain optimum from what is believed before any print, by way of nearly normal scatter. */
export function optimumFromPrior(campaign: Campaign): Optimum {
  const near = optimumFrom(campaign, Float64Array.from(campaign.mean), SAFE_NU, NEAR);
  return optimumFrom(campaign, near.z);
}

/**
 * Levenberg and Marquardt's way to the least objective. Each sheet has one offset, and a patch sees only its own: these are taken
 * out of the normal equations one by one, which leaves thirteen unknowns however many sheets there are.
 */
export function optimumFrom(campaign: Campaign, start: Float64Array, degrees = nu, still = STILL): Optimum {
  const { laid, surface, mean, sd } = campaign;
  const size = mean.length;
  const sheets = laid.sheets;
  let z = start;
  let trial: Float64Array = new Float64Array(size);
  let printed = roomFor(laid.count);
  let tried = roomFor(laid.count);
  const normal = new Float64Array(curveCount * curveCount);
  const reduced = new Float64Array(curveCount * curveCount);
  const cross = new Float64Array(curveCount * sheets);
  const own = new Float64Array(sheets);
  const gradient = new Float64Array(size);
  const step = new Float64Array(size);
  const right = new Float64Array(curveCount);

  let objective = objectiveAt(z, printed);
  let damping = FIRST_DAMPING;
  gather();
  for (let count = 0; count < MOST_STEPS; count += 1) {
    const length = solved() ? stepLength() : Number.POSITIVE_INFINITY;
    if (length === Number.POSITIVE_INFINITY) {
      damping *= 4;
      continue;
    }
    const cut = length > LONGEST ? LONGEST / length : 1;
    for (let index = 0; index < size; index += 1) trial[index] = (z[index] ?? 0) + cut * (step[index] ?? 0);
    const next = objectiveAt(trial, tried);
    // Near the bottom rounding lifts what is no worse.
    if (next <= objective + 1e-14 * (1 + Math.abs(objective))) {
      [z, trial] = [trial, z === start ? new Float64Array(size) : z];
      [printed, tried] = [tried, printed];
      objective = next;
      damping /= 10;
      if (length < still) break;
      gather();
    } else {
      if (length < still) break;
      damping *= 4;
    }
  }
  return { z, objective, printed };

  function objectiveAt(at: Float64Array, out: PrintRows): number {
    if (!printRows(laid, surface, at, out)) return Number.POSITIVE_INFINITY;
    return objectiveOf(campaign, at, out, degrees);
  }

  /** The normal equations at z. */
  function gather(): void {
    normal.fill(0);
    cross.fill(0);
    for (let index = 0; index < size; index += 1) {
      const precision = 1 / (sd[index] ?? 1) ** 2;
      gradient[index] = ((mean[index] ?? 0) - (z[index] ?? 0)) * precision;
      if (index < curveCount) normal[index * curveCount + index] = precision;
      else own[index - curveCount] = precision;
    }
    const { rows, byStop, density } = printed;
    for (let patch = 0; patch < laid.count; patch += 1) {
      const sigma = campaign.sigma[patch] ?? 1;
      const residual = ((campaign.density[patch] ?? 0) - (density[patch] ?? 0)) / sigma;
      const square = residual * residual;
      const weight = (degrees + 1) / (degrees + square);
      const bend = Math.max((weight * (degrees - square)) / (degrees + square), 0.1 * weight) / (sigma * sigma);
      const pull = (weight * residual) / sigma;
      const row = patch * curveCount;
      const sheet = laid.sheet[patch] ?? 0;
      const slope = byStop[patch] ?? 0;
      for (let one = 0; one < curveCount; one += 1) {
        const left = rows[row + one] ?? 0;
        if (left === 0) continue;
        const weighted = bend * left;
        gradient[one] = (gradient[one] ?? 0) + pull * left;
        const line = one * curveCount;
        for (let other = 0; other <= one; other += 1) {
          normal[line + other] = (normal[line + other] ?? 0) + weighted * (rows[row + other] ?? 0);
        }
        const at = sheet * curveCount + one;
        cross[at] = (cross[at] ?? 0) + weighted * slope;
      }
      gradient[curveCount + sheet] = (gradient[curveCount + sheet] ?? 0) + pull * slope;
      own[sheet] = (own[sheet] ?? 0) + bend * slope * slope;
    }
  }

  /** The damped step; false where the equations have none. */
  function solved(): boolean {
    reduced.set(normal);
    for (let one = 0; one < curveCount; one += 1) {
      const at = one * curveCount + one;
      reduced[at] = (reduced[at] ?? 0) * (1 + damping);
      right[one] = gradient[one] ?? 0;
    }
    for (let sheet = 0; sheet < sheets; sheet += 1) {
      const inverse = 1 / ((own[sheet] ?? 1) * (1 + damping));
      const start = sheet * curveCount;
      const pull = (gradient[curveCount + sheet] ?? 0) * inverse;
      for (let one = 0; one < curveCount; one += 1) {
        const left = cross[start + one] ?? 0;
        if (left === 0) continue;
        right[one] = (right[one] ?? 0) - left * pull;
        for (let other = 0; other <= one; other += 1) {
          const at = one * curveCount + other;
          reduced[at] = (reduced[at] ?? 0) - left * inverse * (cross[start + other] ?? 0);
        }
      }
    }
    if (!choleskyFlat(reduced, curveCount)) return false;
    solveFlat(reduced, curveCount, right);
    step.set(right);
    for (let sheet = 0; sheet < sheets; sheet += 1) {
      let sum = gradient[curveCount + sheet] ?? 0;
      for (let one = 0; one < curveCount; one += 1) sum -= (cross[sheet * curveCount + one] ?? 0) * (right[one] ?? 0);
      step[curveCount + sheet] = sum / ((own[sheet] ?? 1) * (1 + damping));
    }
    return true;
  }

  /** In prior deviations, the longest of its parts. */
  function stepLength(): number {
    let most = 0;
    for (let index = 0; index < size; index += 1) {
      const part = Math.abs(step[index] ?? 0) / (sd[index] ?? 1);
      if (!(part <= most)) most = Number.isFinite(part) ? part : Number.POSITIVE_INFINITY;
    }
    return most;
  }
}

/** What is made least: Student-t scatter of the patches, and how far the parameters and offsets are from what was believed. */
function objectiveOf(
  { laid, density, sigma, mean, sd }: Campaign,
  z: Float64Array,
  printed: PrintRows,
  degrees = nu,
): number {
  let misfit = 0;
  for (let patch = 0; patch < laid.count; patch += 1) {
    const residual = ((density[patch] ?? 0) - (printed.density[patch] ?? 0)) / (sigma[patch] ?? 1);
    misfit += Math.log1p((residual * residual) / degrees);
  }
  let surprise = 0;
  for (let index = 0; index < z.length; index += 1) {
    const off = ((z[index] ?? 0) - (mean[index] ?? 0)) / (sd[index] ?? 1);
    surprise += off * off;
  }
  return ((degrees + 1) / 2) * misfit + surprise / 2;
}
