import type { FieldSet, Holder, Json, Moment } from "@captray/notebook/records";
import { type Format, formatWords } from "./formatWords.ts";
import { readFormat } from "./readFormat.ts";

/** What stands in a holder's form. */
export interface HolderDraft {
  readonly name: string;
  readonly format: string;
  readonly sides: readonly { readonly id: string; readonly name: string }[];
}

/** A holder as its form shows it; a new one is the next number, with sides A and B, of the size used last. */
export function holderDraft({
  holder,
  holders,
  format,
  freshIds,
}: {
  readonly holder: Holder | undefined;
  readonly holders: readonly Holder[];
  /** The size that a new one starts with. */
  readonly format: Format | undefined;
  readonly freshIds: readonly string[];
}): HolderDraft {
  if (holder !== undefined) {
    const { name, sides } = holder;
    return {
      name,
      format: holder.format ? formatWords({ format: holder.format }) : "",
      sides: sides.map((side) => ({ id: side.id, name: side.name })),
    };
  }
  return {
    name: String(nextNumber(holders)),
    format: format ? formatWords({ format }) : "",
    sides: freshIds.slice(0, 2).map((id, place) => ({ id, name: nextSide(place) })),
  };
}

/** The letter of the next side: A, B, … Z, then 27. */
export function nextSide(place: number): string {
  return place < 26 ? String.fromCharCode(65 + place) : String(place + 1);
}

/** What keeping the form writes; sides that are gone from it are removed. */
export function holderSet({
  draft,
  holder,
  now,
}: {
  readonly draft: HolderDraft;
  readonly holder: Holder | undefined;
  readonly now: Moment;
}): FieldSet {
  const { format } = readFormat({ text: draft.format });
  const set: Record<string, Json> = { name: draft.name.trim() || "1" };
  if (format) set.format = { ...format };
  else if (holder?.format && draft.format.trim() === "") set.format = null;
  if (holder === undefined) set.createdAt = { ...now };
  for (const [place, { id, name }] of draft.sides.entries()) set[`sides.${id}.name`] = name.trim() || nextSide(place);
  for (const { id } of holder?.sides ?? []) {
    if (!draft.sides.some((side) => side.id === id)) set[`sides.${id}.removedAt`] = { ...now };
  }
  return set;
}

function nextNumber(holders: readonly Holder[]): number {
  return Math.max(0, ...holders.flatMap(({ name }) => (/^\d{1,4}$/.test(name) ? [Number(name)] : []))) + 1;
}
