import { requireFinite, requireNotNegative } from "../errors/require.ts";

export interface FormatStopsInput {
  readonly stops: number;
  /** One standard deviation; none: the number is exact. */
  readonly sd?: number | undefined;
}

const NINE_IN_TEN = 1.6448536269514722;

/**
 * Stops with their sign, in digits no finer than the doubt.
 *
 * Formula  two decimals if the nine-in-ten ± = 1.645 sd is below 0.1, else one; + is more, the minus is U+2212, zero bears no sign.
 * Units    stops; sd in stops, one standard deviation
 * Holds    for every finite number.
 *
 * @throws {OutOfDomain} notFinite, negative
 * @source none: digits no finer than the doubt (common practice)
 * @example formatStops({ stops: 1.0237, sd: 0.02 }) // "+1.02"
 */
export function formatStops({ stops, sd = 0 }: FormatStopsInput): string {
  requireFinite({ stops });
  requireNotNegative({ sd });
  const digits = Math.abs(stops).toFixed(NINE_IN_TEN * sd < 0.1 ? 2 : 1);
  if (Number(digits) === 0) return digits;
  return `${stops < 0 ? "−" : "+"}${digits}`;
}
