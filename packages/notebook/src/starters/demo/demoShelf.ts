import type { RecordSet } from "../../journal/notebook.ts";
import type { Json, RecordId } from "../../records/index.ts";
import { onDay } from "./demoDates.ts";
import type { DemoJournal } from "./demoJournal.ts";
import { demoRecipe } from "./demoRecipe.ts";

const since = onDay(8, 18, 30);

export type DemoShelf = ReturnType<typeof writeShelf>;

/** Puts camera, lenses, meter, holders, paper and hand on the shelf; gives the ids that scenes and sheets need. */
export function writeShelf(journal: DemoJournal) {
  const newId = () => journal.idAt(since);
  const id = {
    camera: newId(),
    lens210: newId(),
    stop210: newId(),
    lens150: newId(),
    stop150: newId(),
    meter: newId(),
    lamp: newId(),
    holder2: newId(),
    side2a: newId(),
    side2b: newId(),
    holder3: newId(),
    side3a: newId(),
    side3b: newId(),
    boxC: newId(),
    boxD: newId(),
    positiveC: newId(),
    negativeC: newId(),
    positiveD: newId(),
    negativeD: newId(),
    hand: newId(),
    teaChest: newId(),
    pinhole: newId(),
    meniscus: newId(),
    stopMeniscus: newId(),
    recipe4: newId(),
    recipe1: newId(),
    flashLamp: newId(),
    flashStrip: newId(),
    secondHand: newId(),
  };
  const sheet13x18 = { widthMm: 130, heightMm: 180 };
  const things: RecordSet[] = [
    {
      id: id.camera,
      kind: "camera",
      set: {
        name: "the box with the red bellows",
        format: sheet13x18,
        extensionLimits: { leastMm: 140, mostMm: 420 },
        lastExtension: { value: 248, text: "248" },
        createdAt: since,
        notes: "A winter at a small river boatyard: invented, like everything in this notebook.",
      },
    },
    {
      id: id.lens210,
      kind: "lens",
      set: {
        name: "210 mm",
        sort: "lens",
        markedFocalLengthMm: { value: 210, text: "210" },
        glass: "standard",
        transmission: { value: 0.83, sdStops: 0.1 },
        imageCircleMm: 260,
        [`stops.${id.stop210}.name`]: "the only one",
        [`stops.${id.stop210}.marked`]: { value: 2 ** 3.5, text: "f/11", mark: true },
        [`stops.${id.stop210}.measuredFNumber`]: { value: 11.4, sdStops: 0.03 },
        [`stops.${id.stop210}.diameterMm`]: { value: 18.4, sd: 0.18 },
        createdAt: since,
        notes: "Four bare glass surfaces. The pupil was measured from the front with a ruler, 18.4 mm.",
      },
    },
    {
      id: id.lens150,
      kind: "lens",
      set: {
        name: "150 mm",
        sort: "lens",
        markedFocalLengthMm: { value: 150, text: "150" },
        infinityExtensionMm: { value: 152, sd: 0.5 },
        glass: "standard",
        imageCircleMm: 210,
        [`stops.${id.stop150}.name`]: "wide open",
        [`stops.${id.stop150}.marked`]: { value: 8, text: "f/8", mark: true },
        assumed: ["glass"],
        createdAt: since,
        notes: "From a broken folding camera. Nothing of it is measured but where it stands for the far bank.",
      },
    },
    {
      id: id.teaChest,
      kind: "camera",
      set: {
        name: "the tea chest",
        format: sheet13x18,
        extensionLimits: { leastMm: 150, mostMm: 150 },
        createdAt: since,
        notes: "No bellows: the board stands where it stands.",
      },
    },
    {
      id: id.pinhole,
      kind: "lens",
      set: {
        name: "pinhole in tin",
        sort: "pinhole",
        glass: "none",
        holeMm: { value: 0.42, sd: 0.02 },
        createdAt: since,
        notes: "Drilled in the lid of a tea tin; measured under a linen tester.",
      },
    },
    {
      id: id.meniscus,
      kind: "lens",
      set: {
        name: "reading glass, 4 dioptres",
        sort: "lens",
        markedFocalLengthMm: { value: 250, text: "250" },
        glass: "simple",
        imageCircleMm: 190,
        chemicalFocus: { correction: "single", found: "assumed" },
        [`stops.${id.stopMeniscus}.name`]: "card, 11 mm",
        [`stops.${id.stopMeniscus}.diameterMm`]: { value: 11, sd: 0.2 },
        assumed: ["imageCircleMm", "chemicalFocus"],
        createdAt: since,
        notes:
          "One glass, its hollow side to the front, the card before it. What the eye finds sharp, blue light does not.",
      },
    },
    {
      id: id.meter,
      kind: "meter",
      set: {
        name: "the grey one",
        reads: "reflected",
        lowestIso: 25,
        meterK: 12.5,
        readingSdStops: 0.15,
        clickStops: 1 / 3,
        assumed: ["meterK"],
        createdAt: since,
        notes: "Its dial ends at ISO 25, some four stops above this paper. Read at 100 all winter.",
      },
    },
    {
      id: id.lamp,
      kind: "lamp",
      set: { name: "desk lamp", sort: "filament", source: "filament:2700", createdAt: since },
    },
    {
      id: id.holder2,
      kind: "holder",
      set: {
        name: "2",
        format: sheet13x18,
        [`sides.${id.side2a}.name`]: "A",
        [`sides.${id.side2b}.name`]: "B",
        createdAt: since,
      },
    },
    {
      id: id.holder3,
      kind: "holder",
      set: {
        name: "3",
        format: sheet13x18,
        [`sides.${id.side3a}.name`]: "A",
        [`sides.${id.side3b}.name`]: "B",
        createdAt: since,
        notes: "Side A is stiff: push until it clicks.",
      },
    },
    {
      id: id.boxC,
      kind: "paperBox",
      set: {
        name: "Box C",
        size: sheet13x18,
        sheetsLeft: 14,
        sheetsWhenFull: 25,
        sensitivity: "blue",
        grade: "1",
        finish: "gloss",
        openedAt: onDay(9, 19, 0),
        createdAt: onDay(9, 19, 0),
        notes: "25 when it was opened.",
      },
    },
    {
      id: id.boxD,
      kind: "paperBox",
      set: {
        name: "Box D",
        size: sheet13x18,
        sheetsLeft: 23,
        sheetsWhenFull: 25,
        sensitivity: "variableContrast",
        contrastFilters: [
          { name: "soft", isoRange: 160, extraStops: 1 },
          { name: "normal", isoRange: 110, extraStops: 1 },
          { name: "hard", isoRange: 70, extraStops: 2 },
        ],
        assumed: ["contrastFilters"],
        createdAt: onDay(30, 17, 10),
        notes: "25 when it was opened. Nothing measured yet.",
      },
    },
    {
      id: id.positiveC,
      kind: "exposureIndex",
      set: {
        paperBoxId: id.boxC,
        result: "positive",
        recipeId: id.recipe4,
        value: { value: 1.4, sdStops: 0.15 },
        text: "1.4",
        found: {
          how: "ownSheets",
          source: "daylight:5500",
          glass: "standard",
          meterId: id.meter,
          timesS: [6, 9, 12.5, 13, 18, 26],
        },
        createdAt: onDay(28, 21, 0),
        notes: "Six sheets, W22 to W27, made before this notebook was begun: 210 mm lens, daylight.",
      },
    },
    guess(id.negativeC, id.boxC, "negative", 2, id.recipe1),
    guess(id.positiveD, id.boxD, "positive", 0.7, id.recipe4),
    guess(id.negativeD, id.boxD, "negative", 2, id.recipe1),
    {
      id: id.recipe1,
      kind: "recipe",
      set: {
        ...demoRecipe({ frame: "paperNegativeRc", developS: 120 }),
        name: "recipe 1",
        firstDevelopmentDose: 1,
        createdAt: since,
        notes: "Paper developer as mixed, two minutes.",
      },
    },
    {
      id: id.recipe4,
      kind: "recipe",
      set: {
        ...demoRecipe({ frame: "directPositiveTwoTrays", developS: 120, mostRounds: 4 }),
        name: "recipe 4",
        firstDevelopmentDose: 1,
        bleachRounds: 3,
        secondDevelopmentDose: 1,
        createdAt: since,
        notes: "Three rounds of bleach. A fourth is to be tried.",
      },
    },
    {
      id: id.hand,
      kind: "hand",
      set: {
        name: "the hand at the cap",
        toTicks: { biasS: { value: 0, sd: 0.07 }, motorSdS: 0.1, weber: 0.033, openings: 40, by: "cap" },
        counted: {
          biasS: { value: 0, sd: 0.1 },
          rate: { value: 0.95, sd: 0.01 },
          motorSdS: 0.1,
          weber: 0.04,
          openings: 24,
          by: "cap",
        },
        createdAt: onDay(22, 16, 0),
      },
    },
    {
      id: id.secondHand,
      kind: "hand",
      set: {
        name: "the hand that helps",
        toTicks: { biasS: { value: 0.2, sd: 0.1 }, motorSdS: 0.16, weber: 0.06, openings: 12, by: "touch" },
        createdAt: onDay(22, 16, 40),
      },
    },
    {
      id: id.flashLamp,
      kind: "flashLamp",
      set: {
        name: "desk lamp, 2 m, three tissues",
        lampId: id.lamp,
        distanceMm: { value: 2000, text: "2 m" },
        diffuser: "three tissues",
        where: "from the top of the cellar stairs",
        createdAt: onDay(30, 17, 30),
      },
    },
  ];
  const atOnce = (wanted: readonly string[]) => things.filter((one) => wanted.includes(one.kind));
  journal.write(since, "camera, lenses, meter and holders", atOnce(["camera", "lens", "meter", "lamp", "holder"]));
  journal.write(since, "recipes", atOnce(["recipe"]));
  journal.write(
    onDay(9, 19, 0),
    "a box of paper",
    things.filter((one) => one.id === id.boxC),
  );
  journal.write(onDay(22, 16, 0), "cap practice", atOnce(["hand"]));
  journal.write(
    onDay(28, 21, 0),
    "exposure index of Box C from six sheets",
    things.filter((one) => one.id === id.positiveC || one.id === id.negativeC),
  );
  journal.write(
    onDay(30, 17, 12),
    "another box of paper",
    things.filter((one) => [id.boxD, id.positiveD, id.negativeD].includes(one.id as RecordId)),
  );
  journal.write(onDay(30, 17, 30), "a lamp to flash with", atOnce(["flashLamp"]));
  writeFlashStrip(journal, id);
  return id;
}

/** Steps of flash alone in seconds, each with the density it was measured at afterwards; the first had none. */
export const flashSteps = [
  { timeS: 0, density: 2 },
  { timeS: 2, density: 1.99 },
  { timeS: 3, density: 1.97 },
  { timeS: 4, density: 1.94 },
  { timeS: 6, density: 1.84 },
  { timeS: 8, density: 1.69 },
  { timeS: 10, density: 1.52 },
  { timeS: 14, density: 1.19 },
] as const;

/** The strip that tells what the flash lamp gives a second: planned, timed, through the trays, measured when dry. */
function writeFlashStrip(
  journal: DemoJournal,
  id: { readonly [Name in "boxC" | "positiveC" | "recipe4" | "flashLamp" | "flashStrip" | "hand"]: RecordId },
): void {
  const planned: Record<string, Json> = {
    question: "flash",
    name: "flash strip",
    factor: "seconds of flash alone",
    paperBoxId: id.boxC,
    exposureIndexId: id.positiveC,
    recipeId: id.recipe4,
    result: "positive",
    flashLampId: id.flashLamp,
    handId: id.hand,
    firstEdge: "top",
    plannedAt: onDay(30, 17, 34),
    createdAt: onDay(30, 17, 34),
    notes: "A strip cut from a spoilt corner of Box C. The card was drawn by a step at each count.",
  };
  const levels = flashSteps.map((step) => ({ ...step, id: journal.idAt(onDay(30, 17, 34)) }));
  const lit = levels.filter(({ timeS }) => timeS > 0);
  for (const { timeS, id: levelId } of levels) planned[`levels.${levelId}.plannedS`] = timeS;
  journal.write(onDay(30, 17, 34), "flash strip planned", [{ id: id.flashStrip, kind: "test", set: planned }]);
  const given = onDay(30, 17, 41);
  journal.write(given, "flash strip given", [
    {
      id: id.flashStrip,
      kind: "test",
      set: {
        doneAt: given,
        ...Object.fromEntries(lit.map(({ timeS, id: levelId }) => [`levels.${levelId}.givenS`, timeS])),
      },
    },
  ]);
  const seen = onDay(30, 18, 50);
  journal.write(seen, "flash strip read", [
    {
      id: id.flashStrip,
      kind: "test",
      // From 4 s on, the third step, the strip is lighter than its bare end.
      set: {
        leastSeen: lit.findIndex(({ timeS }) => timeS >= 4) + 1,
        ...Object.fromEntries(levels.map(({ density, id: levelId }) => [`levels.${levelId}.density`, density])),
      },
    },
    {
      id: id.flashLamp,
      kind: "flashLamp",
      set: {
        rate: {
          valueLx: 0.248,
          sdLn: 0.12,
          // On this paper 4 s are give or take half a second.
          stripSdLn: 0.076,
          paperBoxId: id.boxC,
          exposureIndexId: id.positiveC,
          testId: id.flashStrip,
          foundAt: seen,
        },
      },
    },
  ]);
}

function guess(
  id: RecordId,
  paperBoxId: RecordId,
  result: "negative" | "positive",
  value: number,
  recipeId: RecordId,
): RecordSet {
  return {
    id,
    kind: "exposureIndex",
    set: {
      paperBoxId,
      result,
      recipeId,
      value: { value, sdStops: 0.7 },
      text: String(value),
      found: { how: "guessed" },
      assumed: ["value"],
      createdAt: onDay(30, 17, 12),
    },
  };
}
