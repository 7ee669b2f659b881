import type { Kit, PlanOf } from "@captray/notebook/answers";
import type { RecordSet, SheetCard } from "@captray/notebook/journal";
import { type Json, nextSheetCode } from "@captray/notebook/records";

type Plan = Extract<PlanOf, { kind: "plan" }>;

/**
 * The sheet that goes to the cap: a new one with the next code, or the one of this scene that still waits to be exposed, with the ledger
 * frozen as it is now.
 */
export function sheetForTheCap({
  kit,
  plan,
  cards,
  chosen,
  freshId,
  now,
}: {
  readonly kit: Kit;
  readonly plan: Plan;
  readonly cards: readonly SheetCard[];
  /** The sheet that was chosen, or that it is to be a new one; without it the one that waits. */
  readonly chosen?: SheetCard | "new" | undefined;
  readonly freshId: string;
  readonly now: { readonly at: number; readonly offsetMin: number };
}): RecordSet {
  const waits = (card: SheetCard) =>
    card.links.sceneId === kit.scene.id && card.givenS === undefined && card.dates.exposedAt === undefined;
  const waiting = chosen === "new" ? undefined : (chosen ?? cards.find(waits));
  const { answer, input } = plan;
  const set: Record<string, Json> = {
    sceneId: kit.scene.id,
    planned: {
      // What the person slid it to; the ledger beside it says what it asks for.
      timeS: kit.scene.chosenTimeS?.value ?? answer.timeS,
      ledger: plainCopy(answer.ledger),
      input: plainCopy(input),
      answer: plainCopy({ ...answer, ledger: [] }),
      frozenAt: { ...now },
    },
  };
  if (waiting === undefined) {
    set.code = nextSheetCode({ codes: cards.map((card) => card.code) });
    set.createdAt = { ...now };
  }
  if (kit.lens) set.lensId = kit.lens.id;
  if (kit.scene.stopId) set.stopId = kit.scene.stopId;
  if (kit.scene.cameraId) set.cameraId = kit.scene.cameraId;
  if (kit.paperBox) set.paperBoxId = kit.paperBox.id;
  if (kit.exposureIndex) set.exposureIndexId = kit.exposureIndex.id;
  if (kit.exposureIndex?.result) set.result = kit.exposureIndex.result;
  if (kit.scene.recipeId) set.recipeId = kit.scene.recipeId;
  if (kit.hand) set.handId = kit.hand.id;
  const { flash } = kit.scene;
  // A sheet that had its flash already keeps what was planned for it.
  if (flash !== undefined && flash.timeS > 0 && waiting?.dates.flashedAt === undefined) set.flashPlanned = { ...flash };
  return { id: waiting?.id ?? freshId, kind: "sheet", set };
}

/** Plain data without the keys that are not there. */
function plainCopy(value: unknown): Json {
  return JSON.parse(JSON.stringify(value)) as Json;
}
