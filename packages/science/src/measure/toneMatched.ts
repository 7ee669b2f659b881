import type { Affine } from "./affine.ts";
import type { Level } from "./greyPyramid.ts";

export interface ToneMatched {
  /** The first picture, its tones as the second shows them where both lie over one another. */
  readonly picture: Level;
  /** Lighter in the first is darker in the second. */
  readonly negative: boolean;
}

const BINS = 512;
/** A tone that fewer pixels have is pooled with its neighbours. */
const LEAST_SHARE = 0.005;

/** Gives the first picture the tones of the second: the mean of the second over each tone of the first, straight between. */
export function toneMatched(
  first: Level,
  second: Level,
  { xx, xy, x0, yx, yy, y0 }: Affine,
  stride: number,
): ToneMatched {
  const [least, most] = rangeOf(first.values);
  const perBin = (most - least) / BINS || 1;
  const [counts, here, there] = [new Float64Array(BINS), new Float64Array(BINS), new Float64Array(BINS)];
  let total = 0;
  for (let row = 0; row < first.heightPx; row += stride) {
    for (let column = 0; column < first.widthPx; column += stride) {
      // The nearest pixel does: only the mean of many is asked.
      const ix = Math.floor(xx * (column + 0.5) + xy * (row + 0.5) + x0);
      const iy = Math.floor(yx * (column + 0.5) + yy * (row + 0.5) + y0);
      if (ix < 0 || iy < 0 || ix >= second.widthPx || iy >= second.heightPx) continue;
      const value = first.values[row * first.widthPx + column] as number;
      const bin = Math.min(BINS - 1, Math.floor((value - least) / perBin));
      counts[bin] = (counts[bin] as number) + 1;
      here[bin] = (here[bin] as number) + value;
      there[bin] = (there[bin] as number) + (second.values[iy * second.widthPx + ix] as number);
      total++;
    }
  }
  const nodes: { x: number; y: number; count: number }[] = [];
  let [count, sumX, sumY] = [0, 0, 0];
  for (let bin = 0; bin < BINS; bin++) {
    count += counts[bin] as number;
    sumX += here[bin] as number;
    sumY += there[bin] as number;
    if (count === 0 || count < LEAST_SHARE * total) continue;
    nodes.push({ x: sumX / count, y: sumY / count, count });
    [count, sumX, sumY] = [0, 0, 0];
  }
  if (nodes.length < 2) return { picture: first, negative: false };
  const table = tableOf(nodes, least, perBin);
  const values = new Float32Array(first.values.length);
  for (let i = 0; i < values.length; i++) {
    const at = ((first.values[i] as number) - least) / perBin;
    const bin = Math.min(BINS - 1, Math.floor(at));
    const from = table[bin] as number;
    values[i] = from + ((table[bin + 1] as number) - from) * (at - bin);
  }
  return { picture: { ...first, values }, negative: slopeOf(nodes) < 0 };
}

function rangeOf(values: Float32Array): [number, number] {
  let [least, most] = [Infinity, -Infinity];
  for (let i = 0; i < values.length; i++) {
    const value = values[i] as number;
    if (value < least) least = value;
    if (value > most) most = value;
  }
  return [least, most];
}

type Node = Readonly<Record<"x" | "y" | "count", number>>;

/** The curve at the edges of all bins, level beyond its ends. */
function tableOf(nodes: readonly Node[], least: number, perBin: number): Float64Array {
  const table = new Float64Array(BINS + 1);
  let k = 0;
  for (let bin = 0; bin <= BINS; bin++) {
    const x = least + bin * perBin;
    while (k < nodes.length - 2 && (nodes[k + 1] as Node).x < x) k++;
    const [from, to] = [nodes[k] as Node, nodes[k + 1] as Node];
    const share = Math.max(0, Math.min(1, (x - from.x) / Math.max(to.x - from.x, 1e-12)));
    table[bin] = from.y + (to.y - from.y) * share;
  }
  return table;
}

/** Which way the curve runs on the whole: only its sign is asked. */
function slopeOf(nodes: readonly Node[]): number {
  const total = nodes.reduce((sum, { count }) => sum + count, 0);
  const meanX = nodes.reduce((sum, { x, count }) => sum + x * count, 0) / total;
  return nodes.reduce((sum, { x, y, count }) => sum + (x - meanX) * y * count, 0);
}
