import type { Kit, PlanOf, StepManner, StepStrip, StepTestIndex } from "@captray/notebook/answers";
import type { RecordSet, SheetCard } from "@captray/notebook/journal";
import type { ExposureIndex, Json, Moment, Test } from "@captray/notebook/records";
import { sheetForTheCap } from "../newSheet.ts";

export type FirstEdge = NonNullable<Test["firstEdge"]>;

/** A step test and the sheet that answers it, ready for the cap: one change, taken back whole. */
export function stepTestSets({
  kit,
  plan,
  strips,
  manner,
  firstEdge,
  cards,
  chosen,
  newId,
  now,
}: {
  readonly kit: Kit;
  readonly plan: Extract<PlanOf, { kind: "plan" }>;
  readonly strips: readonly StepStrip[];
  readonly manner: StepManner;
  readonly firstEdge: FirstEdge;
  readonly cards: readonly SheetCard[];
  readonly chosen: SheetCard | "new";
  readonly newId: () => string;
  readonly now: Moment;
}): { readonly sheetId: string; readonly sets: readonly RecordSet[] } {
  const sheet = sheetForTheCap({ kit, plan, cards, chosen, freshId: newId(), now });
  const testId = newId();
  const longestS = strips.at(-1)?.totalS ?? plan.answer.timeS;
  const planned = sheet.set.planned as Readonly<Record<string, Json>>;
  const levels: Record<string, Json> = {};
  for (const [order, { totalS, stops }] of strips.entries()) {
    const id = newId();
    levels[`levels.${id}.order`] = order;
    levels[`levels.${id}.plannedS`] = totalS;
    levels[`levels.${id}.stops`] = stops;
  }
  const test: RecordSet = {
    id: testId,
    kind: "test",
    set: {
      question: "step",
      name: "Step test",
      factor: "seconds at the cap",
      sceneId: kit.scene.id,
      ...(kit.paperBox && { paperBoxId: kit.paperBox.id }),
      ...(kit.exposureIndex && { exposureIndexId: kit.exposureIndex.id }),
      ...(kit.exposureIndex?.result && { result: kit.exposureIndex.result }),
      ...(kit.scene.recipeId && { recipeId: kit.scene.recipeId }),
      ...(kit.hand && { handId: kit.hand.id }),
      sheetIds: [sheet.id],
      manner,
      firstEdge,
      plannedAt: { ...now },
      createdAt: { ...now },
      ...levels,
    },
  };
  return {
    sheetId: sheet.id,
    sets: [test, { ...sheet, set: { ...sheet.set, testId, planned: { ...planned, timeS: longestS } } }],
  };
}

/** What the right strip says goes on the box: the index with its doubt and how it was found, and the answer on the test. */
export function indexFoundSets({
  test,
  index,
  answer,
  strip,
}: {
  readonly test: Test;
  readonly index: ExposureIndex;
  readonly answer: Extract<StepTestIndex, { kind: "found" }>;
  readonly strip: number;
}): readonly RecordSet[] {
  const { value, found, timeS } = answer;
  return [
    {
      id: index.id,
      kind: "exposureIndex",
      set: { value: { ...value }, text: null, found: JSON.parse(JSON.stringify(found)) as Json },
    },
    {
      id: test.id,
      kind: "test",
      set: { answer: { strip, timeS, exposureIndex: value.value, sdStops: value.sdStops } },
    },
  ];
}

/** The strip that was called right the last time: 2.5 lies between the second and the third. */
export function stripCalledRight({ test }: { readonly test: Test }): number | undefined {
  const { answer } = test;
  if (typeof answer !== "object" || answer === null || Array.isArray(answer)) return undefined;
  const { strip } = answer as { readonly strip?: Json };
  return typeof strip === "number" ? strip : undefined;
}
