/** An amount as a measure shows it: three digits, never more than a tenth. Inner helper of the steps. */
export function amountWords(amount: number, unit: "mL" | "g"): string {
  const decimals = amount >= 100 ? 0 : amount >= 10 ? 1 : 2;
  return `${Number(amount.toFixed(decimals))} ${unit}`;
}
