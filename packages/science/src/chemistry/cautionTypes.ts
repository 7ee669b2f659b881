/** What a bath, a bottle or a room may hold, as far as cautions know it. */
export type Substance =
  | "acetic"
  | "acetone"
  | "acid"
  | "alcohol"
  | "alkali"
  | "ammonia"
  | "ammonium thiosulfate"
  | "bleach"
  | "citric"
  | "dichromate"
  | "fixer"
  | "h2o2"
  | "hydroquinone"
  | "hypochlorite"
  | "metabisulfite"
  | "metol"
  | "permanganate"
  | "silver"
  | "solvent"
  | "sulfite"
  | "sulfuric"
  | "thiosulfate";

/** What is being done: cautions are shown where the act is. */
export type CautionAct = "mix" | "store" | "run" | "discard" | "finish";

/** When a caution is due; all that is said must hold. */
export interface CautionWhen {
  /** This substance, from this strength up where one is said. */
  readonly has?: Substance;
  /** % w/w; included. */
  readonly minW?: number;
  readonly any?: readonly Substance[];
  readonly all?: readonly Substance[];
  /** One of these in the same bath, or beside it. */
  readonly with?: readonly Substance[];
  /** This in the room; also where nobody said what is in the room. */
  readonly room?: Substance;
  readonly act?: readonly CautionAct[];
  readonly form?: "powder";
}

export interface Caution {
  readonly id: string;
  /** Of one family only the strongest is shown; `rank` rises with the danger. */
  readonly family: string;
  readonly rank: number;
  readonly when: CautionWhen;
  readonly text: string;
  /** False: it stays wherever it applies, however often it was read. */
  readonly dismissible: boolean;
  /** Keys of docs/SOURCES.md. */
  readonly source: string;
}
