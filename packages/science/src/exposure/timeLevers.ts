import { requireNotNegative, requirePositive } from "../errors/require.ts";

export interface TimeLeversInput {
  readonly timeS: number;
  readonly minimumTimeS: number;
  readonly magnification?: number;
  readonly pupilRatio?: number;
}

export interface TimeLeversAnswer {
  readonly stops: number;
  readonly neutralDensity: number;
  readonly lightFraction: number;
  readonly magnification: number;
  readonly fNumberFactor: number;
  readonly lampDistanceFactor: number;
}

/**
 * What would make a time that is too short for the cap long enough: each lever does it alone.
 *
 * Formula  x = log2(t_min / t); density x log10 2; light × 2^(−x); f-number and lamp distance × 2^(x/2);
 *          m′ = P ((1 + m / P) 2^(x/2) − 1). A paper slower by x stops does it too.
 * Units    times in s, x in stops; density, m, P and the factors have none.
 * Holds    t < t_min; otherwise nothing changes (0 stops, factors of 1). One lamp far from the subject beside its own size.
 * Error    that of the time; a grown paper (reciprocity) asks for a little less than said.
 *
 * @throws {OutOfDomain} notPositive, negative
 * @source greivenkamp-2004, p. 29: N_w = (1 + |m|/P) N (second hand); photometry: inverse square (from memory)
 * @example timeLevers({ timeS: 0.4, minimumTimeS: 2, magnification: 0.2 }).magnification // 1.6832816
 */
export function timeLevers({
  timeS,
  minimumTimeS,
  magnification = 0,
  pupilRatio = 1,
}: TimeLeversInput): TimeLeversAnswer {
  requirePositive({ timeS, minimumTimeS });
  requireNotNegative({ magnification });
  requirePositive({ pupilRatio });
  const stops = Math.max(0, Math.log2(minimumTimeS / timeS));
  const rootFactor = 2 ** (stops / 2);
  return {
    stops,
    neutralDensity: stops * Math.log10(2),
    lightFraction: 2 ** -stops,
    magnification: stops === 0 ? magnification : pupilRatio * ((1 + magnification / pupilRatio) * rootFactor - 1),
    fNumberFactor: rootFactor,
    lampDistanceFactor: rootFactor,
  };
}
