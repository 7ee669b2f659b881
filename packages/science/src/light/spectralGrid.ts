import { cieObserver1931 } from "../tables/cieObserver1931.ts";

// Every spectrum of this folder is sampled at 350, 360 … 780 nm and summed plainly. Inner helpers, positions and bare lists.

export const wavelengthsNm: readonly number[] = Array.from({ length: 44 }, (_, index) => 350 + 10 * index);

/** The 1931 observer on the grid, zero below its first row: x̄, ȳ (what a meter sees) and z̄. */
export const observer = { x: onGrid(1), y: onGrid(2), z: onGrid(3) } as const;

function onGrid(column: 1 | 2 | 3): readonly number[] {
  return wavelengthsNm.map((nm) => cieObserver1931.find((row) => row[0] === nm)?.[column] ?? 0);
}

/** Sum of the products, wavelength by wavelength, of lists on the grid. */
export function sumOfProducts(...lists: readonly (readonly number[])[]): number {
  return wavelengthsNm.reduce(
    (sum, _, index) => sum + lists.reduce((product, list) => product * (list[index] ?? 0), 1),
    0,
  );
}

/** A bell of full width `width` at half its height 1. */
export function bell(nm: number, centreNm: number, widthNm: number): number {
  return Math.exp(-4 * Math.LN2 * ((nm - centreNm) / widthNm) ** 2);
}
