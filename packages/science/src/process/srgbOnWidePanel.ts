import { linearToSrgb } from "../light/linearToSrgb.ts";
import { requireShare } from "../light/requireShare.ts";
import { srgbToLinear } from "../light/srgbToLinear.ts";

export interface SrgbOnWidePanelInput {
  readonly red: number;
  readonly green: number;
  readonly blue: number;
}

export interface WidePanel {
  /** Light of the red, green and blue sub-pixels, as shares of full. */
  readonly linear: readonly number[];
  /** The same as 8-bit codes. */
  readonly codes: readonly number[];
}

/** sRGB to CIE XYZ and CIE XYZ to Display P3, both with D65, linear light: exact ratios. */
const fromSrgb = [
  [506752 / 1228815, 87881 / 245763, 12673 / 70218],
  [87098 / 409605, 175762 / 245763, 12673 / 175545],
  [7918 / 409605, 87881 / 737289, 1001167 / 1053270],
] as const;
const toPanel = [
  [446124 / 178915, -333277 / 357830, -72051 / 178915],
  [-14852 / 17905, 63121 / 35810, 423 / 17905],
  [11844 / 330415, -50337 / 660830, 316169 / 330415],
] as const;

type Row = readonly [number, number, number];

/**
 * What a colour given as sRGB really lights up on a panel whose primaries are those of Display P3 and whose colours are managed.
 *
 * Formula  linear sRGB → CIE XYZ (D65) → linear P3; the code is 255 times the transfer curve of sRGB, which P3 shares.
 * Units    red, green and blue from 0 to 1 as written in a style sheet; linear 0 to 1, codes 0 to 255.
 * Holds    for a managed panel; an unmanaged one takes sRGB codes as they are, a wider one adds other traces.
 * Error    none of its own; a panel is a few per cent off its primaries.
 *
 * @throws {OutOfDomain} negative, outOfRange
 * @source css-color-4: sample code for colour conversions, its matrices as exact ratios (second hand); srgb: transfer curve (seen)
 * @example srgbOnWidePanel({ red: 1, green: 0, blue: 0 }) // {"linear": [0.82246197, 0.0331942, 0.01708263], "codes": [234, 51, 35]}
 */
export function srgbOnWidePanel({ red, green, blue }: SrgbOnWidePanelInput): WidePanel {
  requireShare({ red });
  requireShare({ green });
  requireShare({ blue });
  const light = [red, green, blue].map((value) => srgbToLinear({ value })) as unknown as Row;
  const xyz = fromSrgb.map((row) => along(row, light)) as unknown as Row;
  // A primary of sRGB lies inside P3: what comes out beyond 0 … 1 is the last digit.
  const linear = toPanel.map((row) => Math.min(1, Math.max(0, rounded(along(row, xyz)))));
  return { linear, codes: linear.map((value) => Math.round(255 * linearToSrgb({ value }))) };
}

function along(row: Row, values: Row): number {
  return row[0] * values[0] + row[1] * values[1] + row[2] * values[2];
}

/** The noise of the two products away, so that black and white are whole. */
function rounded(value: number): number {
  return Math.round(value * 1e14) / 1e14;
}
