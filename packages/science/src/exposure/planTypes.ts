import type { LedgerFactsOf, LedgerLineName } from "../errors/ledgerFacts.ts";
import type { ReciprocityTable } from "./reciprocityFromTable.ts";

/** What may stand between subject and paper, as the spectra know it. */
export type GlassWord = "standard" | "simple" | "none";

/** A class of paper by the colours it sees; `blue` is a blue-sensitive paper of unknown make. */
export type SensitivityWord = "blue" | "chloride" | "chlorobromide" | "bromide" | "orthochromatic" | "variableContrast";

interface GlassInput {
  readonly transmission?: number | undefined;
  readonly transmissionSdStops?: number | undefined;
  readonly apertureSdStops?: number | undefined;
  readonly glass?: GlassWord | undefined;
}

/** A lens: its f-number, or the diameter of its entrance pupil. */
export interface PlanLens extends GlassInput {
  readonly kind?: "lens" | undefined;
  readonly focalLengthMm: number;
  readonly fNumber?: number | undefined;
  /** True if the f-number was read off the lens, and stands for the exact member of its series. */
  readonly fNumberMarked?: boolean | undefined;
  readonly diameterMm?: number | undefined;
  readonly pupilRatio?: number | undefined;
  /** What the mount says of an aperture that was measured: only to recognise a slip. */
  readonly markedFNumber?: number | undefined;
}

/** A hole in a card: its f-number is extension ÷ hole and holds the extension already. */
export interface PlanPinhole extends GlassInput {
  readonly kind: "pinhole";
  readonly holeMm: number;
  readonly extensionMm: number;
}

/** One way of saying how far the lens is racked out; none of them: distant. */
export interface PlanFocus {
  readonly extensionMm?: number | undefined;
  readonly travelMm?: number | undefined;
  readonly magnification?: number | undefined;
  readonly imageSizeMm?: number | undefined;
  readonly subjectSizeMm?: number | undefined;
  readonly subjectDistanceMm?: number | undefined;
  readonly totalDistanceMm?: number | undefined;
  readonly hiatusMm?: number | undefined;
  readonly larger?: boolean | undefined;
  readonly sdStops?: number | undefined;
}

/** What an exposure index found with one's own sheets already holds; a key left out means “as now”. */
export interface PlanFoundWith {
  readonly source?: string | undefined;
  readonly glass?: GlassWord | undefined;
  readonly transmission?: number | undefined;
}

export interface PlanPaper {
  readonly exposureIndex: number;
  readonly exposureIndexSdStops?: number | undefined;
  readonly sensitivity?: SensitivityWord | undefined;
  /** An exponent or a table; neither: a paper whose long exposures nobody has tested. */
  readonly reciprocity?:
    | {
        readonly exponent?: number | undefined;
        readonly fromS?: number | undefined;
        readonly table?: ReciprocityTable | undefined;
      }
    | undefined;
  /** None: the index was told or guessed, and every line counts. */
  readonly foundWith?: PlanFoundWith | undefined;
}

/** One reading, in one way: timeS with fNumber and iso, ev with iso, ev100, luminanceCdM2 or illuminanceLx. */
export interface PlanReading {
  readonly area?: string | undefined;
  readonly kind?: "reflected" | "incident" | undefined;
  readonly timeS?: number | undefined;
  readonly fNumber?: number | undefined;
  readonly iso?: number | undefined;
  readonly ev?: number | undefined;
  readonly ev100?: number | undefined;
  readonly luminanceCdM2?: number | undefined;
  readonly illuminanceLx?: number | undefined;
  /** The figure as it was typed (1/15): for the words of the ledger only. */
  readonly text?: string | undefined;
}

export interface PlanFilter {
  readonly name?: string | undefined;
  readonly neutralDensity?: number | undefined;
  readonly factor?: number | undefined;
  readonly stops?: number | undefined;
  readonly sdStops?: number | undefined;
}

export interface PlanMeter {
  readonly meterK?: number | undefined;
  readonly meterC?: number | undefined;
  readonly sdStops?: number | undefined;
  readonly readingSdStops?: number | undefined;
  /** The meter shows that much too much light: more time. */
  readonly offsetStops?: number | undefined;
  readonly clickStops?: number | undefined;
}

export interface PlanHand {
  /** What this hand gives too long on the whole (+). */
  readonly biasS?: number | undefined;
  readonly motorSdS?: number | undefined;
  readonly weber?: number | undefined;
  readonly errorS?: number | undefined;
  readonly toleranceStops?: number | undefined;
}

/** Everything `plan` asks for, with notation already read: numbers only. What is left out stands in `planDefaults`. */
export interface PlanInput {
  readonly lens: PlanLens | PlanPinhole;
  readonly focus?: PlanFocus | undefined;
  readonly paper: PlanPaper;
  readonly readings: readonly PlanReading[];
  readonly place?: { readonly area?: string | undefined; readonly stops?: number | undefined } | undefined;
  readonly meter?: PlanMeter | undefined;
  readonly filters?: readonly PlanFilter[] | undefined;
  readonly light?: { readonly source?: string | undefined } | undefined;
  readonly hand?: PlanHand | undefined;
  readonly saidTimeS?: number | undefined;
  readonly saidRoundingS?: number | undefined;
}

/** A quantity with its doubt, one standard deviation. */
export interface Estimate {
  readonly value: number;
  readonly sd: number;
}

export interface LedgerLine {
  readonly line: LedgerLineName;
  readonly stops: Estimate;
  /** One sentence with the numbers, lengths in mm. */
  readonly ground: string;
}

/** A ledger line with the numbers that `ledgerWords` speaks of. */
export type LedgerLineWithFacts = {
  readonly [Line in LedgerLineName]: LedgerLine & { readonly line: Line; readonly facts: LedgerFactsOf[Line] };
}[LedgerLineName];

export interface PlanArea {
  readonly area: string;
  readonly ev100: number;
  readonly aboveMidStops: number;
  readonly exposureLxS: number;
  readonly logExposure: number;
}

export interface PlanByHand {
  readonly how: "oneOpening" | "tooShort";
  readonly shortestS: number;
  readonly countS?: number;
  readonly countErrorStops?: number;
}

export interface PlanLevers {
  readonly stops: number;
  readonly neutralDensity: number;
  readonly lightFraction: number;
  /** Null for a pinhole, whose extension moves its f-number. */
  readonly magnification: number | null;
  readonly fNumber: number;
  readonly lampDistanceFactor: number;
}

export interface RankedSlips {
  /** Names of slips; none: agreement. */
  readonly slips: readonly string[];
  readonly share: number;
  readonly stops: number;
}

export interface SaidAnswer {
  readonly verdict: "agrees" | "slip" | "unknown";
  readonly offStops: number;
  readonly sdStops: number;
  readonly unknownShare: number;
  readonly ranked: readonly RankedSlips[];
}

export type PlanWarning =
  | { readonly kind: "tooShortForCap"; readonly timeS: number; readonly shortestS: number }
  | { readonly kind: "reciprocityExtrapolated"; readonly meteredTimeS: number }
  | { readonly kind: "pupilRatioUnusual"; readonly pupilRatio: number };

export interface PlanOptics {
  readonly fNumber: number;
  /** Null for a pinhole. */
  readonly magnification: number | null;
  readonly extensionMm: number;
  readonly effectiveFNumber: number;
}

export interface PlanAnswer {
  readonly timeS: number;
  readonly timeStops: Estimate;
  readonly timeIntervalS: { readonly low: number; readonly high: number };
  readonly optics: PlanOptics;
  readonly ledger: readonly LedgerLine[];
  readonly areas: readonly PlanArea[];
  readonly sceneRangeStops: number;
  readonly byHand: PlanByHand;
  readonly levers: PlanLevers | null;
  readonly said: SaidAnswer | null;
  readonly warnings: readonly PlanWarning[];
}

export interface PlanAnswerWithFacts extends PlanAnswer {
  readonly ledger: readonly LedgerLineWithFacts[];
}
