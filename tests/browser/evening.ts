import type { RecordSet } from "../../packages/notebook/src/journal/index.ts";
import { recipeFrames, recipeFromFrame } from "../../packages/notebook/src/starters/recipes/index.ts";

/** What an evening at the boatyard begins with: two negatives and three positives exposed, a recipe for each. */
export function evening(newId: () => string): readonly RecordSet[] {
  const recipes = ["paperNegativeRc", "directPositiveTwoTrays"].map((name) => {
    const frame = recipeFrames().find((one) => one.frame === name);
    if (frame === undefined) throw new Error(`no frame ${name}`);
    return { id: newId(), kind: "recipe" as const, set: recipeFromFrame({ frame }) };
  });
  const scene = { id: newId(), kind: "scene" as const, set: { subject: "snow on the slip" } };
  const sheets = ["W41", "W42", "W43", "W44", "W45"].map(
    (code, place): RecordSet => ({
      id: newId(),
      kind: "sheet",
      set: {
        code,
        result: place < 2 ? "negative" : "positive",
        sceneId: scene.id,
        exposedAt: { at: 1_764_940_000_000 + place * 600_000, offsetMin: 60 },
      },
    }),
  );
  return [...recipes, scene, ...sheets];
}
