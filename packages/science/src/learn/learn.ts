import { type Campaign, scaledCampaign } from "./campaign.ts";
import { curveCount } from "./layPatches.ts";
import { type Optimum, optimumFrom, optimumFromPrior } from "./optimum.ts";
import { type Posterior, posteriorOf } from "./posteriorOf.ts";

/** What the prints of a campaign have taught. */
export interface Learnt {
  /** With the scales it was fitted with. */
  readonly campaign: Campaign;
  readonly optimum: Optimum;
  readonly posterior: Posterior;
  readonly scatterScale: number;
  readonly timingScale: number;
}

/** Mean of w r² for normal scatter under ν = 4: E[5 z² / (4 + z²)]. */
const USUAL_SQUARE = 0.7863077071;
const PSEUDO_PATCHES = 8;
const PSEUDO_SHEETS = 4;
const [LEAST_SCALE, MOST_SCALE] = [0.8, 3];

/**
 * The plain optimum; then, if asked, how uneven patches really are, and after that how uneven the light of the sheets is, each
 * followed by a fit that takes it into account. Inner helper.
 */
export function learn(campaign: Campaign, rescale: boolean): Learnt {
  const plain = optimumFromPrior(campaign);
  const first = posteriorOf(campaign, plain);
  if (!rescale) return { campaign, optimum: plain, posterior: first, scatterScale: 1, timingScale: 1 };
  const { sheets, count } = campaign.laid;
  const unevenness = first.residual.reduce((sum, off, patch) => sum + (first.weight[patch] ?? 0) * off * off, 0);
  const scatterScale = scaleOf(
    (PSEUDO_PATCHES + unevenness / USUAL_SQUARE) / (PSEUDO_PATCHES + Math.max(count - first.effectiveParameters, 0)),
  );
  const scattered = scaledCampaign(campaign, scatterScale, 1);
  const second = optimumFrom(scattered, plain.z);
  const believed = posteriorOf(scattered, second);
  if (sheets < 2) return { campaign: scattered, optimum: second, posterior: believed, scatterScale, timingScale: 1 };
  let squares = PSEUDO_SHEETS;
  for (let sheet = 0; sheet < sheets; sheet += 1) {
    const at = curveCount + sheet;
    const variance = believed.covariance[at * believed.size + at] ?? 0;
    squares += ((second.z[at] ?? 0) ** 2 + variance) / (campaign.sd[at] ?? 1) ** 2;
  }
  const timingScale = scaleOf(squares / (PSEUDO_SHEETS + sheets));
  const scaled = scaledCampaign(campaign, scatterScale, timingScale);
  const third = optimumFrom(scaled, second.z);
  return { campaign: scaled, optimum: third, posterior: posteriorOf(scaled, third), scatterScale, timingScale };
}

function scaleOf(square: number): number {
  return Math.min(MOST_SCALE, Math.max(LEAST_SCALE, Math.sqrt(square)));
}
