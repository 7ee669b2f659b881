import type { ReadAnswer } from "@captray/science/notation";
import type { BoardKind } from "../../../kit/boardState.ts";

/** What a form holds: texts as typed, choices by their words. */
export type Texts = Readonly<Record<string, string>>;

export interface Option {
  readonly value: string;
  readonly name: string;
  readonly detail?: string;
}

/** One field of a form, by the key its text is held under. */
export type FormField =
  | {
      readonly kind: "figure";
      readonly key: string;
      readonly label: string;
      readonly board: BoardKind;
      readonly read: (text: string) => ReadAnswer;
      readonly before?: string;
      readonly after?: string;
      readonly hint?: string;
      /** Said beside the field while it can be read. */
      readonly aside?: string;
    }
  | {
      readonly kind: "words";
      readonly key: string;
      readonly label: string;
      readonly hint?: string;
      readonly most?: number;
    }
  | { readonly kind: "choice"; readonly key: string; readonly label: string; readonly options: readonly Option[] };

/** A word to press under a part: to another page, or what it puts into the form. */
export type FormWay =
  | { readonly word: string; readonly to: string }
  | { readonly word: string; readonly puts: (fresh: () => string) => Texts };

export interface FormPart {
  readonly head: string;
  readonly aside?: string;
  /** Shut until it is asked for; open at once where something in it was said. */
  readonly folded?: boolean;
  readonly fields: readonly FormField[];
  /** What follows from what was typed, a sentence each. */
  readonly says?: readonly string[];
  /** What cannot be as it was typed. */
  readonly problem?: { readonly head: string; readonly words: string } | undefined;
  readonly ways?: readonly FormWay[];
}
