import { curveCount, type Laid } from "./layPatches.ts";

/** Degrees of freedom of the scatter: a scratched patch loses its weight. */
export const nu = 4;

/** What was measured, what is believed before, and how uneven hand and sheets are taken to be. Inner to learning. */
export interface Campaign {
  readonly laid: Laid;
  /** First-surface light. */
  readonly surface: number;
  readonly density: Float64Array;
  /** Of the measurement and of the patch, in density. */
  readonly sigma: Float64Array;
  /** The thirteen parameters' mean and deviation before any print, then 0 and the doubt in stops of each sheet. */
  readonly mean: Float64Array;
  readonly sd: Float64Array;
}

/** The same with other scales: scatter times `scatter`, each sheet's timing times `timing`. */
export function scaledCampaign(campaign: Campaign, scatter: number, timing: number): Campaign {
  return {
    ...campaign,
    sigma: campaign.sigma.map((value) => value * scatter),
    sd: campaign.sd.map((value, index) => (index < curveCount ? value : value * timing)),
  };
}
