import { type Affine, led } from "./affine.ts";
import { type Level, valueAt } from "./greyPyramid.ts";
import { phaseCorrelation } from "./phaseCorrelation.ts";

/** How well one picture laid over another agrees with it in its details. */
export interface Likeness {
  /** Share of the details of one that the other does not explain: 0 for twins, 1 for strangers. */
  readonly residual: number;
  /** How far the phase correlation where they now lie stands above every other place; at most 1 where another is as high. */
  readonly peak: number;
}

/** Broad light and shade is alike in any two scenes under one sky: details are what is finer than this part of the picture. */
const DETAIL = 1 / 16;
/** Places so near belong to the peak itself. */
const NEAR_PX = 2;
/** Frequencies below this share of the mean count little. */
const FLOOR_SHARE = 0.05;
/** Twins have no second place at all. */
const MOST_PEAK = 1000;

/** Judges a placing by what it was not fitted by: details without their surround, and phases. The first has the tones of the second. */
export function likenessOf(first: Level, second: Level, transform: Affine): Likeness {
  const { widthPx, heightPx } = first;
  const laid = new Float32Array(widthPx * heightPx);
  const here = new Float32Array(widthPx * heightPx);
  for (let y = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++) {
      const at = y * widthPx + x;
      const value = valueAt(second, ...led(transform, x + 0.5, y + 0.5));
      laid[at] = value;
      here[at] = Number.isNaN(value) ? Number.NaN : (first.values[at] as number);
    }
  }
  const a = detailsOf(here, widthPx, heightPx);
  const b = detailsOf(laid, widthPx, heightPx);
  let [aa, bb, ab] = [0, 0, 0];
  for (let i = 0; i < a.length; i++) {
    const [p, q] = [a[i] as number, b[i] as number];
    aa += p * p;
    bb += q * q;
    ab += p * q;
  }
  const correlation = aa > 0 && bb > 0 ? Math.max(0, ab / Math.sqrt(aa * bb)) : 0;
  return {
    residual: Math.sqrt(Math.max(0, 1 - correlation ** 2)),
    peak: peakOf(a, b, widthPx, heightPx),
  };
}

/** What a picture holds beside its own surround; 0 where there is no picture. */
function detailsOf(values: Float32Array, widthPx: number, heightPx: number): Float32Array {
  const reach = Math.max(3, Math.round((Math.max(widthPx, heightPx) * DETAIL) / 2));
  const wide = widthPx + 1;
  const sums = new Float64Array(wide * (heightPx + 1));
  const counts = new Float64Array(sums.length);
  for (let y = 0; y < heightPx; y++) {
    let [sum, count] = [0, 0];
    for (let x = 0; x < widthPx; x++) {
      const value = values[y * widthPx + x] as number;
      if (!Number.isNaN(value)) {
        sum += value;
        count++;
      }
      const at = (y + 1) * wide + x + 1;
      sums[at] = (sums[at - wide] as number) + sum;
      counts[at] = (counts[at - wide] as number) + count;
    }
  }
  const out = new Float32Array(values.length);
  for (let y = 0; y < heightPx; y++) {
    const [top, bottom] = [Math.max(0, y - reach) * wide, Math.min(heightPx, y + reach + 1) * wide];
    for (let x = 0; x < widthPx; x++) {
      const value = values[y * widthPx + x] as number;
      if (Number.isNaN(value)) continue;
      const [from, to] = [Math.max(0, x - reach), Math.min(widthPx, x + reach + 1)];
      const within = (list: Float64Array) =>
        (list[bottom + to] as number) -
        (list[bottom + from] as number) -
        (list[top + to] as number) +
        (list[top + from] as number);
      out[y * widthPx + x] = value - within(sums) / within(counts);
    }
  }
  return out;
}

/** The middle of both, faded out, by phases: the height at no shift against the highest elsewhere. */
function peakOf(a: Float32Array, b: Float32Array, widthPx: number, heightPx: number): number {
  const side = 2 ** Math.floor(Math.log2(Math.min(widthPx, heightPx)));
  const [left, top] = [(widthPx - side) >> 1, (heightPx - side) >> 1];
  const fade = Float64Array.from({ length: side }, (_, i) => Math.sin((Math.PI * (i + 0.5)) / side) ** 2);
  const planeOf = (values: Float32Array) => {
    const re = new Float64Array(side * side);
    for (let r = 0; r < side; r++) {
      for (let c = 0; c < side; c++) {
        re[r * side + c] =
          (values[(top + r) * widthPx + left + c] as number) * (fade[r] as number) * (fade[c] as number);
      }
    }
    return { rows: side, columns: side, re, im: new Float64Array(side * side) };
  };
  const { data } = phaseCorrelation(planeOf(a), planeOf(b), FLOOR_SHARE);
  let [near, far] = [0, 0];
  for (let r = 0; r < side; r++) {
    const down = Math.min(r, side - r);
    for (let c = 0; c < side; c++) {
      const value = data[r * side + c] as number;
      if (down <= NEAR_PX && Math.min(c, side - c) <= NEAR_PX) near = Math.max(near, value);
      else far = Math.max(far, value);
    }
  }
  return near > 0 ? near / Math.max(far, near / MOST_PEAK) : 0;
}
