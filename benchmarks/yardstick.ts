/** A fixed piece of arithmetic, timed in the same run as every promise: what counts is figure ÷ yardstick. */
export function yardstick(): number {
  let sum = 0;
  for (let i = 1; i <= 200_000; i++) sum += Math.sqrt(i) * Math.log2(i + 1);
  return sum;
}

export interface Timing {
  readonly medianMs: number;
  readonly p95Ms: number;
  readonly runs: number;
}

/** Median and 95th percentile of some times in milliseconds. */
export function summarise(timesMs: readonly number[]): Timing {
  const sorted = [...timesMs].sort((a, b) => a - b);
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
  return { medianMs: at(0.5), p95Ms: at(0.95), runs: sorted.length };
}

/** Times a piece of work after three rounds of warming up. The work gives its answer back, so that it can be checked. */
export function time<Answer>(runs: number, work: () => Answer): { timing: Timing; answer: Answer } {
  let answer = work();
  for (let i = 0; i < 3; i++) answer = work();
  const times: number[] = [];
  for (let i = 0; i < runs; i++) {
    const start = performance.now();
    answer = work();
    times.push(performance.now() - start);
  }
  return { timing: summarise(times), answer };
}

/** The same for work that waits. */
export async function timeAsync<Answer>(
  runs: number,
  work: () => Promise<Answer>,
): Promise<{ timing: Timing; answer: Answer }> {
  let answer = await work();
  const times: number[] = [];
  for (let i = 0; i < runs; i++) {
    const start = performance.now();
    answer = await work();
    times.push(performance.now() - start);
  }
  return { timing: summarise(times), answer };
}
