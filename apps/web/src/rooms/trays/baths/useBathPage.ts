import { type BathOnHand, bathWearOf } from "@captray/notebook/answers";
import type { Bath, FieldSet } from "@captray/notebook/records";
import { bathName } from "../../../kit/baths/bathWords.ts";
import { useBaths } from "../../../kit/baths/useBaths.ts";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";

/** One bath with its state, and the way to change it. */
export function useBathPage(id: string) {
  const notebook = useNotebook();
  const { onHand, all, nowMs, sheetM2, passedBy } = useBaths();
  const bath = all.find((one) => one.id === id);
  const state: BathOnHand | undefined =
    onHand.find((one) => one.bath.id === id) ?? (bath && gone(bath, nowMs, passedBy));
  const change = (set: FieldSet, note: string) => {
    if (bath === undefined) return;
    notebook.change([{ id: bath.id, kind: "bath", set }], `${bathName(bath)}: ${note}`).kept.catch(() => undefined);
  };
  return { state, nowMs, sheetM2, change };
}

function gone(bath: Bath, atMs: number, passedBy: ReturnType<typeof useBaths>["passedBy"]): BathOnHand {
  const wear = bathWearOf({ bath, atMs: bath.discardedAt?.at ?? atMs, passed: passedBy(bath) });
  return { bath, wear, isOffered: false, endsWithSitting: false };
}
