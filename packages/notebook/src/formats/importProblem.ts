/** One thing in a file that cannot be taken as it is, and where it stands (a JSON pointer). */
export interface ImportProblem {
  readonly pointer: string;
  readonly code:
    | "notAChange"
    | "newerForm"
    | "unknownKind"
    | "unknownField"
    | "unfitValue"
    | "hostileKey"
    | "tooMuch"
    /** The name of this change stands twice in the file, with two contents. */
    | "twice"
    /** The notebook has a change of this name with another content. */
    | "otherContent"
    /** Written by a clock that was far ahead: it would win over everything written later. */
    | "fromTheFuture"
    /** A record says something else than the log, which is what counts. */
    | "recordDiffers";
  /** The words and numbers to make a sentence from. */
  readonly facts: Readonly<Record<string, string | number>>;
}

/** The file as a whole cannot be read. Lines and columns count from 1; both are 0 where it is not about a place. */
export interface ImportRefused {
  readonly kind: "refused";
  readonly code:
    | "notJson"
    | "truncated"
    | "tooLarge"
    | "notThisFormat"
    | "newerVersion"
    | "unknownField"
    | "hostileKey";
  readonly pointer: string;
  readonly line: number;
  readonly column: number;
  readonly facts: Readonly<Record<string, string | number>>;
}

/** A key as a part of a JSON pointer (RFC 6901). */
export function pointerPart(key: string | number): string {
  return `/${String(key).replaceAll("~", "~0").replaceAll("/", "~1")}`;
}
