import type { FieldSet, ShelfKind } from "@captray/notebook/records";
import { useState } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { goTo } from "../../../kit/goTo.ts";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import type { Texts } from "./formTypes.ts";

export interface ShelfSet {
  readonly id: string;
  readonly kind: ShelfKind;
  readonly set: FieldSet;
}

/** A form over one record: what is typed stays on the page until it is kept; keeping it is one change, and can be taken back. */
export function useForm({
  id,
  kind,
  stored,
}: {
  readonly id: string;
  readonly kind: ShelfKind;
  readonly stored: Texts;
}) {
  const notebook = useNotebook();
  const [typed, setTyped] = useState<Texts>({});
  const [freshIds] = useState(() => [notebook.newId(), notebook.newId(), notebook.newId()] as const);
  const isNew = id === "new";
  const [recordId, ...others] = isNew ? freshIds : ([id, freshIds[1], freshIds[2]] as const);
  return {
    texts: { ...stored, ...typed } as Texts,
    isNew,
    recordId,
    /** Ids for parts a new thing has from the start. */
    freshIds: others,
    on: (key: string) => (text: string) => setTyped((now) => ({ ...now, [key]: text })),
    put: (texts: Texts) => setTyped((now) => ({ ...now, ...texts })),
    /** Writes what has changed, in one change, and goes back to the shelf or where it is asked to. */
    keep: (sets: readonly ShelfSet[], note: string, to = "/shelf") => {
      const written = sets
        .map((one) => (isNew ? { ...one, set: { ...one.set, createdAt: { ...momentNow() } } } : one))
        .filter(({ set }) => Object.keys(set).length > 0);
      if (written.length > 0) notebook.change(written, note).kept.catch(() => undefined);
      goTo({ path: to });
    },
    putAway: (note: string) => {
      const set = { removedAt: { ...momentNow() } };
      notebook.change([{ id: recordId, kind, set }], note).kept.catch(() => undefined);
      goTo({ path: "/shelf" });
    },
  };
}
