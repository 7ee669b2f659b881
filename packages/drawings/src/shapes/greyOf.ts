/** The grey that a screen shows for a print tone, "#rrggbb": R = 10^−D, then the sRGB curve. */
export function greyOf({ density }: { readonly density: number }): string {
  const linear = Math.min(1, Math.max(0, 10 ** -density));
  const coded = linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055;
  const code = Math.round(255 * coded)
    .toString(16)
    .padStart(2, "0");
  return `#${code}${code}${code}`;
}
