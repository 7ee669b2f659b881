import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requireNotNegative } from "../errors/require.ts";

export interface TrimmedMeanInput {
  readonly values: readonly number[];
  /** Share left out at each end. */
  readonly share: number;
}

export interface TrimmedMean {
  readonly mean: number;
  readonly standardError: number;
}

/**
 * The mean of a patch without its darkest and lightest pixels: dust and scratches stay out.
 *
 * Formula  mean of the middle n − 2g values, g = ⌊share · n⌋; SE = s_w / ((1 − 2g/n) √n), s_w the standard deviation after the g
 *          outermost at each end took the value of their nearest left in.
 * Units    those of the values.
 * Holds    for values of one tone, dust on fewer than `share` of them at each end.
 * Error    its own standard error, for values independent of one another.
 *
 * @throws {OutOfDomain} tooFew, outOfRange, negative, notFinite
 * @source tukey-mclaughlin-1963: trimmed mean with winsorised variance (from memory, peer scipy.stats)
 * @example trimmedMean({ values: [0.5, 0.51, 0.49, 0.52, 0.48, 0.5, 0.51, 0.95, 0.49, 0.02], share: 0.1 }) // {"mean": 0.5, "standardError": 0.0058925565}
 */
export function trimmedMean({ values, share }: TrimmedMeanInput): TrimmedMean {
  requireNotNegative({ share });
  if (share >= 0.5) throw new OutOfDomain("outOfRange", { share, least: 0, below: 0.5 });
  for (const value of values) requireFinite({ values: value });
  const n = values.length;
  // 0.29 · 100 is 28.999… to a machine.
  const cut = Math.floor(share * n + 1e-9);
  if (n - 2 * cut < 2) throw new OutOfDomain("tooFew", { values: n, least: 2 * cut + 2 });
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.slice(cut, n - cut);
  const mean = middle.reduce((sum, value) => sum + value, 0) / middle.length;
  const [low = 0] = middle;
  const high = middle.at(-1) ?? 0;
  const drawn = sorted.map((value) => Math.min(high, Math.max(low, value)));
  const drawnMean = drawn.reduce((sum, value) => sum + value, 0) / n;
  const variance = drawn.reduce((sum, value) => sum + (value - drawnMean) ** 2, 0) / (n - 1);
  return { mean, standardError: Math.sqrt(variance) / ((1 - (2 * cut) / n) * Math.sqrt(n)) };
}
