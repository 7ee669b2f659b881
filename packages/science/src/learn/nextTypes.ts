import type { PatchKind } from "../tone/patchOf.ts";
import type { CampaignInput } from "./fitTypes.ts";

/** What of a sheet can be changed: exposure and flash, the doses of both developments (in doublings), rounds of bleach. */
export interface LeverSettings {
  readonly stops: number;
  readonly flashS: number;
  readonly log2u1: number;
  readonly rounds: number;
  readonly log2u2: number;
}

export type Lever = keyof LeverSettings;

/** A patch that is no image. */
export type ControlKind = Exclude<PatchKind, "image">;

export interface SceneArea {
  readonly area: string;
  /** log10 lx·s at stops 0. */
  readonly logExposure: number;
  /** Density wanted. */
  readonly wanted: number;
  readonly weight?: number | undefined;
}

export type TestKind = "picture" | "stepTest" | "splitStepTest";

export interface CandidateInput {
  readonly name: string;
  /** What is left out is as now. */
  readonly settings?: { readonly [Name in Lever]?: number | undefined } | undefined;
  readonly controls?: readonly ControlKind[] | undefined;
  readonly test?: TestKind | undefined;
}

export interface NextSheetInput extends CampaignInput {
  readonly scene: readonly SceneArea[];
  readonly now?: { readonly [Name in Lever]?: number | undefined } | undefined;
  /** How many sheets after this one matter; 0: only this picture. */
  readonly horizon?: number | undefined;
  /** Of measuring the new patches, in density. */
  readonly newSd?: number | undefined;
  /** How far off the tones may be. */
  readonly tolerance?: number | undefined;
  /** The ones that may move. */
  readonly levers?: readonly Lever[] | undefined;
  /** Instead of the standard list. */
  readonly candidates?: readonly CandidateInput[] | undefined;
}

export interface RankedCandidate {
  readonly name: string;
  readonly test: TestKind;
  readonly settings: LeverSettings;
  readonly controls: readonly ControlKind[];
  /** What it teaches. */
  readonly bits: number;
  /** Doubt of the tones wanted at the best settings, before and after it. */
  readonly sdTargetsBefore: number;
  readonly sdTargetsAfter: number;
  /** How far off this sheet itself would probably be; a test is no picture: then as now. */
  readonly rmsSheet: number;
  /** How far off the following ones would be after it, and without it. */
  readonly rmsAfter: number;
  readonly rmsNow: number;
  /** Density gained over this sheet and those that follow. */
  readonly score: number;
}

export interface LeverEffect {
  readonly name: string;
  readonly settings: LeverSettings;
  readonly areas: readonly {
    readonly area: string;
    readonly change: { readonly value: number; readonly sd: number };
    readonly interval: { readonly low: number; readonly high: number };
  }[];
}

export interface NextSheet {
  /** By what is known now, the settings that come nearest to the tones wanted, and how far off they would probably be. */
  readonly best: { readonly settings: LeverSettings; readonly rms: number };
  /** By falling score. */
  readonly candidates: readonly RankedCandidate[];
  /** The picture with the best score. */
  readonly bestPicture: string;
  /** The most telling picture without patches that changes one thing; `null` where there is none. */
  readonly oneChange: string | null;
  readonly levers: readonly LeverEffect[];
  readonly stop: { readonly kind: "reached" | "notWorthThePaper" | "limitReached" } | null;
}
