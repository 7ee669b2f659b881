import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requireNotNegative, requirePositive, requireWithin } from "../errors/require.ts";
import { aimOf } from "../tone/aimOf.ts";
import {
  type CurveName,
  curveFrom,
  curveNames,
  curvePriors,
  fromScale,
  type Process,
  type ProcessSettings,
  toScale,
  wholeSettings,
} from "../tone/curve.ts";
import { developmentOf, logExposureOf } from "../tone/development.ts";
import type { PatchKind } from "../tone/patchOf.ts";
import { surfaceOf } from "../tone/surfaceOf.ts";
import type { Campaign } from "./campaign.ts";
import type { CampaignInput, FitPatch, FitSheet, SheetSettings } from "./fitTypes.ts";
import { layPatches, type ReadyPatch } from "./layPatches.ts";

/** Scatter of a patch beside that of its measurement: unevenness of the sheet and misfit of the curve, in density. */
export const patchSd = 0.02;
/** Doubt of a sheet's light where its time is not known. */
export const usualTimeStops = 0.15;
const ASSUMED_SD = 0.02;
const EXPOSURE_INDEX_SD_STOPS = 0.7;
const FLARE = { coated: 0.02, uncoated: 0.05 };
const KINDS: readonly PatchKind[] = ["image", "black", "fogged", "base", "baseProcessed", "bleachOnly"];
/** More than any light a paper sees, and short of overflow. */
const MOST_LOG = 100;

/** A campaign ready to be fitted, with what the answers speak of. */
export interface ReadCampaign {
  readonly campaign: Campaign;
  readonly process: Process;
  /** Of each sheet, lx·s of the mean of its frame. */
  readonly means: readonly number[];
  /** Patches without an error of their own. */
  readonly assumed: readonly number[];
}

/** Checks the prints of a campaign and lays them out. Inner helper. */
export function readCampaign(input: CampaignInput): ReadCampaign {
  const { sheets, patches } = input;
  const surface = surfaceOf(input);
  const places = placesOf(sheets);
  if (patches.length === 0) throw new OutOfDomain("tooFew", { patches: 0, least: 1 }, "patches");
  const process = oneProcess(sheets);
  requireAlike(patches);
  for (const [index, patch] of patches.entries()) requirePatch(patch, places, `patches/${index}/`);
  const means = sheets.map(({ sheet, meanLogExposure }, index) => {
    if (meanLogExposure !== undefined) requireLog({ [`sheets/${index}/meanLogExposure`]: meanLogExposure });
    return meanLxS(
      meanLogExposure,
      patches.filter((patch) => patch.sheet === sheet).map(({ logExposure }) => logExposure),
    );
  });
  const settings = sheets.map((sheet) => wholeSettings(sheet));
  const ready = patches.map((patch, index): ReadyPatch => {
    const sheet = places.get(patch.sheet) ?? 0;
    const { flashS = sheets[sheet]?.flashS ?? 0 } = patch;
    if (!isNotNegative(flashS)) requireNotNegative({ [`patches/${index}/flashS`]: flashS });
    const isApart = patch.u1 !== undefined || patch.rounds !== undefined || patch.u2 !== undefined;
    const ofSheet = settings[sheet];
    return {
      sheet,
      kind: patch.kind ?? "image",
      imageLxS: patch.logExposure === undefined ? 0 : 10 ** patch.logExposure,
      meanLxS: means[sheet] ?? 0,
      flashS,
      settings:
        isApart || ofSheet === undefined
          ? wholeSettings({ ...ofSheet, ...withoutGaps(patch) }, `patches/${index}/`)
          : ofSheet,
    };
  });
  const prior = priorOf(input, process);
  return {
    campaign: {
      laid: layPatches(ready, sheets.length),
      surface,
      density: Float64Array.from(patches, ({ density }) => density.value),
      sigma: Float64Array.from(patches, ({ density: { sd = ASSUMED_SD } }) => Math.hypot(sd, patchSd)),
      mean: Float64Array.from([...prior.mean, ...sheets.map(() => 0)]),
      sd: Float64Array.from([...prior.sd, ...sheets.map(({ sigmaTimeStops = usualTimeStops }) => sigmaTimeStops)]),
    },
    process,
    means,
    assumed: patches.flatMap(({ density }, index) => (density.sd === undefined ? [index] : [])),
  };
}

/** lx·s of the mean of a frame: as said, else of its patches; none without either. */
export function meanLxS(meanLogExposure: number | undefined, logExposures: readonly (number | undefined)[]): number {
  if (meanLogExposure !== undefined) return 10 ** meanLogExposure;
  const known = logExposures.filter((each) => each !== undefined);
  return known.length === 0 ? 0 : known.reduce((sum, each) => sum + 10 ** each, 0) / known.length;
}

/** Checks settings of a sheet that are not those of a campaign; `at` is the path to them, with its stroke. */
export function requireSheetSettings(sheet: SheetSettings, at: string): void {
  wholeSettings(sheet, at);
  requireNotNegative({ [`${at}flashS`]: sheet.flashS ?? 0 });
  if (sheet.meanLogExposure !== undefined) requireLog({ [`${at}meanLogExposure`]: sheet.meanLogExposure });
}

/** Causes of grey and next sheets are asked of direct positives only. */
export function requireReversal(process: Process): void {
  if (process !== "reversal") throw new OutOfDomain("notAReversal", { process }, "sheets/0/process");
}

/** A logarithm of lx·s that is one of light. */
export function requireLog(numbers: Readonly<Record<string, number>>): void {
  requireWithin(numbers, { least: -MOST_LOG, most: MOST_LOG });
}

// Naming the place of each of some hundred numbers takes longer than fitting them: it is named once one is at fault.

function isPositive(value: number): boolean {
  return value > 0 && value < Number.POSITIVE_INFINITY;
}

function isNotNegative(value: number): boolean {
  return value >= 0 && value < Number.POSITIVE_INFINITY;
}

/** Checks that a kind is one, and that light is said of an image and of nothing else. */
export function requireKind(
  { kind = "image", logExposure }: { readonly kind?: PatchKind | undefined; readonly logExposure?: number | undefined },
  at: string,
): void {
  if (!KINDS.includes(kind)) throw new OutOfDomain("unknownWord", { kind, choices: KINDS }, `${at}kind`);
  if (kind !== "image") {
    if (logExposure !== undefined) throw new OutOfDomain("unknownKey", { key: "logExposure" }, `${at}logExposure`);
    return;
  }
  if (logExposure === undefined) throw new OutOfDomain("missingKey", { key: "logExposure" }, `${at}logExposure`);
  if (!(Math.abs(logExposure) <= MOST_LOG)) requireLog({ [`${at}logExposure`]: logExposure });
}

function placesOf(sheets: readonly FitSheet[]): ReadonlyMap<string, number> {
  if (sheets.length === 0) throw new OutOfDomain("tooFew", { sheets: 0, least: 1 }, "sheets");
  const places = new Map<string, number>();
  for (const [index, sheet] of sheets.entries()) {
    const at = `sheets/${index}/`;
    if (places.has(sheet.sheet)) {
      throw new OutOfDomain("outOfRange", { sheet: sheet.sheet, twice: true }, `${at}sheet`);
    }
    places.set(sheet.sheet, index);
    requireSheetSettings(sheet, at);
    requirePositive({ [`${at}sigmaTimeStops`]: sheet.sigmaTimeStops ?? usualTimeStops });
  }
  return places;
}

function requirePatch(patch: FitPatch, places: ReadonlyMap<string, number>, at: string): void {
  if (!places.has(patch.sheet)) {
    throw new OutOfDomain("unknownSheet", { sheet: patch.sheet, sheets: [...places.keys()] }, `${at}sheet`);
  }
  requireKind(patch, at);
  const { value, sd = ASSUMED_SD } = patch.density;
  if (!isPositive(value)) requirePositive({ [`${at}density/value`]: value });
  if (!isPositive(sd)) requirePositive({ [`${at}density/sd`]: sd });
}

/** Negative and positive are two processes, and a fit is of one. */
function oneProcess(sheets: readonly FitSheet[]): Process {
  const [{ process: first = "reversal" } = {}] = sheets;
  for (const [index, { process: each = "reversal" }] of sheets.entries()) {
    if (each !== first) throw new OutOfDomain("processesMixed", { process: each, first }, `sheets/${index}/process`);
  }
  return first;
}

/** Wet paper is darker than dry, and another paper is another paper. */
function requireAlike(patches: readonly FitPatch[]): void {
  const [{ wet: isWet = false } = {}] = patches;
  const paper = patches.find((patch) => patch.paper !== undefined)?.paper;
  for (const [index, patch] of patches.entries()) {
    if ((patch.wet ?? false) !== isWet) throw new OutOfDomain("wetAndDryMixed", {}, `patches/${index}/wet`);
    if (patch.paper !== undefined && patch.paper !== paper) {
      throw new OutOfDomain("papersMixed", { paper: patch.paper, first: paper }, `patches/${index}/paper`);
    }
  }
}

function withoutGaps({ u1, rounds, u2 }: FitPatch): ProcessSettings {
  return {
    ...(u1 === undefined ? {} : { u1 }),
    ...(rounds === undefined ? {} : { rounds }),
    ...(u2 === undefined ? {} : { u2 }),
  };
}

/** What is believed before any print; the exposure index places the curve, what is said under `priors` counts before both. */
function priorOf(input: CampaignInput, process: Process): { readonly mean: number[]; readonly sd: number[] } {
  const { priors = {}, lensCoating = "coated", paper } = input;
  if (lensCoating !== "coated" && lensCoating !== "uncoated") {
    throw new OutOfDomain("unknownWord", { lensCoating, choices: Object.keys(FLARE) });
  }
  for (const [name, prior] of Object.entries(priors)) {
    if (!Object.hasOwn(curvePriors, name)) throw new OutOfDomain("unknownKey", { key: name }, `priors/${name}`);
    if (prior === undefined) continue;
    requireFinite({ [`priors/${name}/mean`]: prior.mean });
    if (curvePriors[name as CurveName].scale !== "identity") {
      // On a logarithm: more than this is no share and no paper.
      const most = 60;
      if (Math.abs(prior.mean) > most) {
        throw new OutOfDomain("outOfRange", { mean: prior.mean, least: -most, most }, `priors/${name}/mean`);
      }
    }
    requirePositive({ [`priors/${name}/sd`]: prior.sd });
  }
  const mean = curveNames.map((name) => {
    const usual = name === "phi" ? FLARE[lensCoating] : curvePriors[name].mean;
    return priors[name]?.mean ?? toScale(usual, curvePriors[name].scale);
  });
  const sd = curveNames.map((name) => priors[name]?.sd ?? curvePriors[name].sd);
  if (paper === undefined) return { mean, sd };
  const { exposureIndex, exposureIndexSdStops = EXPOSURE_INDEX_SD_STOPS } = paper;
  requirePositive({ "paper/exposureIndex": exposureIndex, "paper/exposureIndexSdStops": exposureIndexSdStops });
  if (priors.x50 !== undefined) return { mean, sd };
  const curve = curveFrom((name, index) => (name === "x50" ? 0 : fromScale(mean[index] ?? 0, curvePriors[name].scale)));
  const atNought = developmentOf(curve, { process, u1: 1, rounds: 2, u2: 1 }, input, "priors/Db");
  const aim = logExposureOf(aimOf(atNought), atNought, "paper/exposureIndex");
  return {
    mean: [Math.log10((0.65 * 12.5) / exposureIndex) - aim, ...mean.slice(1)],
    sd: [Math.log10(2) * exposureIndexSdStops, ...sd.slice(1)],
  };
}
