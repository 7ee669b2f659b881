import type { RecordSet } from "@captray/notebook/journal";
import { type AnyRecord, kinds } from "@captray/notebook/records";

/**
 * The record as it will be once a set is kept: what a page reckons with before anything is written.
 *
 * A new record starts from its kind's starting values; null clears a field; items of lists are changed or added by their id.
 */
export function withSet<R extends AnyRecord>(base: R | undefined, { id, kind, set }: RecordSet): R {
  const whole: Record<string, unknown> = { ...(base ?? kinds[kind].assemble(id, new Map())) };
  for (const [path, value] of Object.entries(set)) {
    const [field = "", itemId, part] = path.split(".");
    if (itemId === undefined || part === undefined) {
      if (value === null) delete whole[field];
      else whole[field] = value;
      continue;
    }
    const items = whole[field] as readonly { readonly id: string }[];
    const there = items.find((item) => item.id === itemId) ?? { id: itemId };
    const next = { ...there, [part]: value };
    whole[field] = items.some((item) => item.id === itemId)
      ? items.map((item) => (item.id === itemId ? next : item))
      : [...items, next];
  }
  return whole as R;
}
