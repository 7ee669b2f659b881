import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireInteger, requirePositive } from "../errors/require.ts";

export interface AreaLightInput {
  /** Codes of the area, row by row, `samples` a pixel: one (grey) or three (red, green, blue). */
  readonly data: ArrayLike<number>;
  readonly samples: 1 | 3;
  readonly widthPx: number;
  readonly heightPx: number;
  /** Of a coloured scan: its green alone, or what the eye makes of the three. */
  readonly channel: "green" | "luminance";
  /** The light each code stands for. */
  readonly table: ArrayLike<number>;
  /** Side of the blocks whose means tell how even the area is. */
  readonly blockPx: number;
  /** Share of the pixels left out at each end: dust and scratches. */
  readonly trim: number;
}

export interface AreaLight {
  /** Trimmed mean. */
  readonly light: number;
  /** Mean of all of it, and median: where they part, there is dust. */
  readonly mean: number;
  readonly median: number;
  /** Standard error of the mean, from the means of the blocks; 0 with fewer than two. */
  readonly standardError: number;
  readonly blocks: number;
  /** Share of the pixels at the lowest or the highest code. */
  readonly clippedShare: number;
}

/**
 * How light an area of a scan is, and how surely.
 *
 * Method   each pixel to linear light; mean of the middle values; standard error from the means of whole blocks, which holds
 *          grain, likeness of neighbours and unevenness together.
 * Units    linear light as a share of the highest code's.
 * Holds    for an area meant to be of one tone.
 * Error    its standard error; a slope of tone across the area is in it.
 *
 * @throws {OutOfDomain} tooFew, notPositive, wrongType, outOfRange
 * @source rec-709: weights of luminance (from memory); none: means of blocks (common practice)
 * @example areaLight({ data: [1, 1, 1, 1], samples: 1, widthPx: 2, heightPx: 2, channel: "green", table: [0, 0.25, 1], blockPx: 1, trim: 0 }) // {"light": 0.25, "mean": 0.25, "median": 0.25, "standardError": 0, "blocks": 4, "clippedShare": 0}
 */
export function areaLight(input: AreaLightInput): AreaLight {
  const { data, samples, widthPx, heightPx, table, blockPx, trim } = input;
  requireInteger({ widthPx, heightPx, blockPx });
  requirePositive({ widthPx, heightPx, blockPx });
  if (!(trim >= 0 && trim < 0.5)) throw new OutOfDomain("outOfRange", { trim, least: 0, below: 0.5 });
  const count = widthPx * heightPx;
  if (data.length !== count * samples)
    throw new OutOfDomain("listsDiffer", { data: data.length, pixels: count * samples });
  const highest = table.length - 1;
  const lights = new Float64Array(count);
  let clipped = 0;
  let sum = 0;
  for (let i = 0; i < count; i++) {
    const at = i * samples;
    const green = (samples === 1 ? data[at] : data[at + 1]) ?? 0;
    const light =
      samples === 1 || input.channel === "green"
        ? (table[green] ?? 0)
        : 0.2126 * (table[data[at] ?? 0] ?? 0) +
          0.7152 * (table[green] ?? 0) +
          0.0722 * (table[data[at + 2] ?? 0] ?? 0);
    if (green <= 0 || green >= highest) clipped++;
    lights[i] = light;
    sum += light;
  }
  const blockMeans = meansOfBlocks(lights, widthPx, heightPx, blockPx);
  const sorted = lights.slice().sort();
  const cut = Math.floor(trim * count + 1e-9);
  let middle = 0;
  for (let i = cut; i < count - cut; i++) middle += sorted[i] ?? 0;
  return {
    light: middle / (count - 2 * cut),
    mean: sum / count,
    median: ((sorted[(count - 1) >> 1] ?? 0) + (sorted[count >> 1] ?? 0)) / 2,
    standardError: standardErrorOf(blockMeans),
    blocks: blockMeans.length,
    clippedShare: clipped / count,
  };
}

function meansOfBlocks(lights: Float64Array, widthPx: number, heightPx: number, blockPx: number): number[] {
  const means: number[] = [];
  for (let y = 0; y + blockPx <= heightPx; y += blockPx) {
    for (let x = 0; x + blockPx <= widthPx; x += blockPx) {
      let sum = 0;
      for (let r = 0; r < blockPx; r++) {
        for (let c = 0; c < blockPx; c++) sum += lights[(y + r) * widthPx + x + c] ?? 0;
      }
      means.push(sum / (blockPx * blockPx));
    }
  }
  return means;
}

function standardErrorOf(means: readonly number[]): number {
  const n = means.length;
  if (n < 2) return 0;
  const mean = means.reduce((sum, value) => sum + value, 0) / n;
  const variance = means.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (n - 1);
  return Math.sqrt(variance / n);
}
