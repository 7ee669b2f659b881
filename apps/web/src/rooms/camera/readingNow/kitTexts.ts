import type { ExposureIndex, Lens, Scene } from "@captray/notebook/records";
import { formatLength, showFNumber } from "@captray/science/notation";
import type { KitTexts } from "./draft.ts";
import type { ShelfView } from "./draftRecords.ts";

/** A kit that was used before: its name on a press, and what a tap puts into the fields. */
export interface KnownKit {
  readonly key: string;
  readonly name: string;
  readonly texts: KitTexts;
  /** Meter fields as they were last set with it. */
  readonly meterFNumber?: string | undefined;
  readonly iso?: string | undefined;
}

/** The kits used so far, the last one first, and lenses on the shelf that were never used after them. */
export function knownKits(shelf: ShelfView, lengthUnit: "mm" | "inch"): KnownKit[] {
  const kits: KnownKit[] = [];
  const add = (lens: Lens | undefined, stopId: string | undefined, scene?: Scene) => {
    const stop = lens?.stops.find((one) => one.id === stopId) ?? lens?.stops[0];
    if (lens === undefined || stop === undefined || lens.sort === "pinhole") return;
    const key = `${lens.id} ${stop.id}`;
    if (kits.some((kit) => kit.key === key)) return;
    const texts = textsOf(lens, stop, scene, lengthUnit);
    if (texts !== undefined) kits.push({ key, ...texts });
  };
  for (const scene of [...shelf.scenes].reverse()) {
    add(
      shelf.lenses.find((lens) => lens.id === scene.lensId),
      scene.stopId,
      scene,
    );
  }
  for (const lens of [...shelf.lenses].reverse()) for (const stop of lens.stops) add(lens, stop.id);
  return kits;
}

function textsOf(
  lens: Lens,
  stop: Lens["stops"][number],
  scene: Scene | undefined,
  unit: "mm" | "inch",
): Omit<KnownKit, "key"> | undefined {
  const focal = lens.markedFocalLengthMm ?? lens.measuredFocalLengthMm;
  const fNumber = stop.marked?.value ?? stop.measuredFNumber?.value;
  if (focal === undefined || fNumber === undefined) return undefined;
  const focalLength =
    lens.markedFocalLengthMm?.text ?? formatLength({ lengthMm: focal.value, unit }).replace(/ mm$/, "");
  const lensFNumber =
    stop.marked?.text ?? (stop.marked ? showFNumber({ fNumber }).slice(2) : `${Number(fNumber.toPrecision(4))} as cut`);
  const reading = scene && lastReading(scene);
  return {
    name: `${lens.name === "" ? formatLength({ lengthMm: focal.value, unit }) : lens.name}, ${showFNumber({ fNumber })}`,
    texts: { focalLength, lensFNumber, result: scene?.result, paperBoxId: scene?.paperBoxId, meterId: scene?.meterId },
    ...(reading?.way === "time" && { meterFNumber: reading.fNumber.text ?? String(reading.fNumber.value) }),
    ...((reading?.way === "time" || reading?.way === "ev") && { iso: reading.iso.text ?? String(reading.iso.value) }),
  };
}

function lastReading(scene: Scene): Scene["readings"][number]["reading"] {
  const readingId = scene.areas[0]?.readingId;
  return scene.readings.find((one) => one.id === readingId)?.reading;
}

/** The index a kit's box has for a result, in words: “EI 1.4, own sheets”. */
export function indexWords(index: ExposureIndex | undefined, guess: number): string {
  if (index?.value === undefined) return `EI ${guess}, a guess`;
  const how = { guessed: "a guess", told: "told", ownSheets: "own sheets" }[index.found.how];
  return `EI ${Number(index.value.value.toPrecision(3))}, ${how}`;
}
