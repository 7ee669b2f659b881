import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requireInteger, requirePositive } from "../errors/require.ts";

export interface StepStripInput {
  /** Means across the strip, one a pixel along it: codes, reflectances or densities. */
  readonly profile: readonly number[];
  /** How many steps there are. */
  readonly count: number;
  readonly minWidthPx: number;
}

export interface StepStrip {
  readonly startPx: number;
  readonly widthPx: number;
  /** Of the middle three fifths of each step. */
  readonly means: readonly number[];
}

/** The middle of a step: steps made by cap or card have soft edges. */
const MIDDLE = 0.6;
/** What the rest of a step counts, so that edges are still found where middles agree. */
const REST = 0.05;

/**
 * Where the steps of a strip lie, their number known.
 *
 * Method   of every start and width, the one whose steps differ most between and least within, by the middle three fifths of
 *          each, times the share of the strip they cover.
 * Units    pixels along the profile; means in its own unit.
 * Holds    steps of one width, side by side.
 * Error    a pixel at each edge where the steps are sharp; with soft ones a fifth of a step.
 *
 * @throws {OutOfDomain} tooFew, notPositive, wrongType, notFinite
 * @source none: analysis of variance over all places, chosen here
 * @example stepStrip({ profile: [9, 1, 1, 1, 1, 3, 3, 3, 3, 5, 5, 5, 5, 9], count: 3, minWidthPx: 3 }) // {"startPx": 1, "widthPx": 4, "means": [1, 3, 5]}
 */
export function stepStrip({ profile, count, minWidthPx }: StepStripInput): StepStrip {
  requireInteger({ count, minWidthPx });
  requirePositive({ count, minWidthPx });
  for (const value of profile) requireFinite({ profile: value });
  const n = profile.length;
  if (count < 2) throw new OutOfDomain("tooFew", { count, least: 2 });
  if (n < count * minWidthPx) throw new OutOfDomain("tooFew", { profile: n, least: count * minWidthPx });
  const sums = runningSums(profile);
  const squares = runningSums(profile.map((value) => value * value));
  const whole = spread(sums, squares, 0, n);
  let best = { score: -1, startPx: 0, widthPx: minWidthPx };
  for (let widthPx = minWidthPx; widthPx * count <= n; widthPx++) {
    for (let startPx = 0; startPx + widthPx * count <= n; startPx++) {
      const score =
        scoreOf(sums, squares, { startPx, widthPx, count, floor: whole * 1e-9 + 1e-300 }) * ((widthPx * count) / n);
      if (score > best.score) best = { score, startPx, widthPx };
    }
  }
  const { startPx, widthPx } = best;
  const means = Array.from({ length: count }, (_, k) => {
    const [from, to] = middleOf(startPx + k * widthPx, widthPx);
    return meanOf(sums, from, to);
  });
  return { startPx, widthPx, means };
}

function runningSums(values: readonly number[]): Float64Array {
  const sums = new Float64Array(values.length + 1);
  for (const [i, value] of values.entries()) sums[i + 1] = (sums[i] ?? 0) + value;
  return sums;
}

const meanOf = (sums: Float64Array, from: number, to: number) => ((sums[to] ?? 0) - (sums[from] ?? 0)) / (to - from);

/** Mean square about the mean, of a stretch. */
function spread(sums: Float64Array, squares: Float64Array, from: number, to: number): number {
  return Math.max(0, meanOf(squares, from, to) - meanOf(sums, from, to) ** 2);
}

function middleOf(from: number, widthPx: number): [number, number] {
  const margin = Math.floor((widthPx * (1 - MIDDLE)) / 2);
  return [from + margin, from + widthPx - margin];
}

function scoreOf(
  sums: Float64Array,
  squares: Float64Array,
  { startPx, widthPx, count, floor }: { startPx: number; widthPx: number; count: number; floor: number },
): number {
  let within = 0;
  let rest = 0;
  let total = 0;
  let total2 = 0;
  for (let k = 0; k < count; k++) {
    const at = startPx + k * widthPx;
    const [from, to] = middleOf(at, widthPx);
    const mean = meanOf(sums, from, to);
    within += spread(sums, squares, from, to);
    rest += spread(sums, squares, at, at + widthPx);
    total += mean;
    total2 += mean * mean;
  }
  const between = Math.max(0, total2 / count - (total / count) ** 2);
  return between / ((within + REST * rest) / count + floor);
}
