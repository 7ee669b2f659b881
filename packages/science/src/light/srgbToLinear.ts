import { requireShare } from "./requireShare.ts";

export interface ShareInput {
  /** A code ÷ 255, or a share of the light of white. */
  readonly value: number;
}

export type SrgbToLinearInput = ShareInput;

/**
 * From a value in a picture file to the light it stands for.
 *
 * Formula  c / 12.92 up to c = 0.04045, above it ((c + 0.055) / 1.055)^2.4.
 * Units    both from 0 to 1: a code ÷ 255, and a share of the light of white.
 * Holds    for pictures in sRGB; one with another profile needs that profile's curve.
 * Error    a step of an 8-bit code at 20 is 0.1 stop.
 *
 * @throws {OutOfDomain} negative, outOfRange
 * @source srgb: transfer curve (seen)
 * @example srgbToLinear({ value: 0.5 }) // 0.21404114
 */
export function srgbToLinear({ value }: SrgbToLinearInput): number {
  requireShare({ value });
  return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
}
