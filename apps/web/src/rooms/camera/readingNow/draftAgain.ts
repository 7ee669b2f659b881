import type { Kit } from "@captray/notebook/answers";
import { formatLength } from "@captray/science/notation";
import type { Draft } from "./draft.ts";
import { emptyDraft } from "./draft.ts";
import type { ShelfView } from "./draftRecords.ts";
import { knownKits } from "./kitTexts.ts";

/** The draft of “Again”: everything of the sheet's scene but what the meter says now. */
export function draftAgain({
  kit,
  shelf,
  lengthUnit,
}: {
  readonly kit: Kit;
  readonly shelf: ShelfView;
  readonly lengthUnit: "mm" | "inch";
}): Draft {
  const { scene, lens } = kit;
  const stopId = scene.stopId ?? lens?.stops[0]?.id;
  const known = knownKits(shelf, lengthUnit).find(({ key }) => key === `${lens?.id} ${stopId}`);
  const reading = scene.readings.find((one) => one.id === scene.areas[0]?.readingId)?.reading;
  const dial = reading?.way === "time" ? reading : undefined;
  return {
    ...emptyDraft,
    texts: {
      time: "",
      meterFNumber: dial?.fNumber.text ?? known?.meterFNumber ?? "",
      iso: dial?.iso.text ?? known?.iso ?? "",
      focalLength: known?.texts.focalLength ?? "",
      lensFNumber: known?.texts.lensFNumber ?? "",
      extension: extensionText(scene.focus, lengthUnit),
    },
    result: kit.exposureIndex?.result ?? scene.result,
    sceneId: scene.id,
    paperBoxId: kit.paperBox?.id,
    meterId: kit.meter?.id,
  };
}

function extensionText(focus: Kit["scene"]["focus"], unit: "mm" | "inch"): string {
  if (focus?.by === "distant") return "distant";
  if (focus?.by !== "extension") return "";
  return focus.extensionMm.text ?? formatLength({ lengthMm: focus.extensionMm.value, unit }).replace(/ mm$/, "");
}
