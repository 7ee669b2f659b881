import type { CampaignInput, FitPaper, FitPatch, FitWarning } from "./fitTypes.ts";
import { curveCount } from "./layPatches.ts";
import type { Learnt } from "./learn.ts";

/** A residual of so many deviations is no chance. */
export const outlying = 3.5;
const DECIDES_ALONE = 0.8;
const SHEET_OFF = 2;
const FEW_RUNS = 0.05;
const CONTRADICTORY = 2;
/** Density by stop below which a patch says nothing of its exposure. */
const FLAT = 0.02;
/** Deviations by which a print must be lighter than its base before that is said. */
const CLEARLY = 2;

/** What to look out for in a fit, in the order of the list. Inner helper. */
export function fitWarnings(
  { sheets, patches }: CampaignInput,
  learnt: Learnt,
  assumed: readonly number[],
  runs: FitPaper["runs"],
): readonly FitWarning[] {
  const { campaign, optimum, posterior, scatterScale } = learnt;
  const { byStop } = optimum.printed;
  const base = Math.exp(optimum.z[9] ?? 0);
  const cap = -Math.log10(campaign.surface);
  const images = patches.flatMap((patch, index) => ((patch.kind ?? "image") === "image" ? [{ patch, index }] : []));
  const exposures = images.map(({ patch }) => patch.logExposure ?? 0);
  const isFlat = (index: number) => Math.abs(byStop[index] ?? 0) < FLAT;
  const ofPatches = (
    kind: Extract<FitWarning, { readonly patch: number }>["kind"],
    isSo: (patch: FitPatch, index: number) => boolean,
  ) => patches.flatMap((patch, index): FitWarning[] => (isSo(patch, index) ? [{ kind, patch: index }] : []));
  const seen = new Set<string>();
  return [
    ...ofPatches("sdAssumed", (_, index) => assumed.includes(index)),
    ...ofPatches("duplicatePatch", (patch) => {
      const { sheet, kind = "image", area, logExposure, u1, rounds, u2, flashS } = patch;
      const key = JSON.stringify([sheet, kind, area, logExposure, u1, rounds, u2, flashS]);
      const isTwice = seen.has(key);
      seen.add(key);
      return isTwice;
    }),
    ...(patches.length === 1 ? [{ kind: "onePatch" as const }] : []),
    ...sheets.flatMap(({ sheet }): FitWarning[] => {
      const own = images.filter(({ patch }) => patch.sheet === sheet);
      return own.length > 0 && own.every(({ index }) => isFlat(index)) ? [{ kind: "allSaturated", sheet }] : [];
    }),
    ...(images.length > 1 && Math.max(...exposures) - Math.min(...exposures) < 1e-9
      ? [{ kind: "sameExposures" as const }]
      : []),
    ...ofPatches("underBase", ({ density: { value, sd = 0 } }) => value + CLEARLY * sd < base),
    ...ofPatches("aboveCap", ({ density: { value } }) => value > cap),
    ...ofPatches("outlier", (_, index) => Math.abs(posterior.residual[index] ?? 0) > outlying),
    ...sheets.flatMap(({ sheet, sigmaTimeStops = 0.15 }, index): FitWarning[] => {
      const stops = Math.abs(optimum.z[curveCount + index] ?? 0);
      return stops > SHEET_OFF * sigmaTimeStops ? [{ kind: "sheetOff", sheet }] : [];
    }),
    ...ofPatches("leverageHigh", (_, index) => (posterior.leverage[index] ?? 0) > DECIDES_ALONE),
    ...(runs !== null && runs.pFew < FEW_RUNS ? [{ kind: "curveMisses" as const }] : []),
    ...(scatterScale > CONTRADICTORY ? [{ kind: "contradictory" as const }] : []),
  ];
}
