import { choleskyFlat, inverseFlat, solveFlat } from "../numbers/choleskyFlat.ts";
import type { Affine } from "./affine.ts";
import type { Level } from "./greyPyramid.ts";

export interface FineFit {
  readonly transform: Affine;
  /** Of the two pictures where they lie over one another, −1 to 1. */
  readonly correlation: number;
  /** Share of the first picture that lies on the second. */
  readonly overlap: number;
  /** Standard deviation of the place of the worst corner, in pixels of this level. */
  readonly cornerErrorPx: number;
}

export interface FineFitInput {
  readonly first: Level;
  readonly second: Level;
  readonly start: Affine;
  /** Every so manieth pixel and row is looked at. */
  readonly stride: number;
  /** The fit ends when no corner moves by more. */
  readonly stopPx: number;
  readonly mostRounds: number;
}

const NUMBERS = 8;
const LEAST_OVERLAP = 0.25;
/** Differences of so many deviations count half: dust, a finger's width of other framing, a burnt-in corner. */
const HALF_AT = 1.5;
/**
 * What blocks say of their scatter is short of what painted prints of known place show, where soft edges under another tone
 * curve pull alike; so it is taken so many times, and never as less than the least.
 */
const DOUBT = 3;
const LEAST_DOUBT_PX = 0.02;
/** The picture is cut into so many blocks each way: what is left over in one block is taken as one chance. */
const BLOCKS = 8;

/** Six affine numbers, gain and offset by Gauss–Newton rounds; undefined where they run away. */
export function fineFit({ first, second, start, stride, stopPx, mostRounds }: FineFitInput): FineFit | undefined {
  const [a, b] = [softened(first), softened(second)];
  const looked = Math.ceil(first.widthPx / stride) * Math.ceil(first.heightPx / stride);
  const length = Math.hypot(first.widthPx, first.heightPx) / 2;
  let transform = start;
  let model: Model = { gain: 0, offset: 0, scatter: Number.POSITIVE_INFINITY };
  for (let round = 0; ; round++) {
    const sums = roundOf({ a, b, transform, model, stride, length });
    if (sums.count < LEAST_OVERLAP * looked) return undefined;
    const answer = Float64Array.from(sums.right);
    if (!choleskyFlat(sums.matrix, NUMBERS)) return undefined;
    solveFlat(sums.matrix, NUMBERS, answer);
    const [d0 = 0, d1 = 0, d2 = 0, d3 = 0, d4 = 0, d5 = 0, gain = 0, offset = 0] = answer;
    const moved = Math.max(Math.abs(d0) + Math.abs(d1) + Math.abs(d2), Math.abs(d3) + Math.abs(d4) + Math.abs(d5));
    if (!(moved < length)) return undefined;
    // Until the scatter is known nothing is weighed, so one round at least is taken twice.
    if ((moved < stopPx && round > 1) || round >= mostRounds) {
      return {
        transform,
        correlation: sums.correlation,
        overlap: sums.count / looked,
        cornerErrorPx: cornerError(sums),
      };
    }
    const [cx, cy] = [first.widthPx / 2, first.heightPx / 2];
    transform = {
      xx: transform.xx + d0 / length,
      xy: transform.xy + d1 / length,
      x0: transform.x0 + d2 - (d0 * cx + d1 * cy) / length,
      yx: transform.yx + d3 / length,
      yy: transform.yy + d4 / length,
      y0: transform.y0 + d5 - (d3 * cx + d4 * cy) / length,
    };
    model = { gain, offset, scatter: sums.scatter };
  }
}

interface Model {
  readonly gain: number;
  readonly offset: number;
  /** Mean square of what is left over. */
  readonly scatter: number;
}

interface RoundInput {
  readonly a: Level;
  readonly b: Level;
  readonly transform: Affine;
  readonly model: Model;
  readonly stride: number;
  readonly length: number;
}

interface Sums {
  /** Lower triangle of the normal equations of this round, and their right side. */
  readonly matrix: Float64Array;
  readonly right: Float64Array;
  /** What each block pulls at each number. */
  readonly pulls: readonly Float64Array[];
  readonly scatter: number;
  readonly correlation: number;
  readonly count: number;
  /** The corners, in half diagonals from the middle. */
  readonly corner: readonly [number, number];
}

function roundOf({ a, b, transform, model, stride, length }: RoundInput): Sums {
  const { xx, xy, x0, yx, yy, y0 } = transform;
  const { gain, offset, scatter } = model;
  const weighs = Number.isFinite(scatter);
  const half = 1 / (HALF_AT * HALF_AT * scatter + 1e-12);
  const matrix = new Float64Array(NUMBERS * NUMBERS);
  const right = new Float64Array(NUMBERS);
  const slopes = new Float64Array(NUMBERS);
  const pulls = Array.from({ length: BLOCKS * BLOCKS }, () => new Float64Array(NUMBERS));
  const [w, h, values] = [b.widthPx, b.heightPx, b.values];
  let [count, weights, left, s1, s2, s11, s22, s12] = [0, 0, 0, 0, 0, 0, 0, 0];
  for (let row = stride >> 1; row < a.heightPx; row += stride) {
    const y = row + 0.5;
    const v = (y - a.heightPx / 2) / length;
    const blockRow = Math.floor((row * BLOCKS) / a.heightPx) * BLOCKS;
    for (let column = stride >> 1; column < a.widthPx; column += stride) {
      const x = column + 0.5;
      const px = xx * x + xy * y + x0 - 0.5;
      const py = yx * x + yy * y + y0 - 0.5;
      const ix = Math.floor(px);
      const iy = Math.floor(py);
      if (ix < 0 || iy < 0 || ix >= w - 1 || iy >= h - 1) continue;
      const fx = px - ix;
      const fy = py - iy;
      const at = iy * w + ix;
      const v00 = values[at] as number;
      const v10 = values[at + 1] as number;
      const v01 = values[at + w] as number;
      const v11 = values[at + w + 1] as number;
      const top = v00 + (v10 - v00) * fx;
      const bottom = v01 + (v11 - v01) * fx;
      const there = top + (bottom - top) * fy;
      const slopeX = (v10 - v00) * (1 - fy) + (v11 - v01) * fy;
      const slopeY = bottom - top;
      const here = a.values[row * a.widthPx + column] as number;
      const over = there - gain * here - offset;
      const weight = weighs ? 1 / (1 + over * over * half) : 1;
      const u = (x - a.widthPx / 2) / length;
      slopes[0] = slopeX * u;
      slopes[1] = slopeX * v;
      slopes[2] = slopeX;
      slopes[3] = slopeY * u;
      slopes[4] = slopeY * v;
      slopes[5] = slopeY;
      slopes[6] = -here;
      slopes[7] = -1;
      const pull = pulls[blockRow + Math.floor((column * BLOCKS) / a.widthPx)] as Float64Array;
      for (let j = 0; j < NUMBERS; j++) {
        const slope = weight * (slopes[j] as number);
        right[j] = (right[j] as number) - slope * there;
        pull[j] = (pull[j] as number) + slope * over;
        for (let k = 0, cell = j * NUMBERS; k <= j; k++, cell++) {
          matrix[cell] = (matrix[cell] as number) + slope * (slopes[k] as number);
        }
      }
      count++;
      weights += weight;
      left += weight * over * over;
      s1 += here;
      s2 += there;
      s11 += here * here;
      s22 += there * there;
      s12 += here * there;
    }
  }
  // The first round has no gain yet: what is left over then is the picture itself.
  const spread1 = s11 - (s1 * s1) / Math.max(count, 1);
  const spread2 = s22 - (s2 * s2) / Math.max(count, 1);
  const together = s12 - (s1 * s2) / Math.max(count, 1);
  const correlation = spread1 > 0 && spread2 > 0 ? together / Math.sqrt(spread1 * spread2) : 0;
  return {
    ...{ matrix, right, pulls, correlation, count },
    scatter: left / Math.max(weights, 1e-12),
    corner: [a.widthPx / 2 / length, a.heightPx / 2 / length],
  };
}

/** From the pulls of the blocks, which hold whatever neighbouring pixels have in common: H⁻¹ (Σ p pᵀ) H⁻¹ at the corners. */
function cornerError({ matrix, pulls, corner: [u, v] }: Sums): number {
  const inverse = inverseFlat(matrix, NUMBERS);
  let worst = 0;
  for (const [cu, cv] of [
    [u, v],
    [-u, v],
    [u, -v],
    [-u, -v],
  ] as const) {
    let square = 0;
    for (const pull of pulls) {
      const move = (n: number) => {
        let sum = 0;
        for (let k = 0; k < NUMBERS; k++) sum += (inverse[n * NUMBERS + k] as number) * (pull[k] as number);
        return sum;
      };
      square += (move(0) * cu + move(1) * cv + move(2)) ** 2 + (move(3) * cu + move(4) * cv + move(5)) ** 2;
    }
    worst = Math.max(worst, square);
  }
  return Math.hypot(DOUBT * Math.sqrt(worst), LEAST_DOUBT_PX);
}

/** Each pixel with its neighbours, 1 2 1 each way: grain between four pixels would else draw the fit to the halves. */
function softened({ widthPx, heightPx, values }: Level): Level {
  const across = new Float32Array(values.length);
  for (let y = 0; y < heightPx; y++) {
    const from = y * widthPx;
    const to = from + widthPx - 1;
    for (let i = from; i <= to; i++) {
      const [before, after] = [values[i > from ? i - 1 : i] as number, values[i < to ? i + 1 : i] as number];
      across[i] = (before + 2 * (values[i] as number) + after) / 4;
    }
  }
  const out = new Float32Array(values.length);
  for (let y = 0; y < heightPx; y++) {
    const [up, down] = [y > 0 ? -widthPx : 0, y < heightPx - 1 ? widthPx : 0];
    for (let i = y * widthPx; i < (y + 1) * widthPx; i++) {
      out[i] = ((across[i + up] as number) + 2 * (across[i] as number) + (across[i + down] as number)) / 4;
    }
  }
  return { widthPx, heightPx, values: out };
}
