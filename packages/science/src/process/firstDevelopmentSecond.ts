import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireNotNegative, requirePositive } from "../errors/require.ts";

export interface FirstDevelopmentSecondInput {
  readonly timeS: number;
  /** Until then nothing is seen. */
  readonly inductionS: number;
  readonly timeConstantS: number;
  /** Density of the whole coating, as the whites would have it undeveloped. */
  readonly layerDensity: number;
  /** Density per unit of log exposure. */
  readonly contrast: number;
}

export interface FirstDevelopmentSecond {
  /** Share of the first image that is not developed yet: what greys the whites. */
  readonly undeveloped: number;
  readonly densityPerS: number;
  readonly stopsPerS: number;
}

/**
 * What one second more or less in the first developer is worth, from a person's own development series.
 *
 * Formula  left = e^(−(t − t_i) / τ); dD/dt = D_layer · left / τ; in stops that ÷ (contrast · log10 2).
 * Units    t, t_i, τ in s; answers in density per s and stops per s.
 * Holds    after the first appearance t_i, as a description of one series; predictions use the reversal model of the tone folder.
 * Error    as that of τ: a third longer, and the second costs up to twice as much late in the step.
 *
 * @throws {OutOfDomain} notPositive, negative, outOfRange
 * @source none: first-order development after an induction time (by hand)
 * @example firstDevelopmentSecond({ timeS: 60, inductionS: 10, timeConstantS: 30, layerDensity: 2, contrast: 2 }).densityPerS // 0.0125917
 */
export function firstDevelopmentSecond(input: FirstDevelopmentSecondInput): FirstDevelopmentSecond {
  const { timeS, inductionS, timeConstantS, layerDensity, contrast } = input;
  requirePositive({ timeS });
  requireNotNegative({ inductionS });
  requirePositive({ timeConstantS, layerDensity, contrast });
  if (timeS < inductionS) throw new OutOfDomain("outOfRange", { timeS, least: inductionS });
  const undeveloped = Math.exp(-(timeS - inductionS) / timeConstantS);
  const densityPerS = (layerDensity * undeveloped) / timeConstantS;
  return { undeveloped, densityPerS, stopsPerS: densityPerS / (contrast * Math.log10(2)) };
}
