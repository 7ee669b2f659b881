import { requirePositive } from "../errors/require.ts";

export interface FilmSpeedInput {
  /** The exposure that gives 0.10 above base and fog. */
  readonly speedPointLxS: number;
}

/**
 * The speed of a negative film, for contrast with a paper's only.
 *
 * Formula  S = 0.80 / H at D = base and fog + 0.10, where D rises by 0.80 within the next 1.30 of log H.
 * Units    H in lx·s; S (ISO) has none
 * Holds    for films. It is a shadow criterion; a paper is judged at its aim, so its P is no film speed.
 * Error    a third of a stop in H is a third of a stop in S.
 *
 * @throws {OutOfDomain} notPositive, notFinite
 * @source iso-6: 0.80 / H (second hand)
 * @example filmSpeed({ speedPointLxS: 0.008 }) // 100
 */
export function filmSpeed({ speedPointLxS }: FilmSpeedInput): number {
  requirePositive({ speedPointLxS });
  return 0.8 / speedPointLxS;
}
