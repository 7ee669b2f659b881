import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireInteger, requirePositive, requireWithin } from "../errors/require.ts";
import { choleskyFlat } from "../numbers/choleskyFlat.ts";
import { quantile } from "../numbers/quantile.ts";
import { randomNumbers } from "../numbers/randomNumbers.ts";
import { type Process, wholeSettings } from "../tone/curve.ts";
import { nu } from "./campaign.ts";
import type { FitPaper, FitPredict } from "./fitTypes.ts";
import { curveCovariance, spread } from "./fittedCurve.ts";
import { curveCount, type Laid, layPatches } from "./layPatches.ts";
import type { Learnt } from "./learn.ts";
import { printRows, roomFor } from "./printRows.ts";
import { meanLxS, patchSd, requireKind, requireSheetSettings, usualTimeStops } from "./readCampaign.ts";

const NINE_IN_TEN = 1.6448536269514722;
const MOST_DRAWS = 100_000;
/** Far beyond any paper, and short of overflow. */
const FARTHEST = 30;

/** What patches of a sheet that has not been made would print, with all that is not known of it. Inner helper. */
export function predictPatches(
  learnt: Learnt,
  process: Process,
  { sheet = {}, patches, newSd = 0.01, draws = 0, seed = 1 }: FitPredict,
): FitPaper["predicted"] {
  requireSheetSettings(sheet, "predict/sheet/");
  for (const [index, patch] of patches.entries()) requireKind(patch, `predict/patches/${index}/`);
  requirePositive({ "predict/newSd": newSd });
  requireInteger({ "predict/draws": draws, "predict/seed": seed });
  requireWithin({ "predict/draws": draws }, { least: 0, most: MOST_DRAWS });
  const settings = wholeSettings({ process, ...sheet });
  const mean = meanLxS(
    sheet.meanLogExposure,
    patches.map(({ logExposure }) => logExposure),
  );
  const laid = layPatches(
    patches.map(({ kind = "image", logExposure }) => ({
      sheet: 0,
      kind,
      imageLxS: logExposure === undefined ? 0 : 10 ** logExposure,
      meanLxS: mean,
      flashS: sheet.flashS ?? 0,
      settings,
    })),
    1,
  );
  const { surface } = learnt.campaign;
  const out = roomFor(patches.length);
  const z = new Float64Array(curveCount + 1);
  z.set(learnt.optimum.z.subarray(0, curveCount));
  if (!printRows(laid, surface, z, out)) throw new OutOfDomain("outOfRange", {}, "");
  const covariance = curveCovariance(learnt);
  const timeStops = usualTimeStops * learnt.timingScale;
  const scatter = Math.hypot(patchSd * learnt.scatterScale, newSd);
  const sampled = draws > 0 ? sampledPatches() : [];
  return patches.map((_, index) => {
    const value = out.density[index] ?? 0;
    const row = out.rows.subarray(index * curveCount, (index + 1) * curveCount);
    const curveSd = Math.sqrt(spread(covariance, row));
    const sd = Math.hypot(curveSd, timeStops * (out.byStop[index] ?? 0), scatter);
    return {
      density: { value, sd },
      curveSd,
      interval: sampled[index] ?? { low: value - NINE_IN_TEN * sd, high: value + NINE_IN_TEN * sd },
    };
  });

  function sampledPatches(): readonly { readonly low: number; readonly high: number }[] {
    return sampledIntervalsOf(learnt, laid, { covariance, timeStops, scatter, draws, seed });
  }
}

function sampledIntervalsOf(
  { campaign: { surface }, optimum }: Learnt,
  laid: Laid,
  {
    covariance,
    timeStops,
    scatter,
    draws,
    seed,
  }: {
    readonly covariance: Float64Array;
    readonly timeStops: number;
    readonly scatter: number;
    readonly draws: number;
    readonly seed: number;
  },
): readonly { readonly low: number; readonly high: number }[] {
  const random = randomNumbers(seed);
  const triangle = Float64Array.from(covariance);
  choleskyFlat(triangle, curveCount);
  const cap = -Math.log10(surface);
  const darkestBase = Math.log(0.99 * cap);
  const values = Array.from({ length: laid.count }, () => new Float64Array(draws));
  const chance = new Float64Array(curveCount);
  const z = new Float64Array(curveCount + 1);
  const out = roomFor(laid.count);
  for (let draw = 0; draw < draws; draw += 1) {
    for (let index = 0; index < curveCount; index += 1) chance[index] = random.normal();
    for (let row = 0; row < curveCount; row += 1) {
      let value = optimum.z[row] ?? 0;
      for (let column = 0; column <= row; column += 1) {
        value += (triangle[row * curveCount + column] ?? 0) * (chance[column] ?? 0);
      }
      z[row] = Math.min(Math.max(value, -FARTHEST), FARTHEST);
    }
    z[9] = Math.min(z[9] ?? 0, darkestBase);
    z[curveCount] = timeStops * random.normal();
    printRows(laid, surface, z, out);
    const base = Math.exp(z[9] ?? 0);
    for (let patch = 0; patch < laid.count; patch += 1) {
      const density = (out.density[patch] ?? 0) + scatter * scattered();
      // A print is never lighter than its base, nor darker than its surface.
      const list = values[patch];
      if (list !== undefined) list[draw] = Math.min(Math.max(density, base), cap);
    }
  }
  return values.map((list) => {
    list.sort();
    return { low: quantile(list, 0.05), high: quantile(list, 0.95) };
  });

  /** Student-t scatter of four degrees, as patches are taken to have it: a normal number over the root of a mean of squares. */
  function scattered(): number {
    return random.normal() / Math.sqrt(-Math.log(random.uniform() * random.uniform()) / (nu / 2));
  }
}
