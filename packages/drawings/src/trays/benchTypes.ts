/** One visit of the sheets in hand to a station: a stroke over the tray. */
export type Visit = "done" | "now" | "toCome";

/** What lies in a station now. */
export interface Lying {
  readonly codes: readonly string[];
  /** What is left, as it is read: "1:42"; without it only the sheets are named. */
  readonly figure?: string | undefined;
  /** Of the time there, 0 to 1. */
  readonly leftShare: number;
}

/** One place of the bench, in the order the hand walks. */
export interface Station {
  readonly id: string;
  readonly name: string;
  /** A tray, or the place where white light is given. */
  readonly kind: "tray" | "light";
  /** Gone through again and again with its neighbours, until no dark silver is left. */
  readonly isInRound: boolean;
  readonly visits: readonly Visit[];
  readonly lying?: Lying | undefined;
}

/** The station of the next move, drawn large: its inner rim is the clock. */
export interface OpenStation {
  readonly id: string;
  readonly codes: readonly string[];
  readonly figure: string;
  readonly leftShare: number;
  /** Where on the clock the sheet is lifted out, as a share of the time from its beginning. */
  readonly liftShare?: number | undefined;
  /** When it is rocked, the same way. */
  readonly rockShares: readonly number[];
}

export interface BenchInput {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Of the smallest letters. */
  readonly letterPx: number;
  readonly stations: readonly Station[];
  /** Over the bracket: "bleach round 2 of 3". */
  readonly roundWords?: string | undefined;
  readonly open?: OpenStation | undefined;
  /** The same in a sentence. */
  readonly says: string;
}
