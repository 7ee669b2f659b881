import type { AnyRecord, Hand, RecordOf, Scene, Sheet, ShelfKind } from "../records/index.ts";
import type { Kit } from "./kit.ts";

/** Whatever can find a Shelf record by its id: the notebook, or a table made for a test. */
export interface FindsRecords {
  peek(id: string): AnyRecord | undefined;
  /** Where it is known: the hands, oldest first. */
  shelf?(kind: "hand"): readonly Hand[];
}

/**
 * The records a scene names, and where a sheet says otherwise the sheet's.
 *
 * A record that is named and cannot be found is left out, as if it had not been named. Where no hand is named it is the first one's.
 */
export function kitOf({
  notebook,
  scene,
  sheet,
}: {
  readonly notebook: FindsRecords;
  readonly scene: Scene;
  readonly sheet?: Sheet | undefined;
}): Kit {
  const find = <K extends ShelfKind>(kind: K, id: string | undefined): RecordOf<K> | undefined => {
    const found = id === undefined ? undefined : notebook.peek(id);
    return found?.kind === kind ? (found as RecordOf<K>) : undefined;
  };
  const exposureIndex = find("exposureIndex", sheet?.exposureIndexId ?? scene.exposureIndexId);
  const found = exposureIndex?.found;
  const flash = sheet?.flashPlanned ?? scene.flash;
  const meter = find("meter", scene.meterId);
  const meterThen = found?.how === "ownSheets" ? find("meter", found.meterId) : undefined;
  return {
    scene,
    lens: find("lens", sheet?.lensId ?? scene.lensId),
    meter,
    paperBox: find("paperBox", sheet?.paperBoxId ?? scene.paperBoxId ?? exposureIndex?.paperBoxId),
    exposureIndex,
    hand: find("hand", sheet?.handId ?? scene.handId) ?? notebook.shelf?.("hand")[0],
    recipe: find("recipe", sheet?.recipeId ?? scene.recipeId ?? exposureIndex?.recipeId),
    flash,
    flashLamp: find("flashLamp", flash?.flashLampId),
    meterThen: meterThen?.id === meter?.id ? undefined : meterThen,
  };
}
