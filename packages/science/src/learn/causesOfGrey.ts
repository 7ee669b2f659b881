import { OutOfDomain } from "../errors/outOfDomain.ts";
import { curveNames, wholeSettings } from "../tone/curve.ts";
import { causesFrom, type GreyCauses, gainsOf, greyOf } from "../tone/greyOf.ts";
import type { PatchKind } from "../tone/patchOf.ts";
import type { CampaignInput } from "./fitTypes.ts";
import { curveCovariance, fittedCurve, spread } from "./fittedCurve.ts";
import { curveCount, layPatches, type ReadyPatch } from "./layPatches.ts";
import { learn } from "./learn.ts";
import { printRows, roomFor } from "./printRows.ts";
import { readCampaign, requireLog, requireReversal, usualTimeStops } from "./readCampaign.ts";
import { noiseOf, teach } from "./teach.ts";

export interface CausesOfGreyInput extends CampaignInput {
  /** A tone of one of the sheets, whose settings are used. */
  readonly ask: { readonly sheet: string; readonly logExposure: number };
}

type Cause = keyof GreyCauses;

export interface FoundCause {
  /** Of the density over the base. */
  readonly share: number;
  /** Nine in ten. */
  readonly interval: { readonly low: number; readonly high: number };
  /** What curing this alone would take off the density. */
  readonly gain: number;
}

/** Doubts of the shares: of their natural logarithms. */
export type ShareDoubts = { readonly [Name in Cause]: number };

export interface CausesOfGrey {
  readonly density: number;
  readonly base: number;
  readonly excess: number;
  readonly layerDensity: number;
  readonly causes: { readonly [Name in Cause]: FoundCause };
  /** Pairs of causes that the prints do not tell apart yet, the larger shares first. */
  readonly undecided: readonly (readonly [Cause, Cause])[];
  /** What each control patch, on a repeat of that sheet, is expected to leave of the doubt. */
  readonly patches: readonly { readonly kind: PatchKind; readonly sdLnShare: ShareDoubts }[];
  /** The doubt as it is. */
  readonly now: { readonly sdLnShare: ShareDoubts };
}

const NINE_IN_TEN = 1.6448536269514722;
const CAUSES: readonly Cause[] = ["underexposed", "firstDevelopment", "bleach", "stain"];
const CONTROLS: readonly PatchKind[] = ["black", "fogged", "base", "baseProcessed", "bleachOnly"];
/** Above this share developable, underexposure rests on the far end of the curve, which no print shows. */
const FAR_END = 0.9;
/** Less than this of a density nobody sees. */
const WORTH_TELLING = 0.05;
const STEP = 1e-3;
const NEW_SD = 0.012;

/**
 * Why a tone is greyer than the bare paper, cause by cause, with what these prints know of it and which patch would tell more.
 *
 * Formula  shares and gains of `whyGrey` at the fit; sd of ln share = √(∇ Σ ∇ᵀ); nine in ten: share · e^(± 1.645 sd), where g > 0.9
 *          underexposure from 0; doubt after a patch: Σ − Σ Jᵀ (V + J Σ Jᵀ)⁻¹ J Σ.
 * Units    densities; exposures in log10 lx·s; doubts of natural logarithms.
 * Holds    for direct positives; a pair of causes is undecided where their intervals overlap and both reach 0.05.
 * Error    beliefs that are too narrow spoil shares before they spoil predictions: 80 of 100 where the truth is half as wide again.
 *
 * @throws {OutOfDomain} notAReversal, unknownSheet, tooFew, notPositive, negative, outOfRange, wetAndDryMixed, papersMixed, processesMixed, unknownKey, missingKey, unknownWord, wrongType, twoOfOne, toneOutOfReach, notFinite
 * @source aumann-shapley-1974: shares of a function of a sum (from memory); none: their doubt by first order (by hand)
 * @example causesOfGrey({ sheets: [{ sheet: "W30" }], patches: [{ sheet: "W30", logExposure: 1.6, density: { value: 0.3, sd: 0.01 } }], ask: { sheet: "W30", logExposure: 1.6 } }).patches.length // 5
 */
export function causesOfGrey(input: CausesOfGreyInput): CausesOfGrey {
  const { ask, sheets } = input;
  const { campaign, process, means } = readCampaign(input);
  requireReversal(process);
  const place = sheets.findIndex(({ sheet }) => sheet === ask.sheet);
  const sheet = sheets[place];
  if (sheet === undefined) {
    throw new OutOfDomain("unknownSheet", { sheet: ask.sheet, sheets: sheets.map((each) => each.sheet) }, "ask/sheet");
  }
  requireLog({ "ask/logExposure": ask.logExposure });
  const learnt = learn(campaign, input.rescale ?? true);
  const settings = wholeSettings(sheet);
  const meanLxS = means[place] ?? 0;
  const { flashS = 0 } = sheet;
  const light = { logExposure: ask.logExposure, meanLogExposure: Math.log10(meanLxS), offsetStops: 0, flashS };
  const greyAt = (z: Float64Array) => greyOf(fittedCurve(z), settings, light, { surface: campaign.surface });
  const { z } = learnt.optimum;
  const grey = greyAt(z);
  const gains = gainsOf(grey);
  const slopes = slopesOf();
  const covariance = curveCovariance(learnt);
  const now = doubtsWith(covariance);
  const causes = causesFrom((cause): FoundCause => {
    const share = grey.shares[cause];
    const isFar = cause === "underexposed" && grey.share > FAR_END;
    const high = share * Math.exp(NINE_IN_TEN * now[cause]);
    return {
      share,
      interval: { low: isFar ? 0 : share * Math.exp(-NINE_IN_TEN * now[cause]), high },
      gain: gains[cause],
    };
  });
  const falling = [...CAUSES].sort((one, other) => causes[other].share - causes[one].share);
  return {
    density: grey.density,
    base: grey.development.curve.Db,
    excess: grey.excess,
    layerDensity: grey.layerDensity,
    causes,
    undecided: falling.flatMap((one, index) =>
      falling
        .slice(index + 1)
        .filter((other) => {
          const [first, second] = [causes[one].interval, causes[other].interval];
          const overlaps = first.low <= second.high && second.low <= first.high;
          return overlaps && Math.min(first.high, second.high) >= WORTH_TELLING;
        })
        .map((other) => [one, other] as const),
    ),
    patches: CONTROLS.map((kind) => ({ kind, sdLnShare: doubtsWith(covarianceAfter(kind)) })),
    now: { sdLnShare: now },
  };

  /** Of the logarithm of each share, by the parameters. */
  function slopesOf(): { readonly [Name in Cause]: Float64Array } {
    const rows = causesFrom(() => new Float64Array(curveCount));
    for (const [index] of curveNames.entries()) {
      const [up, down] = [STEP, -STEP].map((by) => {
        const moved = Float64Array.from(z);
        moved[index] = (moved[index] ?? 0) + by;
        return greyAt(moved).shares;
      });
      for (const cause of CAUSES) {
        const [above, below] = [up?.[cause] ?? 0, down?.[cause] ?? 0];
        // A cause that is not there at all has no doubt.
        rows[cause][index] = above > 0 && below > 0 ? Math.log(above / below) / (2 * STEP) : 0;
      }
    }
    return rows;
  }

  function doubtsWith(matrix: Float64Array): ShareDoubts {
    return causesFrom((cause) => Math.sqrt(Math.max(0, spread(matrix, slopes[cause]))));
  }

  function covarianceAfter(kind: PatchKind): Float64Array {
    const same = { sheet: 0, meanLxS, flashS, settings };
    const images = input.patches
      .filter((patch) => patch.sheet === ask.sheet && patch.logExposure !== undefined)
      .map(({ logExposure = 0 }): ReadyPatch => ({ ...same, kind: "image", imageLxS: 10 ** logExposure }));
    const laid = layPatches([...images, { ...same, kind, imageLxS: 0 }], 1);
    const out = roomFor(laid.count);
    const at = new Float64Array(curveCount + 1);
    at.set(z.subarray(0, curveCount));
    printRows(laid, campaign.surface, at, out);
    return teach(covariance, out, noiseOf(learnt, NEW_SD, usualTimeStops)).covariance;
  }
}
