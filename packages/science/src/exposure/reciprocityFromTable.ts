import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requirePositive } from "../errors/require.ts";

/** Rows of [metered seconds, needed seconds], both rising. */
export type ReciprocityTable = readonly (readonly [number, number])[];

export interface ReciprocityFromTableInput {
  readonly meteredTimeS: number;
  readonly table: ReciprocityTable;
}

export interface ReciprocityFromTableAnswer {
  readonly timeS: number;
  /** True beyond the last row, where its last slope is only carried on. */
  readonly extrapolated: boolean;
}

/**
 * The time to give, from a paper's own table of metered and needed seconds.
 *
 * Formula  straight lines in log t against log t; below the first row its ratio is kept, above the last its slope.
 * Units    all times in s.
 * Holds    two rows or more, both columns rising.
 * Error    that of the rows; beyond the last row only a guess, and said so by `extrapolated`.
 *
 * @throws {OutOfDomain} tooFew, notPositive, tableNotRising
 * @source none: interpolation in logarithms, as makers' own graphs are drawn (by hand)
 * @example reciprocityFromTable({ meteredTimeS: 5, table: [[1, 1], [10, 14], [100, 200]] }).timeS // 6.3257077, in s
 */
export function reciprocityFromTable({ meteredTimeS, table }: ReciprocityFromTableInput): ReciprocityFromTableAnswer {
  requirePositive({ meteredTimeS });
  requireReciprocityTable(table);
  const [firstMetered, firstNeeded] = table[0] as readonly [number, number];
  if (meteredTimeS <= firstMetered) {
    return { timeS: meteredTimeS * (firstNeeded / firstMetered), extrapolated: false };
  }
  let upper = 1;
  while (upper < table.length - 1 && meteredTimeS > (table[upper]?.[0] ?? Number.POSITIVE_INFINITY)) upper += 1;
  const [lowMetered, lowNeeded] = table[upper - 1] as readonly [number, number];
  const [highMetered, highNeeded] = table[upper] as readonly [number, number];
  const slope = Math.log(highNeeded / lowNeeded) / Math.log(highMetered / lowMetered);
  return { timeS: lowNeeded * (meteredTimeS / lowMetered) ** slope, extrapolated: meteredTimeS > highMetered };
}

/** Refuses a table that cannot be read: too short, not positive, or not rising in both columns. */
export function requireReciprocityTable(table: ReciprocityTable, key = "table"): void {
  if (table.length < 2) throw new OutOfDomain("tooFew", { table: table.length, least: 2 }, key);
  for (const [row, pair] of table.entries()) {
    for (const column of [0, 1] as const) {
      const value = pair[column];
      const below = table[row - 1]?.[column];
      if (!Number.isFinite(value)) throw new OutOfDomain("notFinite", { table: value }, `${key}/${row}/${column}`);
      if (value <= 0) throw new OutOfDomain("notPositive", { table: value }, `${key}/${row}/${column}`);
      if (below !== undefined && value <= below) {
        throw new OutOfDomain("tableNotRising", { row: row + 1, valueS: value, belowS: below }, key);
      }
    }
  }
}
