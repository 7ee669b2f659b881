/** What a field takes, and so which keys its number board has. */
export type BoardKind = "time" | "fNumber" | "ev" | "mm" | "number" | "several";

/** A key of the board: its face, what it does, and what a screen reader says. */
export interface BoardKey {
  readonly face: string;
  readonly spoken: string;
  /** Signs it adds where the caret stands. */
  readonly adds?: string;
  /** A word that takes the place of whatever stood there. */
  readonly says?: string;
}

const half = { face: "1/2", spoken: "a half", adds: "½" };
const third = { face: "1/3", spoken: "a third", adds: "⅓" };
const twoThirds = { face: "2/3", spoken: "two thirds", adds: "⅔" };

const keys: Readonly<Record<BoardKind, readonly BoardKey[]>> = {
  time: [
    { face: "1/", spoken: "one over", adds: "1/" },
    { face: "s", spoken: "seconds", adds: " s" },
    { face: "min", spoken: "minutes", adds: "m" },
    half,
  ],
  fNumber: [third, half, twoThirds, { face: "as cut", spoken: "as cut: measured, not marked", adds: " as cut" }],
  ev: [third, half, twoThirds, { face: "−", spoken: "minus", adds: "−" }],
  mm: [
    { face: "distant", spoken: "distant", says: "distant" },
    { face: "inch", spoken: "inch", adds: " in" },
  ],
  number: [],
  several: [{ face: "and", spoken: "and another", adds: " " }],
};

/** The keys at the right of the board, by what the field takes. */
export function boardKeys({ kind }: { readonly kind: BoardKind }): readonly BoardKey[] {
  return keys[kind];
}

export interface Typed {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/** What stands in the field after a key, and where the caret is. */
export function typeOnBoard({ field, key }: { readonly field: Typed; readonly key: BoardKey | "rub out" }): Typed {
  const { text, start, end } = field;
  if (key === "rub out") {
    const from = start === end ? Math.max(0, start - 1) : start;
    return { text: text.slice(0, from) + text.slice(end), start: from, end: from };
  }
  if (key.says !== undefined) return { text: key.says, start: key.says.length, end: key.says.length };
  const adds = key.adds ?? key.face;
  const caret = start + adds.length;
  return { text: text.slice(0, start) + adds + text.slice(end), start: caret, end: caret };
}
