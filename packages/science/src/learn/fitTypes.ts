import type { CurveName, ProcessSettings } from "../tone/curve.ts";
import type { IsoFromCurve } from "../tone/isoOf.ts";
import type { PatchKind } from "../tone/patchOf.ts";
import type { SurfaceInput } from "../tone/surfaceOf.ts";
import type { RunsTest } from "./runsTest.ts";

/** How a sheet, or a strip of one, was exposed and processed. */
export interface SheetSettings extends ProcessSettings {
  readonly flashS?: number | undefined;
  /** log10 of the mean image exposure of the frame; left out, of the sheet's own image patches. */
  readonly meanLogExposure?: number | undefined;
}

export interface FitSheet extends SheetSettings {
  /** Its code, unlike all others. */
  readonly sheet: string;
  /** Doubt of its light, all of it together. */
  readonly sigmaTimeStops?: number | undefined;
}

export interface FitPatch {
  readonly sheet: string;
  readonly kind?: PatchKind | undefined;
  readonly area?: string | undefined;
  /** log10 lx·s of image light; of an image only. */
  readonly logExposure?: number | undefined;
  readonly density: { readonly value: number; readonly sd?: number | undefined };
  readonly wet?: boolean | undefined;
  readonly paper?: string | undefined;
  /** Of its own, where the strip was processed apart. */
  readonly u1?: number | undefined;
  readonly rounds?: number | undefined;
  readonly u2?: number | undefined;
  readonly flashS?: number | undefined;
}

/** A belief of a parameter on its scale of learning. */
export interface FitPrior {
  readonly mean: number;
  readonly sd: number;
}

/** What is to be predicted: patches of a sheet that has not been made. */
export interface FitPredict {
  readonly sheet?: SheetSettings | undefined;
  readonly patches: readonly { readonly kind?: PatchKind | undefined; readonly logExposure?: number | undefined }[];
  /** Of its measurement, in density. */
  readonly newSd?: number | undefined;
  /** How many papers to draw for the intervals; 0: linear. */
  readonly draws?: number | undefined;
  readonly seed?: number | undefined;
}

/** Prints to learn from, and what is believed before them. */
export interface CampaignInput extends SurfaceInput {
  readonly sheets: readonly FitSheet[];
  readonly patches: readonly FitPatch[];
  /** Places the curve before any print. */
  readonly paper?: { readonly exposureIndex: number; readonly exposureIndexSdStops?: number | undefined } | undefined;
  readonly lensCoating?: "coated" | "uncoated" | undefined;
  readonly priors?: { readonly [Name in CurveName]?: FitPrior | undefined } | undefined;
  /** Whether scatter and timing are scaled by what the prints show. */
  readonly rescale?: boolean | undefined;
}

export interface FitPaperInput extends CampaignInput {
  readonly predict?: FitPredict | undefined;
}

interface Uncertain {
  readonly value: number;
  readonly sd: number;
}

interface Interval {
  readonly low: number;
  readonly high: number;
}

export interface FittedParameter {
  /** In natural units, like its nine-in-ten interval. */
  readonly value: number;
  readonly interval: Interval;
  /** On the scale of learning. */
  readonly fitted: Uncertain;
  /** 1 − (sd now ÷ sd before)²: below 0.2 the prints say nothing about this yet. */
  readonly learnt: number;
}

export interface FittedPatch {
  readonly sheet: string;
  readonly kind: PatchKind;
  /** Density at the optimum. */
  readonly fitted: number;
  /** Measured less fitted, in its deviations. */
  readonly residual: number;
  /** How far this patch decides its own value; all of them add up to the effective parameters. */
  readonly leverage: number;
  readonly flagged: boolean;
}

export type FitWarning =
  | {
      readonly kind: "sdAssumed" | "duplicatePatch" | "outlier" | "leverageHigh" | "underBase" | "aboveCap";
      readonly patch: number;
    }
  | { readonly kind: "allSaturated" | "sheetOff"; readonly sheet: string }
  | { readonly kind: "onePatch" | "sameExposures" | "curveMisses" | "contradictory" };

export interface FitPaper {
  readonly objective: number;
  readonly scatterScale: number;
  readonly timingScale: number;
  readonly parameters: { readonly [Name in CurveName]: FittedParameter };
  readonly offsets: readonly { readonly sheet: string; readonly stops: Uncertain }[];
  readonly patches: readonly FittedPatch[];
  /** Of the images, in order of exposure; `null` without one. */
  readonly runs: RunsTest | null;
  readonly effectiveParameters: number;
  /** Thirteen parameters, then the sheets. */
  readonly covariance: readonly (readonly number[])[];
  readonly predicted: readonly { readonly density: Uncertain; readonly curveSd: number; readonly interval: Interval }[];
  /** For the recipe as written; `null` where its aim is out of reach. */
  readonly exposureIndex: { readonly value: number; readonly sdStops: number } | null;
  /** Of a negative; else, and where its speed point is not reached, `null`. */
  readonly iso: IsoFromCurve | null;
  readonly warnings: readonly FitWarning[];
}
