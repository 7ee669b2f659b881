import { requirePositive } from "../errors/index.ts";

export interface MisreadRatioInput {
  /** The n of 1:n. */
  readonly parts: number;
}

export interface MisreadRatio {
  readonly factor: number;
  readonly stops: number;
}

/**
 * How far the two readings of 1:n lie apart: one part in n, or one part with n.
 *
 * Formula  factor = (n + 1) / n
 * Units    none; stops = log2 of the factor
 *
 * @throws {OutOfDomain} notFinite, notPositive
 * @source general-chemistry: parts of a solution (from memory)
 * @example misreadRatio({ parts: 4 }) // { "factor": 1.25, "stops": 0.32192809 }
 */
export function misreadRatio({ parts }: MisreadRatioInput): MisreadRatio {
  requirePositive({ parts });
  const factor = (parts + 1) / parts;
  return { factor, stops: Math.log2(factor) };
}
