import type { SheetCode } from "./sheet.ts";

/** `codes` of the sheets there are, newest first. */
export interface NextSheetCodeInput {
  readonly codes: readonly string[];
}

/**
 * The code proposed for the next sheet: the newest code's letters with the number after the highest used with them.
 *
 * W30 and W29 → W31; in an empty notebook A1. It is a proposal: the code is a field, never the key.
 */
export function nextSheetCode({ codes }: NextSheetCodeInput): SheetCode {
  const form = /^([\p{L} ./-]*)(\d{1,6})$/u;
  let letters: string | undefined;
  let highest = 0;
  for (const code of codes) {
    const [, before, digits] = form.exec(code) ?? [];
    if (before === undefined || digits === undefined) continue;
    letters ??= before;
    if (before === letters) highest = Math.max(highest, Number(digits));
  }
  return `${letters ?? "A"}${highest + 1}` as SheetCode;
}
