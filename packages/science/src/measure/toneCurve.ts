import { linearToSrgb } from "../light/linearToSrgb.ts";
import { srgbToLinear } from "../light/srgbToLinear.ts";

/** How the codes of a picture stand for light, where no profile says it. */
export type ToneCurve = "srgb" | "linear" | "gamma1.8" | "gamma2.2";

const EXPONENTS = { linear: 1, "gamma1.8": 1.8, "gamma2.2": 2.2 } as const;

/** The share of the light of white that a value from 0 to 1 stands for. */
export function linearOf(curve: ToneCurve, value: number): number {
  return curve === "srgb" ? srgbToLinear({ value }) : value ** EXPONENTS[curve];
}

/** The value from 0 to 1 that stands for a share of the light of white. */
export function codeValueOf(curve: ToneCurve, share: number): number {
  return curve === "srgb" ? linearToSrgb({ value: share }) : share ** (1 / EXPONENTS[curve]);
}

/** How fast the light rises with the value, at a value. */
export function slopeOf(curve: ToneCurve, value: number): number {
  if (curve === "srgb") {
    return value <= 0.04045 ? 1 / 12.92 : (2.4 / 1.055) * ((value + 0.055) / 1.055) ** 1.4;
  }
  const exponent = EXPONENTS[curve];
  return exponent * value ** (exponent - 1);
}
