import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requirePositive } from "../errors/require.ts";

export interface IsotonicInput {
  readonly values: readonly number[];
  /** One each; left out, all weigh the same. */
  readonly weights?: readonly number[];
}

/**
 * The rising list nearest to one that should rise and does not quite.
 *
 * Method   neighbours that fall are pooled to their weighted mean until none fall: least weighted squares among rising lists.
 * Units    those of the values.
 * Holds    for any list; a list that rises comes back as it is.
 * Error    none of its own; what was pooled tells how far the grey scale was read out of order.
 *
 * @throws {OutOfDomain} listsDiffer, notPositive, notFinite
 * @source pooled-violators: textbook of statistical inference under order restrictions (from memory)
 * @example isotonic({ values: [0.05, 0.12, 0.11, 0.3] }) // [0.05, 0.115, 0.115, 0.3]
 */
export function isotonic({ values, weights }: IsotonicInput): number[] {
  if (weights !== undefined && weights.length !== values.length) {
    throw new OutOfDomain("listsDiffer", { values: values.length, weights: weights.length }, "weights");
  }
  const pools: { mean: number; weight: number; count: number }[] = [];
  for (const [i, value] of values.entries()) {
    const weight = weights?.[i] ?? 1;
    requireFinite({ values: value });
    requirePositive({ weights: weight });
    let pool = { mean: value, weight, count: 1 };
    for (let last = pools.at(-1); last !== undefined && last.mean > pool.mean; last = pools.at(-1)) {
      pools.pop();
      const sum = last.weight + pool.weight;
      const mean = (last.mean * last.weight + pool.mean * pool.weight) / sum;
      pool = { mean, weight: sum, count: last.count + pool.count };
    }
    pools.push(pool);
  }
  return pools.flatMap(({ mean, count }) => Array<number>(count).fill(mean));
}
