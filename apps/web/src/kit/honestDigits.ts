/** Nine in ten lie within this many standard deviations on both sides of a normal doubt. */
const nineInTen = 1.645;

export interface HonestInput {
  readonly value: number;
  /** One standard deviation, as code and terminal hold it. */
  readonly sd: number;
  /** Stops and densities have digits of their own; anything else gets as many as its doubt allows. */
  readonly of: "stops" | "density" | "other";
  /** Whether a plus is written. */
  readonly signed?: boolean;
}

/**
 * A value and its ± (nine in ten) in figures: no more digits than the doubt allows, a true minus sign.
 *
 * Stops have two decimals only if the ± is below 0.1, densities always two; anything else is rounded where its ± has
 * its first figure, or its second where the first is a 1.
 */
export function honestDigits({ value, sd, of, signed = false }: HonestInput): { value: string; plusMinus: string } {
  const plusMinus = nineInTen * sd;
  const decimals =
    of === "density" ? 2 : of === "stops" ? (Number(plusMinus.toFixed(2)) < 0.1 ? 2 : 1) : decimalsFor(plusMinus);
  return {
    value: figures(value, decimals, signed),
    plusMinus: figures(plusMinus, of === "other" ? decimals : 2, false),
  };
}

function decimalsFor(plusMinus: number): number {
  if (!(plusMinus > 0)) return 2;
  const place = Math.floor(Math.log10(plusMinus));
  const first = Math.floor(plusMinus / 10 ** place + 1e-9);
  return Math.min(6, Math.max(0, first === 1 ? 1 - place : -place));
}

function figures(value: number, decimals: number, signed: boolean): string {
  const text = Math.abs(value).toFixed(decimals);
  if (Number(text) === 0) return text;
  return (value < 0 ? "−" : signed ? "+" : "") + text;
}
