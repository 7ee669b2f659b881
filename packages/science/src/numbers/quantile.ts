/** The value below which the share `p` of a rising list lies, straight lines between its members (type 7). */
export function quantile(rising: ArrayLike<number>, p: number): number {
  const place = p * (rising.length - 1);
  const below = Math.floor(place);
  const low = rising[below] ?? Number.NaN;
  const high = rising[Math.min(below + 1, rising.length - 1)] ?? low;
  return low + (place - below) * (high - low);
}
