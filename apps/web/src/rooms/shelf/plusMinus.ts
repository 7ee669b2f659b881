import { honestDigits } from "../../kit/honestDigits.ts";

/** A measured value and its ± (nine in ten) in figures, no more of them than the doubt allows. */
export function plusMinus({ value, sd }: { readonly value: number; readonly sd: number }): {
  readonly value: string;
  readonly plusMinus: string;
} {
  return honestDigits({ value, sd, of: "other" });
}
