import { requireNotNegative, requirePositive } from "../errors/index.ts";

export interface DilutePlusInput {
  /** The n of 1+n. */
  readonly parts: number;
  readonly volumeMl: number;
}

export interface Dilution {
  readonly stockMl: number;
  readonly waterMl: number;
  readonly fraction: number;
}

/**
 * What to pour for 1+n.
 *
 * Formula  stock = V / (1 + n), water = V − stock
 * Units    mL; fraction is the share of stock
 *
 * @throws {OutOfDomain} notFinite, negative, notPositive
 * @source iso-78-2: the form (V1+V2) (from memory)
 * @example dilutePlus({ parts: 4, volumeMl: 1000 }) // { "stockMl": 200, "waterMl": 800, "fraction": 0.2 }
 */
export function dilutePlus({ parts, volumeMl }: DilutePlusInput): Dilution {
  requireNotNegative({ parts });
  requirePositive({ volumeMl });
  const fraction = 1 / (1 + parts);
  return { stockMl: volumeMl * fraction, waterMl: volumeMl * parts * fraction, fraction };
}
