import { requireNotNegative } from "../errors/require.ts";
import { figures, plainDigits } from "./plainDigits.ts";

export interface FormatLengthInput {
  readonly lengthMm: number;
  readonly unit: "mm" | "inch";
}

const INCH_MM = 25.4;
const SIXTEENTHS = 16;
/** A fraction of an inch stands for a length that lies this near. */
const NEAR_MM = 0.05;

/**
 * A length for screens and sentences.
 *
 * Formula  mm: to a tenth from 10 mm up, three figures below. inch: whole and sixteenths (8 1/2 in) within 0.05 mm of one, else
 *          to a hundredth; below an inch three figures.
 * Units    mm in; mm or inches out
 * Holds    from 0 up.
 * Error    0.05 mm from 10 mm up; 0.13 mm in inches.
 *
 * @throws {OutOfDomain} negative, notFinite
 * @source none: finer than a rule reads (common practice)
 * @example formatLength({ lengthMm: 215.9, unit: "inch" }) // "8 1/2 in"
 */
export function formatLength({ lengthMm, unit }: FormatLengthInput): string {
  requireNotNegative({ lengthMm });
  if (unit === "mm") return `${lengthMm < 10 ? figures(lengthMm, 3) : rounded(lengthMm, 10)} mm`;
  const inches = lengthMm / INCH_MM;
  return `${asSixteenths(lengthMm) ?? (inches < 1 ? figures(inches, 3) : rounded(inches, 100))} in`;
}

function rounded(value: number, parts: number): string {
  const scaled = value * parts;
  return plainDigits(Number.isSafeInteger(Math.round(scaled)) ? Math.round(scaled) / parts : value);
}

function asSixteenths(lengthMm: number): string | undefined {
  const count = Math.round((lengthMm / INCH_MM) * SIXTEENTHS);
  if (!Number.isSafeInteger(count) || Math.abs((count / SIXTEENTHS) * INCH_MM - lengthMm) > NEAR_MM) return undefined;
  if (count === 0) return lengthMm === 0 ? "0" : undefined;
  const whole = Math.floor(count / SIXTEENTHS);
  let top = count % SIXTEENTHS;
  let bottom = SIXTEENTHS;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return [whole > 0 ? String(whole) : "", top > 0 ? `${top}/${bottom}` : ""].filter((part) => part !== "").join(" ");
}
