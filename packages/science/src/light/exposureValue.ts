import { requirePositive } from "../errors/require.ts";

export interface ExposureValueInput {
  readonly fNumber: number;
  readonly timeS: number;
}

/**
 * The exposure value of a pair of settings: what opening and time let through, whatever the light and the paper.
 *
 * Formula  EV = log2(N² / t) = Av + Tv  with  Av = 2 · log2 N  and  Tv = −log2 t.
 * Units    EV in stops; t in s; N has none.
 * Holds    for all settings; f/1 at 1 s is EV 0.
 * Error    a mark read as its exact member, f/11 as 11.314, is out by nothing; read as 11 by 0.08 stop.
 *
 * @throws {OutOfDomain} notPositive
 * @source apex: Ev = Av + Tv (second hand)
 * @example exposureValue({ fNumber: 8, timeS: 0.25 }) // 8
 */
export function exposureValue({ fNumber, timeS }: ExposureValueInput): number {
  requirePositive({ fNumber, timeS });
  return 2 * Math.log2(fNumber) - Math.log2(timeS);
}
