/** Ten kills in the usual run; as many as asked in a long one: `CAPTRAY_KILLS=200`. */
export function howManyKills(usual: number): number {
  return Number(process.env.CAPTRAY_KILLS ?? usual);
}
