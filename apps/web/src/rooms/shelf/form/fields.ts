import type { ReadAnswer } from "@captray/science/notation";
import type { FormField, Option } from "./formTypes.ts";
import { readMm, readStop } from "./readers.ts";

interface Said {
  readonly hint?: string;
  readonly aside?: string;
  readonly before?: string;
  readonly after?: string;
}

/** A length. */
export function mm(key: string, label: string, said: Said = {}): FormField {
  return { kind: "figure", key, label, board: "mm", read: readMm, after: "mm", ...said };
}

/** An f-number. */
export function stop(key: string, label: string, said: Said = {}): FormField {
  return { kind: "figure", key, label, board: "fNumber", read: readStop, before: "f/", ...said };
}

/** Any other figure. */
export function figure(key: string, label: string, read: (text: string) => ReadAnswer, said: Said = {}): FormField {
  return { kind: "figure", key, label, board: "number", read, ...said };
}

/** Several figures in a row, parted by spaces. */
export function several(key: string, label: string, read: (text: string) => ReadAnswer, said: Said = {}): FormField {
  return { kind: "figure", key, label, board: "several", read, ...said };
}

/** Words. */
export function words(key: string, label: string, hint?: string, most?: number): FormField {
  return { kind: "words", key, label, ...(hint !== undefined && { hint }), ...(most !== undefined && { most }) };
}

/** One of a few. */
export function choice(key: string, label: string, options: readonly Option[]): FormField {
  return { kind: "choice", key, label, options };
}
