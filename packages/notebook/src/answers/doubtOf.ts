/** One measured quantity: its value and one standard deviation. */
export interface Measured {
  readonly value: number;
  readonly sd: number;
}

/**
 * A quantity worked out from several measured ones, with the doubt they hand on: first order, each on its own. Inner helper of these answers.
 *
 * Slopes are taken over a thousandth of each doubt, so that only the place itself counts and not the way there.
 */
export function doubtOf<K extends string>({
  from,
  work,
}: {
  readonly from: Readonly<Record<K, Measured>>;
  readonly work: (values: Readonly<Record<K, number>>) => number;
}): Measured {
  const names = Object.keys(from) as K[];
  const values = Object.fromEntries(names.map((name) => [name, from[name].value])) as Record<K, number>;
  const shares = names.map((name) => {
    const step = from[name].sd / 1000;
    if (step === 0) return 0;
    const up = work({ ...values, [name]: values[name] + step });
    const down = work({ ...values, [name]: values[name] - step });
    return ((up - down) / (2 * step)) * from[name].sd;
  });
  return { value: work(values), sd: Math.hypot(...shares) };
}
