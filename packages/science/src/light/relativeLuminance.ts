import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireNotNegative } from "../errors/require.ts";
import { srgbToLinear } from "./srgbToLinear.ts";

export interface RelativeLuminanceInput {
  readonly red: number;
  readonly green: number;
  readonly blue: number;
}

/**
 * How bright a spot of a picture file is, white being 1.
 *
 * Formula  Y = 0.2126 R + 0.7152 G + 0.0722 B  with  R, G, B linear: each code ÷ 255 through the sRGB curve.
 * Units    codes from 0 to 255, also the mean of several pixels' codes; Y from 0 to 1.
 * Holds    for pictures in sRGB. Take the median of a hundred pixels or more; a channel at 250 or above is clipped.
 * Error    phone pictures bend the tones away from the middle: sd 0.7 stop as they come.
 *
 * @throws {OutOfDomain} negative, outOfRange
 * @source srgb: transfer curve and weights (seen)
 * @example relativeLuminance({ red: 200, green: 150, blue: 90 }) // 0.34830238
 */
export function relativeLuminance({ red, green, blue }: RelativeLuminanceInput): number {
  for (const [key, code] of Object.entries({ red, green, blue })) {
    requireNotNegative({ [key]: code });
    if (code > 255) throw new OutOfDomain("outOfRange", { [key]: code, least: 0, most: 255 });
  }
  const linear = (code: number) => srgbToLinear({ value: code / 255 });
  return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
}
