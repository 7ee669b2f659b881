import type { FieldSet, ShelfKind } from "@captray/notebook/records";
import { useState } from "react";
import { momentNow } from "../../devices/momentNow.ts";
import { goTo } from "../../kit/goTo.ts";
import { useNotebook } from "../../kit/notebook/useNotebook.ts";
import type { Texts } from "./forms.ts";

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
  const [freshId] = useState(() => notebook.newId());
  const [freshStopId] = useState(() => notebook.newId());
  const isNew = id === "new";
  const recordId = isNew ? freshId : id;
  const texts: Texts = { ...stored, ...typed };
  return {
    texts,
    isNew,
    recordId,
    freshStopId,
    changed: Object.keys(typed).some((key) => typed[key] !== stored[key]),
    on: (key: string) => (text: string) => setTyped((now) => ({ ...now, [key]: text })),
    keep: (
      sets: readonly { readonly id: string; readonly kind: ShelfKind; readonly set: FieldSet }[],
      note: string,
    ) => {
      const [first, ...rest] = sets;
      if (first === undefined) return;
      const set = isNew ? { ...first.set, createdAt: { ...momentNow() } } : first.set;
      notebook.change([{ ...first, set }, ...rest], note).kept.catch(() => undefined);
      goTo({ path: "/shelf" });
    },
    putAway: (note: string) => {
      notebook
        .change([{ id: recordId, kind, set: { removedAt: { ...momentNow() } } }], note)
        .kept.catch(() => undefined);
      goTo({ path: "/shelf" });
    },
  };
}
