import type { Json, Moment, RecordId } from "../../records/index.ts";
import { onDay } from "./demoDates.ts";
import type { DemoJournal } from "./demoJournal.ts";
import type { DemoShelf } from "./demoShelf.ts";

export type DemoScenes = ReturnType<typeof writeScenes>;

interface Area {
  readonly name: string;
  /** As the dial marks it, and the exact member of its series. */
  readonly text: string;
  readonly timeS: number;
}

const snow: Area = { name: "snow", text: "1/125", timeS: 1 / 128 };
const jug: Area = { name: "jug", text: "1/80", timeS: 2 ** (-19 / 3) };
const hull: Area = { name: "hull", text: "1/15", timeS: 1 / 16 };
const rope: Area = { name: "rope", text: "1/8", timeS: 1 / 8 };
const shedDoor: Area = { name: "shed door", text: "1", timeS: 1 };
const skiff = [snow, jug, hull, rope, shedDoor];

/** What the meter says of a time on its dial, at f/8 and ISO 100. */
export function dialReading({ text, timeS }: { readonly text: string; readonly timeS: number }): Json {
  return {
    way: "time",
    kind: "reflected",
    timeS: { value: timeS, text, mark: true },
    fNumber: { value: 8, text: "f/8", mark: true },
    iso: { value: 100, text: "100", mark: true },
  };
}

/** Sets up five subjects before the camera, each with its readings; the last has no sheet yet. Two more wait for next week. */
export function writeScenes(journal: DemoJournal, shelf: DemoShelf) {
  const positive = {
    result: "positive",
    paperBoxId: shelf.boxC,
    exposureIndexId: shelf.positiveC,
    recipeId: shelf.recipe4,
  } as const;
  const with210 = { lensId: shelf.lens210, stopId: shelf.stop210 };
  const with150 = { lensId: shelf.lens150, stopId: shelf.stop150 };
  const sideLight = write(onDay(29, 10, 46), "hull", [hull, rope], {
    ...positive,
    ...with210,
    subject: "Hull only, side light",
    where: "on the slip, from the water",
    focus: { by: "extension", extensionMm: { value: 252, text: "252" } },
    focusSdStops: 0.01,
  });
  const beforeTheShed = write(onDay(30, 14, 2), "hull", skiff, {
    ...positive,
    ...with210,
    subject: "Upturned skiff before the shed",
    where: "on the slip, shed behind",
    hourWanted: "early afternoon, thin cloud",
    stillS: { value: 60, text: "60" },
    focus: { by: "extension", extensionMm: { value: 248, text: "248" } },
    focusSdStops: 0.01,
    saidTime: { timeS: { value: 9, text: "9" } },
    notes: "The door will be empty black without flash: snow and door are 7 stops apart.",
  });
  const asNegative = write(onDay(31, 11, 18), "hull", skiff, {
    ...with210,
    result: "negative",
    paperBoxId: shelf.boxD,
    exposureIndexId: shelf.negativeD,
    recipeId: shelf.recipe1,
    subject: "The skiff as a paper negative",
    where: "on the slip, shed behind",
    focus: { by: "extension", extensionMm: { value: 248, text: "248" } },
    focusSdStops: 0.01,
    notes: "Nobody has measured Box D: a step test first.",
  });
  const ropeClose = write(onDay(31, 14, 34), "rope", [rope, { name: "between the coils", text: "1/2", timeS: 1 / 2 }], {
    ...positive,
    ...with150,
    subject: "Rope coils, close",
    where: "on the bollard",
    stillS: { value: 30, text: "30" },
    focus: { by: "extension", extensionMm: { value: 225, text: "225" } },
  });
  const notYet = write(
    onDay(31, 15, 5),
    "snow",
    [
      { name: "snow", text: "1/250", timeS: 1 / 256 },
      { name: "far bank", text: "1/60", timeS: 1 / 64 },
    ],
    {
      ...positive,
      ...with210,
      subject: "Snow on the slip",
      where: "from the shed door",
      hourWanted: "when the sun clears the shed, about 11",
      focus: { by: "distant" },
      notes: "No sheet yet. Snow two stops above mid.",
    },
    2,
  );
  write(onDay(31, 15, 20), "", [], {
    ...positive,
    cameraId: shelf.teaChest,
    lensId: shelf.pinhole,
    subject: "The slip from the tea chest",
    where: "on the bollard, low",
    hourWanted: "next week, any still grey day",
    focus: { by: "extension", extensionMm: { value: 150, text: "150" } },
    notes: "Pinhole. Nothing read yet: half an hour or half a day?",
  });
  write(onDay(31, 15, 26), "", [], {
    result: "negative",
    paperBoxId: shelf.boxC,
    exposureIndexId: shelf.negativeC,
    recipeId: shelf.recipe1,
    lensId: shelf.meniscus,
    stopId: shelf.stopMeniscus,
    subject: "White enamel jug on the sill",
    where: "in the shed, window to the left",
    hourWanted: "next week, when the snow lights the window",
    focus: { by: "magnification", magnification: { value: 0.5, text: "0.5" } },
    notes: "The reading glass: push the back in for blue light before the slide is drawn.",
  });
  return { sideLight, beforeTheShed, asNegative, ropeClose, notYet };

  function write(
    at: Moment,
    placed: string,
    areas: readonly Area[],
    set: Readonly<Record<string, Json>>,
    placedStops = 0,
  ): { readonly id: RecordId; readonly areaIds: ReadonlyMap<string, RecordId> } {
    const id = journal.idAt(at);
    const areaIds = new Map<string, RecordId>();
    const fields: Record<string, Json> = {
      outdoors: true,
      light: { source: "daylight:5500" },
      cameraId: shelf.camera,
      meterId: shelf.meter,
      handId: shelf.hand,
      createdAt: at,
      ...set,
    };
    for (const area of areas) {
      const areaId = journal.idAt(at);
      const readingId = journal.idAt(at);
      areaIds.set(area.name, areaId);
      fields[`areas.${areaId}.name`] = area.name;
      fields[`areas.${areaId}.readingId`] = readingId;
      fields[`readings.${readingId}.areaId`] = areaId;
      fields[`readings.${readingId}.reading`] = dialReading(area);
      fields[`readings.${readingId}.takenAt`] = at;
    }
    const placedId = areaIds.get(placed);
    if (placedId !== undefined) fields.place = { areaId: placedId, stops: placedStops };
    journal.write(at, areas.length > 0 ? "scene with its readings" : "scene for next week", [
      { id, kind: "scene", set: fields },
    ]);
    return { id, areaIds };
  }
}
