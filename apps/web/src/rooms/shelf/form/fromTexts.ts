import type { FieldSet, Json } from "@captray/notebook/records";
import { formatLength, type ReadAnswer } from "@captray/science/notation";
import type { FormPart, Texts } from "./formTypes.ts";

export interface Said {
  readonly value: number;
  readonly text: string;
  readonly mark: boolean;
}

/** What a text says, or nothing where it is empty or cannot be read. */
export function saidIn(text: string | undefined, read: (text: string) => ReadAnswer): Said | undefined {
  const answer = read(text ?? "");
  if (answer.kind !== "read" || !Number.isFinite(answer.value) || Math.abs(answer.value) > 1e14) return undefined;
  return { value: answer.value, text: (text ?? "").trim().slice(0, 60), mark: answer.marked === true };
}

/** Of a text its value alone. */
export function valueIn(text: string | undefined, read: (text: string) => ReadAnswer): number | undefined {
  return saidIn(text, read)?.value;
}

/** A length as a field shows it, in the unit of the house; a bare number is mm. */
export function lengthText(lengthMm: number | undefined, unit: "mm" | "inch"): string {
  if (lengthMm === undefined) return "";
  return unit === "inch" ? formatLength({ lengthMm, unit }) : String(Number(lengthMm.toPrecision(5)));
}

/** A figure as a field shows it. */
export function plainText(value: number | undefined): string {
  return value === undefined ? "" : String(Number(value.toPrecision(5)));
}

/** A new record leaves out what was not said; an old one has it cleared. */
export function cleared(set: Readonly<Record<string, Json | undefined>>, isNew: boolean): FieldSet {
  return Object.fromEntries(
    Object.entries(set).flatMap(([path, value]) =>
      value === undefined ? (isNew ? [] : [[path, null]]) : [[path, value]],
    ),
  );
}

/** Of what a form would write only what differs from what it would write untouched: the rest keeps its own digits and doubts. */
export function changedOnly({ was, now }: { readonly was: FieldSet; readonly now: FieldSet }): FieldSet {
  return Object.fromEntries(
    Object.entries(now).filter(([path, value]) => JSON.stringify(value) !== JSON.stringify(was[path] ?? null)),
  );
}

/** Why a form cannot be kept yet: the first field that cannot be read, or the first thing that cannot be. */
export function waitsFor({
  parts,
  texts,
}: {
  readonly parts: readonly FormPart[];
  readonly texts: Texts;
}): string | undefined {
  for (const part of parts) {
    for (const field of part.fields) {
      if (field.kind !== "figure") continue;
      if (field.read(texts[field.key] ?? "").kind === "unreadable") return `“${field.label}” to be mended or emptied`;
    }
    if (part.problem !== undefined) return part.problem.head;
  }
  return undefined;
}
