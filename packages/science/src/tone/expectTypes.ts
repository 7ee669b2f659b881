import type { CurveName, ProcessSettings } from "./curve.ts";
import type { SurfaceInput } from "./surfaceOf.ts";

export interface ExpectArea {
  /** Unlike all others. */
  readonly area: string;
  /** log10 lx·s of image light, as `plan` gives it. */
  readonly logExposure: number;
  /** Doubt of this area alone. */
  readonly sdStops?: number | undefined;
}

/** A parameter: a number is taken as certain; else in natural units, with a doubt on the scale of learning. */
export type ExpectParameter = number | { readonly value: number; readonly sd: number };

export type ExpectCurve = { readonly [Name in CurveName]?: ExpectParameter | undefined };

/** Of the answer of a fit, what the expected print is made from; the rest may be there. */
export interface ExpectFit {
  readonly parameters: { readonly [Name in CurveName]: { readonly value: number } };
  /** Thirteen parameters first, on the scale of learning. */
  readonly covariance: readonly (readonly number[])[];
  readonly scatterScale: number;
  readonly timingScale: number;
}

export interface ExpectWanted {
  readonly area: string;
  readonly density?: number | undefined;
}

export interface ExpectPrintInput extends SurfaceInput, ProcessSettings {
  readonly areas: readonly ExpectArea[];
  readonly curve?: ExpectCurve | undefined;
  /** The whole answer of a fit, instead of a curve. */
  readonly fit?: Readonly<Record<string, unknown>> | undefined;
  /** Places the curve where nothing else says its x50. */
  readonly paper?: { readonly exposureIndex: number; readonly exposureIndexSdStops?: number | undefined } | undefined;
  readonly flashS?: number | undefined;
  /** log10 of the mean image exposure; left out, of the areas. */
  readonly meanLogExposure?: number | undefined;
  readonly lensCoating?: "coated" | "uncoated" | undefined;
  /** Moves all areas together. */
  readonly commonSdStops?: number | undefined;
  /** Unevenness of a patch, in density. */
  readonly patchSd?: number | undefined;
  /** How many curves to draw for the intervals; 0: the linear interval. */
  readonly draws?: number | undefined;
  readonly seed?: number | undefined;
  readonly wanted?: { readonly highlight: ExpectWanted; readonly shadow: ExpectWanted } | undefined;
}

export interface ExpectedArea {
  readonly area: string;
  readonly density: { readonly value: number; readonly sd: number };
  /** Nine in ten. */
  readonly interval: { readonly low: number; readonly high: number };
  /** The doubt as one of exposure; `null` where the curve is flat. */
  readonly sdStops: number | null;
  readonly lightness: number;
}

export interface ExpectReach {
  readonly lightest: number;
  readonly darkest: number;
}

export type ExpectRecommendation =
  | {
      readonly kind: "sceneLongerThanPaper" | "sceneShorterThanPaper";
      readonly exposureFactor: number;
      readonly exposureStops: number;
      readonly flashLxS: number;
      readonly flashS: number;
      readonly sceneRange: number;
      readonly paperRange: number;
      readonly byStops: number;
    }
  | { readonly kind: "toneOutOfReach"; readonly reach: ExpectReach };

export type ExpectWarning =
  | { readonly kind: "beyondPaper"; readonly area: string; readonly side: "white" | "black" }
  | { readonly kind: "flatShadow" }
  | { readonly kind: "shortSecondDevelopment" };

export interface ExpectPrint {
  readonly areas: readonly ExpectedArea[];
  /** Of the areas' densities. */
  readonly covariance: readonly (readonly number[])[];
  readonly reach: ExpectReach;
  /** `null` where nothing is wanted. */
  readonly recommendation: ExpectRecommendation | null;
  readonly warnings: readonly ExpectWarning[];
  readonly basis: "priors" | "curve" | "fit";
}
