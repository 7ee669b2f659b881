import { OutOfDomain } from "./outOfDomain.ts";

/** Numbers by the key they were given under. */
export type Numbers = Readonly<Record<string, number>>;

/**
 * Refuses every number that is not finite: `requireFinite({ stops })`.
 *
 * @throws {OutOfDomain} notFinite
 */
export function requireFinite(numbers: Numbers): void {
  for (const [key, value] of Object.entries(numbers)) {
    if (!Number.isFinite(value)) throw new OutOfDomain("notFinite", { [key]: value });
  }
}

/**
 * Refuses zero, less and whatever is not finite.
 *
 * @throws {OutOfDomain} notFinite, notPositive
 */
export function requirePositive(numbers: Numbers): void {
  requireFinite(numbers);
  for (const [key, value] of Object.entries(numbers)) {
    if (value <= 0) throw new OutOfDomain("notPositive", { [key]: value });
  }
}

/**
 * Refuses what is below zero, and whatever is not finite.
 *
 * @throws {OutOfDomain} notFinite, negative
 */
export function requireNotNegative(numbers: Numbers): void {
  requireFinite(numbers);
  for (const [key, value] of Object.entries(numbers)) {
    if (value < 0) throw new OutOfDomain("negative", { [key]: value });
  }
}

/**
 * Refuses a number outside `least` … `most`, both included, with the code of the place that asks.
 *
 * @throws {OutOfDomain} notFinite, and `code` (outOfRange unless said)
 */
export function requireWithin(
  numbers: Numbers,
  { least, most, code = "outOfRange" }: { readonly least: number; readonly most: number; readonly code?: string },
): void {
  requireFinite(numbers);
  for (const [key, value] of Object.entries(numbers)) {
    if (value < least || value > most) throw new OutOfDomain(code, { [key]: value, least, most });
  }
}

/**
 * Refuses a number that is not whole, and whatever is not finite.
 *
 * @throws {OutOfDomain} notFinite, wrongType
 */
export function requireInteger(numbers: Numbers): void {
  requireFinite(numbers);
  for (const [key, value] of Object.entries(numbers)) {
    if (!Number.isInteger(value)) throw new OutOfDomain("wrongType", { [key]: value, wanted: "a whole number" });
  }
}
