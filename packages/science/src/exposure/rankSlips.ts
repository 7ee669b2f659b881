import type { RankedSlips, SaidAnswer } from "./planTypes.ts";
import { agreesPrior, type SlipName, slipPriors, unknownPrior, unknownSdStops } from "./slipPriors.ts";

/** The sum as hand reckoning sees it: each part in stops. */
export interface SlipLedger {
  /** Of the time read, without any offset of the meter. */
  readonly readingStops: number;
  /** The ground was one time off a dial: only then a fraction can be inverted. */
  readonly readingIsOneTime: boolean;
  readonly bridgeStops: number;
  readonly clickStops: number;
  readonly apertureStops: number;
  /** The line of the aperture with the number the mount says; null where it says none. */
  readonly nominalApertureStops: number | null;
  readonly bellowsStops: number;
  readonly neutralDensity: number;
  readonly densityStops: number;
  readonly filterStops: number;
  readonly colourStops: number;
  readonly glassStops: number;
  /** What no slip touches: placement, offset of the meter. */
  readonly otherStops: number;
  /** From metered to needed seconds, on the whole sum. */
  readonly longExposure: (meteredTimeS: number) => number;
}

interface Candidate {
  readonly slips: readonly SlipName[];
  readonly prior: number;
  readonly stops: number;
}

interface Slip {
  readonly name: SlipName;
  /** Two slips of one group are never thought to come together. */
  readonly group: string;
  /** What the slip adds to the sum before the long exposure. */
  readonly changeStops: number;
  /** How often the long-exposure rule is used. */
  readonly longTimes: number;
}

/** The smallest effect that counts as one. */
const noEffectStops = 1e-6;
/** How far a sum may be off without any rounding that we know of. */
const reckoningSdStops = 0.05;
const dialRoundings = 2;
const dialStepStops = 1 / 3;

/** Compares a time somebody worked out with the sum. Inner helper of `plan` and `findSlips`. */
export function rankSlips(
  ledger: SlipLedger,
  saidTimeS: number,
  roundingS: number,
): SaidAnswer & { readonly trueTimeS: number } {
  const sum =
    ledger.readingStops +
    ledger.bridgeStops +
    ledger.apertureStops +
    ledger.bellowsStops +
    ledger.densityStops +
    ledger.filterStops +
    ledger.colourStops +
    ledger.glassStops +
    ledger.otherStops;
  const trueStops = withLongExposure(ledger, sum, 1);
  const offStops = Math.log2(saidTimeS) - trueStops;
  const sdStops = Math.sqrt(
    reckoningSdStops ** 2 + (dialRoundings * dialStepStops ** 2) / 12 + (roundingS / (saidTimeS * Math.LN2)) ** 2 / 12,
  );
  const candidates = candidatesOf(ledger, sum, trueStops);
  const logWeights = candidates.map(
    ({ prior, stops }) => Math.log(prior) + logNormalDensity(offStops - stops, sdStops),
  );
  const unknownLogWeight = Math.log(unknownPrior) + logNormalDensity(offStops, Math.hypot(unknownSdStops, sdStops));
  // Weights far out underflow: shares are made from differences of logarithms, the greatest being 1.
  const greatest = Math.max(unknownLogWeight, ...logWeights);
  const whole = logWeights.reduce(
    (total, log) => total + Math.exp(log - greatest),
    Math.exp(unknownLogWeight - greatest),
  );
  const ranked: RankedSlips[] = candidates
    .map(({ slips, stops }, index) => ({
      slips,
      share: Math.exp((logWeights[index] as number) - greatest) / whole,
      stops,
      logWeight: logWeights[index] as number,
    }))
    .sort((first, second) => second.logWeight - first.logWeight)
    .slice(0, 4)
    .map(({ slips, share, stops }) => ({ slips, share, stops }));
  const unknownShare = Math.exp(unknownLogWeight - greatest) / whole;
  const best = ranked[0] as RankedSlips;
  const verdict = best.share < unknownShare ? "unknown" : best.slips.length === 0 ? "agrees" : "slip";
  return { trueTimeS: 2 ** trueStops, verdict, offStops, sdStops, unknownShare, ranked };
}

/** Agreement, every slip that would change this sum, and every pair of slips from two groups. */
function candidatesOf(ledger: SlipLedger, sum: number, trueStops: number): readonly Candidate[] {
  const effect = (changeStops: number, longTimes: number) =>
    withLongExposure(ledger, sum + changeStops, longTimes) - trueStops;
  const slips = slipsOf(ledger).filter((slip) => Math.abs(effect(slip.changeStops, slip.longTimes)) >= noEffectStops);
  const candidates: Candidate[] = [{ slips: [], prior: agreesPrior, stops: 0 }];
  for (const [index, first] of slips.entries()) {
    candidates.push({
      slips: [first.name],
      prior: slipPriors[first.name],
      stops: effect(first.changeStops, first.longTimes),
    });
    for (const second of slips.slice(index + 1)) {
      if (first.group === second.group) continue;
      candidates.push({
        slips: [first.name, second.name],
        prior: slipPriors[first.name] * slipPriors[second.name],
        stops: effect(
          first.changeStops + second.changeStops,
          first.longTimes === 1 ? second.longTimes : first.longTimes,
        ),
      });
    }
  }
  return candidates;
}

function slipsOf(ledger: SlipLedger): readonly Slip[] {
  const { bellowsStops: b, bridgeStops: bridge, apertureStops: aperture, nominalApertureStops: nominal } = ledger;
  const slips: Slip[] = [];
  const put = (group: string, name: SlipName, changeStops: number, longTimes = 1) =>
    slips.push({ name, group, changeStops, longTimes });
  put("bellows", "bellows-linear", -b / 2);
  put("bellows", "bellows-forgotten", -b);
  put("bellows", "bellows-twice", b);
  put("bellows", "bellows-inverted", -2 * b);
  put("bridge", "clicks-as-stops", (ledger.clickStops - 1) * bridge);
  put("bridge", "bridge-forgotten", -bridge);
  put("bridge", "ei-wrong-way", -2 * bridge);
  for (const [name, step] of [["bridge-one-more", 1] as const, ["bridge-one-less", -1] as const]) {
    // Without a bridge there is nothing to miscount; B ± 1 = 0 is the forgotten bridge under another name.
    if (Math.abs(bridge) >= noEffectStops && Math.abs(bridge + step) >= noEffectStops) put("bridge", name, step);
  }
  put("aperture", "aperture-forgotten", -aperture);
  put("aperture", "aperture-linear", -aperture / 2);
  if (nominal !== null) put("aperture", "aperture-nominal", nominal - aperture);
  put("nd", "nd-density-as-stops", ledger.neutralDensity - ledger.densityStops);
  put("nd", "nd-forgotten", -ledger.densityStops);
  put("filter", "filter-forgotten", -ledger.filterStops);
  put("reciprocity", "reciprocity-forgotten", 0, 0);
  put("reciprocity", "reciprocity-twice", 0, 2);
  if (ledger.readingIsOneTime && ledger.readingStops < 0)
    put("fraction", "fraction-inverted", -2 * ledger.readingStops);
  put("colour", "colour-not-counted", -ledger.colourStops);
  put("glass", "glass-not-counted", -ledger.glassStops);
  return slips;
}

function withLongExposure(ledger: SlipLedger, sum: number, times: number): number {
  let stops = sum;
  for (let turn = 0; turn < times; turn += 1) stops = Math.log2(ledger.longExposure(2 ** stops));
  return stops;
}

function logNormalDensity(off: number, sd: number): number {
  return -0.5 * (off / sd) ** 2 - Math.log(sd);
}
