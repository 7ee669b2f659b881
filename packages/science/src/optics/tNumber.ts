import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requirePositive } from "../errors/require.ts";

export interface TNumberInput {
  readonly fNumber: number;
  readonly transmission: number;
}

/**
 * The f-number of a lossless lens that would pass as much light as this one.
 *
 * Formula  N_T = N / √T
 * Units    none.
 * Holds    0 < T ≤ 1.
 * Error    a meter's constant already supposes T = 0.90: charge a cap time only with log2(0.90 / T).
 *
 * @throws {OutOfDomain} transmissionOutOfRange
 * @source f-number-article: T-stop = N / √transmittance (seen)
 * @example tNumber({ fNumber: 8, transmission: 0.7 }) // 9.5618288746
 */
export function tNumber({ fNumber, transmission }: TNumberInput): number {
  requirePositive({ fNumber, transmission });
  if (transmission > 1) throw new OutOfDomain("transmissionOutOfRange", { transmission });
  return fNumber / Math.sqrt(transmission);
}
