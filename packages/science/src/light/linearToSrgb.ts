import { requireShare } from "./requireShare.ts";
import type { ShareInput } from "./srgbToLinear.ts";

export type LinearToSrgbInput = ShareInput;

/**
 * From a share of the light of white to the value in a picture file.
 *
 * Formula  12.92 · v up to v = 0.0031308, above it 1.055 · v^(1 / 2.4) − 0.055.
 * Units    both from 0 to 1.
 * Holds    for pictures in sRGB.
 * Error    the standard rounds where its two parts meet: going there and back is off by 3·10⁻⁸ at most.
 *
 * @throws {OutOfDomain} negative, outOfRange
 * @source srgb: transfer curve (seen)
 * @example linearToSrgb({ value: 0.18 }) // 0.46135613
 */
export function linearToSrgb({ value }: LinearToSrgbInput): number {
  requireShare({ value });
  return value <= 0.0031308 ? 12.92 * value : 1.055 * value ** (1 / 2.4) - 0.055;
}
