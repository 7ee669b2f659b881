import { OutOfDomain, requireInteger, requireNotNegative, requirePositive } from "../errors/index.ts";

export interface CarryOverInput {
  readonly volumeMl: number;
  /** Liquid that one sheet brings, and takes away. */
  readonly carryMl: number;
  readonly sheets: number;
}

export interface CarryOver {
  /** Share of the bath that is still its own. */
  readonly own: number;
  /** Share that came from the bath before. */
  readonly before: number;
}

/**
 * How much of a bath comes from the bath before it, after some sheets.
 *
 * Formula  own = (1 − v / V)^n,  before = 1 − own
 * Units    mL; shares of 1
 * Holds    where each sheet brings as much as it takes away, and the bath is moved.
 *
 * @throws {OutOfDomain} notFinite, notPositive, negative, wrongType, carryOverTooLarge
 * @source general-chemistry: dilution by steps (from memory)
 * @example carryOver({ volumeMl: 1000, carryMl: 10, sheets: 2 }) // { "own": 0.9801, "before": 0.0199 }
 */
export function carryOver({ volumeMl, carryMl, sheets }: CarryOverInput): CarryOver {
  requirePositive({ volumeMl });
  requireNotNegative({ carryMl, sheets });
  requireInteger({ sheets });
  if (carryMl >= volumeMl) throw new OutOfDomain("carryOverTooLarge", { carryMl, volumeMl });
  // Through the logarithm, because 1 − (1 − ε)^n loses its digits.
  const lnOwn = sheets * Math.log1p(-carryMl / volumeMl);
  return { own: Math.exp(lnOwn), before: 0 - Math.expm1(lnOwn) };
}
