import { type FlashThresholdInput, widthForRange } from "@captray/science/tone";
import type { RecordOf, ShelfKind, Test } from "../records/index.ts";
import type { FindsRecords } from "./kitOf.ts";

/** What a flash strip is of: box, index, recipe and what comes out. */
export type FlashPaper = Pick<Test, "paperBoxId" | "exposureIndexId" | "recipeId" | "result">;

/** Doubt of the logarithm of a curve's width where the maker's range is known. */
const widthSdLn = 0.08;

/** The paper of a flash strip as the science of flash asks for it; what nobody said is taken as assumed. Inner helper. */
export function flashPaperOf(notebook: FindsRecords, paper: FlashPaper): FlashThresholdInput {
  const find = <K extends ShelfKind>(kind: K, id: string | undefined): RecordOf<K> | undefined => {
    const found = id === undefined ? undefined : notebook.peek(id);
    return found?.kind === kind ? (found as RecordOf<K>) : undefined;
  };
  const box = find("paperBox", paper.paperBoxId);
  const index = find("exposureIndex", paper.exposureIndexId);
  const recipe = find("recipe", paper.recipeId);
  const result = paper.result ?? index?.result;
  const finish = box?.finish;
  return {
    ...(finish && { finish }),
    process: result === "negative" ? "negative" : "reversal",
    ...(recipe?.firstDevelopmentDose !== undefined && { u1: recipe.firstDevelopmentDose }),
    ...(recipe?.bleachRounds !== undefined && { rounds: recipe.bleachRounds }),
    ...(recipe?.secondDevelopmentDose !== undefined && { u2: recipe.secondDevelopmentDose }),
    ...(index?.value && { paper: { exposureIndex: index.value.value, exposureIndexSdStops: index.value.sdStops } }),
    ...(box?.isoRange !== undefined && {
      curve: { width: { value: widthForRange({ range: box.isoRange, ...(finish && { finish }) }), sd: widthSdLn } },
    }),
  };
}
