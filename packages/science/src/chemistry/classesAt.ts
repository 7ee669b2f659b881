/** A hazard class, % w/w from which it holds (included), and below which (not included). */
export type LimitOfClass = readonly [name: string, from: number, below: number | null];

/** The classes that hold at a strength. Inner helper of the hazard classes. */
export function classesAt(limits: readonly LimitOfClass[], percentWw: number): readonly string[] {
  return limits
    .filter(([, from, below]) => percentWw >= from && (below === null || percentWw < below))
    .map(([name]) => name);
}
