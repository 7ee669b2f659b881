import type { OutOfDomain } from "@captray/science/errors";
import type { DrawnPapers, ExpectCurve, ExpectReach, Process } from "@captray/science/tone";
import type { RecordId, Scene } from "../records/index.ts";
import type { Kit } from "./kit.ts";
import type { MissingPart } from "./planInputOf.ts";
import type { PlanOf } from "./planOf.ts";

/** What is known of a paper beyond its box: a curve somebody measured, or the whole answer of a fit. */
export type MeasuredCurve = { readonly curve: ExpectCurve } | { readonly fit: Readonly<Record<string, unknown>> };

export interface ExpectedPrintAsked {
  readonly kit: Kit;
  readonly plan: PlanOf;
  /** Papers drawn for `papersAskedOf` of the same kit and plan; without them they are drawn at once, which takes longer than a frame. */
  readonly papers?: DrawnPapers | undefined;
  /** What a finger holds now; left out, what sheet or scene says, else the ledger's time and no flash. */
  readonly choice?: { readonly timeS?: number | undefined; readonly flashS?: number | undefined } | undefined;
  readonly measured?: MeasuredCurve | undefined;
}

export interface Interval {
  readonly low: number;
  readonly high: number;
}

export interface ExpectedPrintArea {
  readonly areaId: RecordId;
  readonly name: string;
  /** As metered, at the ledger's time: stops of picture light from the placed area. */
  readonly fromPlacedStops: number;
  /** Where its mark stands on the curve: all its light, flare and flash included, in stops from the placed area. */
  readonly atStops: number;
  /** `sd` is for exports; a screen shows the interval. */
  readonly density: { readonly value: number; readonly sd: number };
  /** Nine in ten. */
  readonly interval: Interval;
  readonly lightness: number;
  readonly beyondPaper: "white" | "black" | null;
  /** The same area under the other choice (see `ring` of the print). */
  readonly ring: { readonly atStops: number; readonly density: number; readonly lightness: number } | null;
  /** Of a negative: what a contact print from it shows there, the placed area on mid grey; about. */
  readonly contactPrint: {
    readonly printingDensity: number;
    readonly density: number;
    readonly lightness: number;
  } | null;
}

/** A point of the curve, and between what nine papers in ten lie there. */
export interface ExpectedPrintPoint {
  /** All light, in stops from the placed area. */
  readonly stops: number;
  readonly density: number;
  readonly low: number;
  readonly high: number;
}

export interface WantedTone {
  /** As shown: to the nearest 0.05, or the person's own. */
  readonly density: number;
  readonly own: boolean;
  /** All light that prints it, in stops from the placed area; `null`: this paper cannot. */
  readonly atStops: number | null;
  /** Where it is out of reach: the nearest that is not. */
  readonly nearest: number | null;
}

export type ExpectedPrintRecommendation =
  /** Both tones come as wanted. */
  | {
      readonly kind: "exposureAndFlash";
      readonly timeS: number;
      /** On the ledger's exposure. */
      readonly exposureStops: number;
      readonly flashS: number;
      /** Nine in ten, from the doubt of the lamp's rate. */
      readonly flashIntervalS: Interval;
    }
  /** Flash would help, and the lamp has no rate; the time for the wanted white without any. */
  | { readonly kind: "makeAFlashStrip"; readonly timeS: number; readonly exposureStops: number }
  /** The scene is shorter than the paper: flash cannot help; the time for the wanted white. */
  | { readonly kind: "exposureAlone"; readonly timeS: number; readonly exposureStops: number }
  | { readonly kind: "toneOutOfReach"; readonly tones: readonly ("highlight" | "shadow")[] };

export type ExpectedPrintVerdict =
  | {
      readonly kind: "sceneLongerThanPaper" | "sceneShorterThanPaper";
      readonly byStops: number;
      /** The scene as it falls on the paper, with its flare, without flash. */
      readonly sceneStops: number;
      readonly paperStops: number;
    }
  | {
      readonly kind: "toneOutOfReach";
      readonly tone: "highlight" | "shadow";
      readonly wanted: number;
      readonly nearest: number;
      readonly reach: ExpectReach;
    }
  | { readonly kind: "beyondPaper"; readonly area: string; readonly side: "white" | "black" }
  /** Neighbours in light that nobody could tell apart on the print (of a negative: on its contact print). */
  | { readonly kind: "printAlike"; readonly areas: readonly [lighter: string, darker: string] }
  /** The flash takes more than half of the contrast of the darkest area. */
  | { readonly kind: "flatShadow"; readonly area: string }
  | { readonly kind: "shortSecondDevelopment"; readonly dose: number }
  /** Flash is wished, and its lamp has no rate: it is not counted. */
  | { readonly kind: "flashNotTested"; readonly flashS: number };

export interface ExpectedPrint {
  readonly kind: "print";
  /** `assumed`: starting values and the exposure index; `curve`: a curve that was handed in; `fit`: measured prints. */
  readonly basis: "assumed" | "curve" | "fit";
  readonly process: Process;
  /** In the order of the scene. */
  readonly areas: readonly ExpectedPrintArea[];
  readonly ring: "withoutFlash" | "atTheLedgersTime" | null;
  /** An eighth of a stop apart, over all marks and at least −5 to +4; the drawing may cut it shorter. */
  readonly curve: readonly ExpectedPrintPoint[];
  /** What the placed area is meant to print, and where on the axis that stands (0 unless it is placed above or below mid). */
  readonly aim: { readonly density: number; readonly atStops: number };
  readonly reach: ExpectReach;
  readonly scene: {
    /** As metered. */
    readonly stops: number;
    /** As it falls on the paper now: with flare, and with the flash that is counted. */
    readonly onPaperStops: number;
    readonly fromStops: number;
    readonly toStops: number;
  };
  /** From the wanted black to the wanted white; `null` where one is out of reach. */
  readonly paper: { readonly stops: number; readonly fromStops: number; readonly toStops: number } | null;
  readonly wanted: { readonly highlight: WantedTone; readonly shadow: WantedTone };
  readonly time: {
    readonly ledgerS: number;
    readonly inHandS: number;
    /** Picture light at the time in hand against the ledger's; reciprocity counted. */
    readonly slidStops: number;
  };
  readonly flash: {
    /** 0 where the lamp has no rate. */
    readonly countedS: number;
    readonly wishedS: number;
    readonly when: NonNullable<Scene["flash"]>["when"] | null;
    /** Of the lamp named in the scene; `null`: untested, no seconds and no scale. */
    readonly rate: { readonly valueLx: number; readonly sdLn: number } | null;
    /** Nine in ten of the seconds counted, as the rate's doubt comes to. */
    readonly intervalS: Interval | null;
  };
  /** `null`: fewer than two areas that differ in light. */
  readonly recommendation: ExpectedPrintRecommendation | null;
  readonly verdicts: readonly ExpectedPrintVerdict[];
}

export type ExpectedPrintOf =
  | ExpectedPrint
  | { readonly kind: "missing"; readonly missing: readonly MissingPart[] }
  | { readonly kind: "refused"; readonly fault: OutOfDomain };
