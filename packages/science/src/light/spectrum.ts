import { sourceSpectrum } from "./sourceSpectrum.ts";
import { wavelengthsNm } from "./spectralGrid.ts";

export interface SourceInput {
  /** "illuminantA", "filament:2700", "daylight:6500" or "whiteLed:4000". */
  readonly source: string;
}

export type SpectrumInput = SourceInput;

export interface Spectrum {
  readonly wavelengthNm: readonly number[];
  readonly relative: readonly number[];
}

/**
 * The spectrum of a light by its word.
 *
 * Formula  filament: λ^−5 / (e^(c₂ / (λ T)) − 1), 100 at 560 nm, c₂ = 1.438777·10⁷ nm·K; illuminantA: the same with T = 2848
 *          and c₂ = 1.435·10⁷; daylight: S₀ + M₁ S₁ + M₂ S₂, M rounded to three decimals; whiteLed: a blue bell and r times
 *          a phosphor bell with unlike flanks, each exp(−4 ln 2 · ((λ − λ₀) / w)²), its parameters straight in 10⁶ / T.
 * Units    wavelength in nm, 350 to 780 in steps of 10; relative energy (100 at 560 nm; LED: 1 at the blue peak, roughly).
 * Holds    daylight from 4000 to 25 000 K, white LED from 2500 to 7000 K, filament from 100 K.
 * Error    daylight and A as their tables; a white LED ±2 % of its peak against the tables it was fitted to, but lamps with
 *          a violet pump or three colours are others by stops.
 *
 * @throws {OutOfDomain} unknownWord, cctOutOfRange
 * @source cie-15: A and D series (second hand); jin-2013: shape of the LED (second hand); cie-15: LED-B1…B5 fitted (seen)
 * @example spectrum({ source: "daylight:6500" }).relative[10] // 117.0076, at 450 nm
 */
export function spectrum({ source }: SpectrumInput): Spectrum {
  return { wavelengthNm: [...wavelengthsNm], relative: [...sourceSpectrum(source, "source")] };
}
