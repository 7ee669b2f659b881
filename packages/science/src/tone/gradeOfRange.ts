import { requirePositive } from "../errors/require.ts";

export interface GradeOfRangeInput {
  /** ISO R. */
  readonly range: number;
}

/** Where each grade begins, from 0 on; the softest ends at 170. */
const BEGINS = [140, 115, 95, 80, 65, 50, 35] as const;
const SOFTEST = 170;

/**
 * The grade a paper of an ISO range is called.
 *
 * Formula  0: 140 to 170, 1: from 115, 2: from 95, 3: from 80, 4: from 65, 5: from 50, 6: from 35.
 * Units    ISO R; the grade a number without unit.
 * Holds    for papers of fixed grade, and filters of variable ones, measured by ISO 6846.
 * Error    no maker's grade is exact: half a grade.
 *
 * @throws {OutOfDomain} notPositive, notFinite
 * @source focal-encyclopedia: ends of the scale, six grades (page seen), inner limits from memory
 * @example gradeOfRange({ range: 100 }) // 2
 */
export function gradeOfRange({ range }: GradeOfRangeInput): number | null {
  requirePositive({ range });
  if (range > SOFTEST) return null;
  const grade = BEGINS.findIndex((least) => range >= least);
  return grade < 0 ? null : grade;
}
