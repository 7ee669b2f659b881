const nineInTen = 1.645;

/** The room a bracket has in the ledger's last column. */
export const bracketWidthPx = 72;

/**
 * The scale all brackets of one ledger share: the largest of 68, 27 or 14 px a stop at which the widest, the sum's, fits.
 */
export function bracketScale({ sds }: { readonly sds: readonly number[] }): number {
  const widest = 2 * nineInTen * Math.max(0, ...sds);
  return [68, 27].find((perStop) => widest * perStop <= bracketWidthPx) ?? 14;
}

/** How long a bracket is drawn: the doubt itself, nine in ten, at most the column's width. */
export function bracketLengthPx({ sd, perStop }: { readonly sd: number; readonly perStop: number }): number {
  return Math.min(bracketWidthPx - 2, 2 * nineInTen * sd * perStop);
}
