/** A factor with the digits it deserves: one after the point, above ten none. */
export function worthSaying(factor: number): string {
  return factor >= 10 ? String(Math.round(factor)) : String(Number(factor.toFixed(1)));
}
