import { type Kit, type PlanOf, sheetForCap } from "@captray/notebook/answers";
import type { Notebook, SheetCard } from "@captray/notebook/journal";
import { momentNow } from "../../devices/momentNow.ts";
import { wishToPersist } from "../../devices/storagePersist.ts";
import { goTo } from "../../kit/goTo.ts";
import { sheetForTheCap } from "./newSheet.ts";

interface CapInput {
  readonly notebook: Notebook;
  readonly kit: Kit;
  readonly plan: Extract<PlanOf, { kind: "plan" }>;
}

/** To the cap with the sheet that is loaded for it, or a new one; where several are loaded, first to the question which side. */
export function toTheCap({ notebook, kit, plan }: CapInput): void {
  const which = sheetForCap({
    holders: notebook.shelf("holder"),
    cards: notebook.cards(),
    sceneId: kit.scene.id,
    paperBoxId: kit.paperBox?.id,
  });
  if (which.kind === "which") goTo({ path: `/camera/which/${kit.scene.id}` });
  else withThisSheet({ notebook, kit, plan, chosen: which.kind === "this" ? which.sheet : "new" });
}

/** To the cap with the sheet that was chosen: the ledger of this moment is frozen on it. */
export function withThisSheet({
  notebook,
  kit,
  plan,
  chosen,
}: CapInput & { readonly chosen: SheetCard | "new" }): void {
  const sheet = sheetForTheCap({
    kit,
    plan,
    cards: notebook.cards(),
    chosen,
    freshId: notebook.newId(),
    now: momentNow(),
  });
  notebook.change([sheet], "Sheet ready for the cap").kept.catch(() => undefined);
  void wishToPersist();
  goTo({ path: `/camera/cap/${sheet.id}` });
}
