/** The shortest digits that read back as this number, never with a power of ten: 1e-7 is 0.0000001. */
export function plainDigits(value: number): string {
  const [mantissa = "", power] = String(Math.abs(value)).split("e");
  const sign = value < 0 ? "-" : "";
  if (power === undefined) return sign + mantissa;
  const [whole = "", part = ""] = mantissa.split(".");
  const digits = whole + part;
  const point = whole.length + Number(power);
  if (point <= 0) return `${sign}0.${"0".repeat(-point)}${digits}`;
  return sign + digits.padEnd(point, "0");
}

/** Rounded to so many figures, without the zeros at the end: 9.0 is 9. */
export function figures(value: number, count: number): string {
  return plainDigits(Number(value.toPrecision(count)));
}
