import { type FindsRecords, type FlashPaper, flashStripPlan } from "@captray/notebook/answers";
import type { Notebook, RecordSet } from "@captray/notebook/journal";
import type { ExposureIndex, FlashLamp, PaperBox, Recipe, Result, Test } from "@captray/notebook/records";
import { momentNow } from "../../../devices/momentNow.ts";
import { levelSets } from "../../../kit/timedLevels.ts";
import { paperSet } from "./flashRecords.ts";

/** Without a plan of its own a strip doubles from two seconds on. */
const plainTimesS = [2, 4, 8, 16, 32, 64];

/** A new flash strip, with the paper of the last one and the seconds that follow from it. */
export function newStrip({
  notebook,
  finds,
  lamp,
  strips,
}: {
  readonly notebook: Pick<Notebook, "newId" | "shelf">;
  readonly finds: FindsRecords;
  readonly lamp: FlashLamp;
  readonly strips: readonly Test[];
}): RecordSet {
  const last = strips.at(-1);
  const boxes = notebook.shelf("paperBox");
  const box = boxes.find(({ id }) => id === last?.paperBoxId) ?? boxes.at(0);
  const result = last?.result ?? "positive";
  const recipe = notebook.shelf("recipe").find(({ id }) => id === last?.recipeId);
  const paper = paperOf({ box, recipe, result, indexes: notebook.shelf("exposureIndex") });
  const plan = flashStripPlan({ notebook: finds, paper, flashLamp: lamp, strips });
  const timesS = plan.kind === "plan" ? plan.timesS : plainTimesS;
  return {
    id: notebook.newId(),
    kind: "test",
    set: {
      question: "flash",
      name: `Flash strip ${strips.length + 1}`,
      factor: "seconds of flash",
      flashLampId: lamp.id,
      firstEdge: last?.firstEdge ?? "left",
      ...paperSet(paper),
      ...levelSets(timesS, notebook.newId),
      plannedAt: { ...momentNow() },
      createdAt: { ...momentNow() },
    },
  };
}

/** What a strip is of, with the index of that box for that result: for the recipe where there is one of it. */
export function paperOf({
  box,
  recipe,
  result,
  indexes,
}: {
  readonly box: PaperBox | undefined;
  readonly recipe: Recipe | undefined;
  readonly result: Result;
  readonly indexes: readonly ExposureIndex[];
}): FlashPaper {
  const ofBox = indexes.filter((index) => index.paperBoxId === box?.id && index.result === result);
  const index = ofBox.find((one) => one.recipeId === recipe?.id) ?? ofBox.at(-1);
  return {
    ...(box && { paperBoxId: box.id }),
    ...(index && { exposureIndexId: index.id }),
    ...(recipe && { recipeId: recipe.id }),
    result,
  };
}
