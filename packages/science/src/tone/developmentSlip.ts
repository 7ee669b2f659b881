import { requireFinite, requireInteger, requireWithin } from "../errors/require.ts";
import { quantile } from "../numbers/quantile.ts";
import { randomNumbers } from "../numbers/randomNumbers.ts";
import { wholeSettings } from "./curve.ts";
import { type Development, densityAt, developmentOf } from "./development.ts";
import { expectBasis } from "./expectBasis.ts";
import type { ExpectPrintInput } from "./expectTypes.ts";
import { paperDraws } from "./paperDraws.ts";
import { shareAt } from "./richards.ts";
import { surfaceOf } from "./surfaceOf.ts";

export interface DevelopmentSlipInput
  extends Pick<
    ExpectPrintInput,
    | "curve"
    | "fit"
    | "paper"
    | "process"
    | "u1"
    | "rounds"
    | "u2"
    | "finish"
    | "surface"
    | "lensCoating"
    | "draws"
    | "seed"
  > {
  /** How much more than planned the (first) development was, in stops of its dose: 1 is twice the time. */
  readonly ratioStops: number;
  /** Doubt of that, one standard deviation. */
  readonly ratioSdStops?: number | undefined;
}

/** A change of density: the most likely one, one standard deviation, and between what nine papers in ten lie. */
export interface SlipOfTone {
  readonly value: number;
  readonly sd: number;
  readonly interval: { readonly low: number; readonly high: number };
}

export interface DevelopmentSlip {
  /** Where everything was exposed: the whites of a positive, the black of a negative. */
  readonly exposed: SlipOfTone;
  /** Where half was developed as planned. */
  readonly half: SlipOfTone;
  /** Where nothing was exposed: the blacks of a positive, the base of a negative. */
  readonly unexposed: SlipOfTone;
}

const mostDraws = 4000;
/** Further off, first-order completion is no guide any more. */
const mostStops = 4;
const slipStream = 7_919;

/**
 * What a slip in the first developer does to the print, by the model and by what is known of this paper.
 *
 * Formula  ΔD = D(u₁ 2^r) − D(u₁) at the same exposure, with A = 1 − m1^u₁, a0(u₁) = 1 − (1 − a0)^u₁, x50(u₁) = x50 − vd log10 u₁; for a
 *          small r the derivative of the model times r. Papers that could be this one are drawn, each with its own slip.
 * Units    r in stops of the dose (time, strength and temperature together), densities.
 * Holds    within 4 stops of the recipe; bleach and second development as planned.
 * Error    first-order completion is an assumption: a strip at twice the development tests it.
 *
 * @throws {OutOfDomain} outOfRange, twoOfOne, missingKey, unknownKey, unknownWord, wrongType, notPositive, negative, notFinite, tooFew
 * @source none: derivative of the reversal model (by hand); williams-clapper-1953: layer to print (from memory)
 * @example developmentSlip({ ratioStops: 0 }).exposed.value // 0
 */
export function developmentSlip(input: DevelopmentSlipInput): DevelopmentSlip {
  const { ratioStops, ratioSdStops = 0, draws = 400, seed = 1 } = input;
  requireFinite({ ratioStops });
  requireWithin({ ratioStops }, { least: -mostStops, most: mostStops });
  requireWithin({ ratioSdStops }, { least: 0, most: mostStops });
  requireInteger({ draws });
  requireWithin({ draws }, { least: 1, most: mostDraws });
  requireInteger({ seed });
  const planned = wholeSettings(input);
  const surface = surfaceOf(input);
  const basis = expectBasis({ ...input, areas: [] }, planned, { surface });
  const slippedBy = (stops: number) => ({ ...planned, u1: planned.u1 * 2 ** stops });
  const likely = changeOf(
    developmentOf(basis.curve, planned, { surface }),
    developmentOf(basis.curve, slippedBy(ratioStops), { surface }),
  );
  // The chance of the slip itself is a stream beside that of the papers.
  const chance = randomNumbers(seed + slipStream);
  const before = paperDraws(basis, planned, surface, { draws, seed });
  const drawn = before.map(({ development }) => {
    const stops = ratioStops + ratioSdStops * chance.normal();
    return changeOf(development, developmentOf(development.curve, slippedBy(stops), { surface }));
  });
  return {
    exposed: spreadOf(
      likely.exposed,
      drawn.map(({ exposed }) => exposed),
    ),
    half: spreadOf(
      likely.half,
      drawn.map(({ half }) => half),
    ),
    unexposed: spreadOf(
      likely.unexposed,
      drawn.map(({ unexposed }) => unexposed),
    ),
  };
}

function changeOf(planned: Development, slipped: Development) {
  const at = (development: Development) => {
    const { width, q } = development.curve;
    return densityAt(shareAt(planned.x50, { x50: development.x50, width, q }).share, development);
  };
  return {
    exposed: densityAt(1, slipped) - densityAt(1, planned),
    half: at(slipped) - at(planned),
    unexposed: densityAt(0, slipped) - densityAt(0, planned),
  };
}

function spreadOf(value: number, values: readonly number[]): SlipOfTone {
  const sorted = Float64Array.from(values).sort();
  const mean = values.reduce((sum, each) => sum + each, 0) / values.length;
  const squares = values.reduce((sum, each) => sum + (each - mean) ** 2, 0);
  return {
    value,
    sd: Math.sqrt(squares / Math.max(1, values.length - 1)),
    interval: { low: quantile(sorted, 0.05), high: quantile(sorted, 0.95) },
  };
}
