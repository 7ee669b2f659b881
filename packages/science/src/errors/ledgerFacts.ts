/** The ten lines of the ledger, in their order. */
export type LedgerLineName =
  | "reading"
  | "place"
  | "aperture"
  | "extension"
  | "exposureIndex"
  | "transmission"
  | "filters"
  | "colourOfLight"
  | "longExposure"
  | "hand";

interface LineFacts {
  /** What the line adds to the time; + is more time. */
  readonly stops: number;
  /** One standard deviation. */
  readonly sd: number;
}

export interface ReadingFacts extends LineFacts {
  /** Null where readings were averaged or have no name. */
  readonly area: string | null;
  readonly averaged: number;
  readonly kind: "reflected" | "incident";
  readonly way: "timeS" | "ev" | "ev100" | "luminanceCdM2" | "illuminanceLx";
  /** The figure as read, in the unit of its way; of the first reading where several were averaged. */
  readonly read: number;
  readonly ev100: number;
  /** The time the meter would show at this f-number and ISO. */
  readonly timeS: number;
  readonly fNumber: number;
  readonly iso: number;
  readonly offsetStops: number;
  readonly meterSd: number;
  readonly readingSd: number;
  /** The figure as it was typed, where it was. */
  readonly text?: string;
}

export interface PlaceFacts extends LineFacts {
  readonly area: string | null;
  readonly averaged: number;
}

export interface ApertureFacts extends LineFacts {
  readonly kind: "lens" | "pinhole";
  readonly fNumber: number;
  readonly readingFNumber: number;
  readonly how: "marked" | "measured" | "diameter" | "hole";
  readonly focalLengthMm: number | null;
  /** Entrance pupil, or the pinhole itself. */
  readonly diameterMm: number;
  readonly extensionMm: number;
}

export interface ExtensionFacts extends LineFacts {
  readonly kind: "lens" | "pinhole";
  readonly way:
    | "distant"
    | "extensionMm"
    | "travelMm"
    | "magnification"
    | "imageSizeMm"
    | "subjectDistanceMm"
    | "totalDistanceMm";
  readonly magnification: number | null;
  readonly extensionMm: number;
  readonly focalLengthMm: number | null;
  /** From the front principal plane; null where distant. */
  readonly subjectDistanceMm: number | null;
  readonly pupilRatio: number;
}

export interface ExposureIndexFacts extends LineFacts {
  readonly exposureIndex: number;
  readonly dialIso: number;
  /** False where the light was read free of a dial. */
  readonly dial: boolean;
  readonly found: "ownSheets" | "toldOrGuessed";
}

export interface TransmissionFacts extends LineFacts {
  readonly transmission: number;
  /** That of the sheets the index was found with; null where it is not said. */
  readonly thenTransmission: number | null;
  readonly inIndex: boolean;
}

export interface FiltersFacts extends LineFacts {
  readonly filters: readonly {
    readonly name: string | null;
    readonly way: "neutralDensity" | "factor" | "stops";
    readonly value: number;
    readonly stops: number;
  }[];
}

export interface ColourOfLightFacts extends LineFacts {
  readonly source: string | null;
  readonly sensitivity: string;
  readonly glass: string;
  /** Stops the paper sees more than the meter in this light; null where no light was said. */
  readonly actinicStops: number | null;
  readonly thenSource: string | null;
  readonly thenGlass: string | null;
  readonly thenActinicStops: number | null;
  /** True where the index was found in this light. */
  readonly inIndex: boolean;
  /** True where the index was found with own sheets. */
  readonly ownSheets: boolean;
}

export interface LongExposureFacts extends LineFacts {
  readonly way: "unknown" | "exponent" | "table";
  readonly meteredTimeS: number;
  readonly timeS: number;
  readonly exponent: number | null;
  readonly fromS: number | null;
  readonly extrapolated: boolean;
}

export interface HandFacts extends LineFacts {
  readonly timeS: number;
  readonly sdS: number;
  readonly motorSdS: number;
  readonly weber: number;
  readonly biasS: number;
}

/** The numbers each ledger line speaks of. */
export interface LedgerFactsOf {
  readonly reading: ReadingFacts;
  readonly place: PlaceFacts;
  readonly aperture: ApertureFacts;
  readonly extension: ExtensionFacts;
  readonly exposureIndex: ExposureIndexFacts;
  readonly transmission: TransmissionFacts;
  readonly filters: FiltersFacts;
  readonly colourOfLight: ColourOfLightFacts;
  readonly longExposure: LongExposureFacts;
  readonly hand: HandFacts;
}

/** A line with its numbers. */
export type LedgerLineFacts = {
  readonly [Line in LedgerLineName]: { readonly line: Line; readonly facts: LedgerFactsOf[Line] };
}[LedgerLineName];
