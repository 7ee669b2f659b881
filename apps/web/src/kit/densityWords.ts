/** From this ± on a density is said from low to high. */
const rangeFrom = 0.3;

export interface DensityWordsInput {
  readonly density: number;
  /** Nine in ten. */
  readonly low: number;
  readonly high: number;
}

/** A density with its doubt: “0.24 ±0.03”, or “0.3 to 1.6” once the ± passes 0.3; “0.2” where both ends are the same tenth. */
export function densityWords({ density, low, high }: DensityWordsInput): string {
  const plusMinus = (high - low) / 2;
  if (plusMinus <= rangeFrom) return `${density.toFixed(2)} ±${plusMinus.toFixed(2)}`;
  const [from, to] = [low.toFixed(1), high.toFixed(1)];
  return from === to ? from : `${from} to ${to}`;
}
