import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireInteger, requireNotNegative, requirePositive, requireWithin } from "../errors/require.ts";

export interface PlanFlashStripInput {
  /** What the lamp is thought to give the paper, in lx·s a second. */
  readonly rateLx: number;
  /** One standard deviation of its natural logarithm. */
  readonly rateSdLn?: number | undefined;
  /** The least flash that shows. */
  readonly thresholdLxS: number;
  readonly thresholdSdLn?: number | undefined;
  /** With flash; the bare one comes beside them. */
  readonly steps?: number | undefined;
}

export interface PlanFlashStrip {
  /** Of each step from the start of the flash, in whole seconds, rising: the card moves over it then. The bare step is not among them. */
  readonly timesS: readonly number[];
  /** From step to step. */
  readonly factor: number;
  /** Where the first step that shows is expected. */
  readonly middleS: number;
  /** Whether a hand can give it: else dim the lamp or move it, or light it more. */
  readonly verdict: "fits" | "lampTooBright" | "lampTooDim";
}

const NINE_IN_TEN = 1.6448536269514722;
/** A third of a stop: nearer steps are not worth a card's width. */
const LEAST_FACTOR = 2 ** (1 / 3);
const MOST_FACTOR = 2;
/** A hand with a card cannot give less, and nobody waits for more. */
const LEAST_MIDDLE_S = 3;
const MOST_MIDDLE_S = 150;
const MOST_S = 900;

/**
 * The seconds of a flash strip: each step a constant factor longer, so that the first step that shows lies within nine times in ten.
 *
 * Formula  middle = H / r; factor = exp(2 · 1.645 · √(σ_r² + σ_H²) / (n − 1)), from a third of a stop to a stop; t_i = middle · factor^(i − (n−1)/2),
 *          to whole seconds at least one apart.
 * Units    r in lx·s a second; H in lx·s; times in s from the start of the flash; doubts of natural logarithms.
 * Holds    2 to 12 steps; a lamp that comes on and goes off at once.
 * Error    with the factor held to a stop a strip of seven spans six stops: of a lamp nobody has measured that is nine times in ten.
 *
 * @throws {OutOfDomain} notPositive, negative, wrongType, outOfRange, notFinite
 * @source none: test strips in equal factors are common practice, the span is worked by hand
 * @example planFlashStrip({ rateLx: 0.1, rateSdLn: 0.3, thresholdLxS: 1.2, thresholdSdLn: 0.4, steps: 5 }).timesS[2] // 12, the middle one
 */
export function planFlashStrip({
  rateLx,
  rateSdLn = 1,
  thresholdLxS,
  thresholdSdLn = 0,
  steps = 7,
}: PlanFlashStripInput): PlanFlashStrip {
  requirePositive({ rateLx, thresholdLxS });
  requireNotNegative({ rateSdLn, thresholdSdLn });
  requireInteger({ steps });
  requireWithin({ steps }, { least: 2, most: 12 });
  const middleS = thresholdLxS / rateLx;
  if (!(Number.isFinite(middleS) && middleS > 0)) throw new OutOfDomain("outOfRange", { rateLx });
  const wanted = Math.exp((2 * NINE_IN_TEN * Math.hypot(rateSdLn, thresholdSdLn)) / (steps - 1));
  const factor = Math.min(MOST_FACTOR, Math.max(LEAST_FACTOR, wanted));
  // A lamp out of a hand's reach still gets a strip that can be given, nearest to what was asked.
  const within = Math.min(MOST_MIDDLE_S, Math.max(LEAST_MIDDLE_S, middleS));
  const timesS: number[] = [];
  for (let index = 0; index < steps; index++) {
    const ideal = within * factor ** (index - (steps - 1) / 2);
    timesS.push(Math.max((timesS.at(-1) ?? 0) + 1, Math.round(Math.min(MOST_S, ideal))));
  }
  const verdict = middleS < LEAST_MIDDLE_S ? "lampTooBright" : middleS > MOST_MIDDLE_S ? "lampTooDim" : "fits";
  return { timesS, factor, middleS, verdict };
}
