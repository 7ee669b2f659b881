import { handSd } from "@captray/science/exposure";
import { kitOf, planOf } from "../../answers/index.ts";
import type { Json, Mishap, Moment, RecordId, Scene, StepDate } from "../../records/index.ts";
import type { DemoBaths } from "./demoBaths.ts";
import { dayOf, onDay } from "./demoDates.ts";
import type { DemoJournal } from "./demoJournal.ts";
import { type DemoRun, demoFault, writeRun } from "./demoRuns.ts";
import { type DemoScenes, dialReading } from "./demoScenes.ts";
import type { DemoShelf } from "./demoShelf.ts";

interface Given {
  readonly timeS: number;
  readonly manner: "ticks" | "counted" | "takenAsPlanned";
  readonly corrected?: true;
}

/** Eight sheets, each at another point of its way. */
export function writeSheets(
  journal: DemoJournal,
  shelf: DemoShelf,
  scenes: DemoScenes,
  bathsOn: (day: number) => DemoBaths,
): void {
  const onC = {
    result: "positive",
    paperBoxId: shelf.boxC,
    exposureIndexId: shelf.positiveC,
    recipeId: shelf.recipe4,
  } as const;
  const with210 = { lensId: shelf.lens210, stopId: shelf.stop210 };
  const side = (holderId: RecordId, sideId: RecordId) => ({ holderSide: { holderId, sideId } });
  const { sideLight, beforeTheShed, asNegative, ropeClose } = scenes;

  const w28 = layOut(onDay(28, 20, 30), "W28", { ...onC, label: "hull only, side light" });
  load(w28, onDay(28, 20, 30), side(shelf.holder3, shelf.side3a));
  expose(w28, onDay(29, 10, 52), sideLight.id, with210, [
    { timeS: 8.3, manner: "ticks" },
    { timeS: 4.8, manner: "ticks" },
  ]);
  // The first developer six seconds over, nobody at the rinse before the bleach, a second late throughout.
  throughTheTrays(w28, onDay(29, 19, 30), { developerC: 20, rounds: 3, late: [6, 1, null] });
  step(w28, onDay(30, 10, 0), "measuredAt", "measured");
  step(w28, onDay(30, 10, 20), "keptAt", "kept", {
    rating: 4,
    notes: "A sledge was pulled past at the eighth tick: cap on, waited, went on. Nothing of it shows. Good; keep.",
  });

  const w29 = layOut(onDay(29, 20, 10), "W29", { ...onC, label: "cap practice, 13 s" });
  load(w29, onDay(29, 20, 10), side(shelf.holder2, shelf.side2a));
  expose(w29, onDay(30, 14, 10), beforeTheShed.id, with210, [
    { timeS: 6.4, manner: "counted" },
    { timeS: 6.1, manner: "counted" },
  ]);
  mishap(w29, onDay(30, 14, 12), "knocked");
  throughTheTrays(w29, onDay(30, 19, 40), { developerC: 18.5, rounds: 3, late: [1, -14, 1, 12] });
  step(w29, onDay(31, 9, 30), "measuredAt", "measured", {
    faults: [
      demoFault(journal, onDay(31, 9, 20), "tongMark", [0.9, 0.06, 0.1, 0.06], "The tongs slipped in the stop."),
      demoFault(journal, onDay(31, 9, 21), "blister", [0.3, 0.62, 0.07, 0.05]),
    ],
    rating: 2,
    notes: "Counted in the head, two openings. The tripod was knocked between them: the jug has two handles.",
  });

  const w30 = layOut(onDay(29, 20, 14), "W30", { ...onC, label: "no flash, to compare" });
  load(w30, onDay(29, 20, 14), side(shelf.holder2, shelf.side2b));
  expose(w30, onDay(30, 14, 20), beforeTheShed.id, with210, [{ timeS: 13, manner: "ticks" }], {
    notes: "Still in the holder: goes into the trays with the next ones.",
  });

  const w31 = layOut(onDay(30, 20, 20), "W31", {
    ...onC,
    label: "flash 4 s for the shed door",
    flashPlanned: { timeS: 4, lampId: shelf.lamp, flashLampId: shelf.flashLamp, when: "beforeLoading" },
  });
  step(w31, onDay(30, 20, 31), "flashedAt", "flashed", { flashGivenS: 4 });
  load(w31, onDay(30, 20, 40), side(shelf.holder2, shelf.side2a));

  const w32 = layOut(onDay(30, 20, 44), "W32", { ...onC, label: "rope close" });
  load(w32, onDay(30, 20, 44), side(shelf.holder3, shelf.side3a));

  const w33 = layOut(onDay(30, 20, 50), "W33", {
    result: "positive",
    paperBoxId: shelf.boxD,
    exposureIndexId: shelf.positiveD,
    recipeId: shelf.recipe4,
    label: "first look at Box D",
  });
  load(w33, onDay(30, 20, 50), side(shelf.holder3, shelf.side3b));

  readAgain(onDay(31, 14, 6));
  expose(w31, onDay(31, 14, 12), beforeTheShed.id, with210, [{ timeS: 13.6, manner: "ticks", corrected: true }], {
    notes: "First noted 13; the watch said 13.6.",
  });
  expose(w33, onDay(31, 14, 20), beforeTheShed.id, with210, [{ timeS: 27, manner: "ticks" }]);
  expose(w32, onDay(31, 14, 40), ropeClose.id, { lensId: shelf.lens150, stopId: shelf.stop150 }, [
    { timeS: 0, manner: "takenAsPlanned" },
  ]);
  mishap(w33, onDay(31, 14, 50), "exposedTwice");
  step(w33, onDay(31, 14, 52), "discardedAt", "discarded", { notes: "The wrong side was drawn: exposed twice." });

  const w34 = layOut(onDay(31, 16, 50), "W34", {
    ...onC,
    label: "bleach, fourth round",
    notes: "Laid out. Only the number of bleach rounds is changed against W31.",
  });
  journal.write(onDay(31, 16, 52), "W34 planned", [
    { id: w34.id, kind: "sheet", set: { sceneId: beforeTheShed.id, ...with210, handId: shelf.hand } },
  ]);

  const w35 = layOut(onDay(31, 17, 0), "W35", {
    result: "negative",
    paperBoxId: shelf.boxD,
    exposureIndexId: shelf.negativeD,
    recipeId: shelf.recipe1,
    label: "paper negative of the skiff",
  });
  plan(w35, onDay(31, 17, 2), asNegative.id, with210);
  load(w35, onDay(31, 17, 5), side(shelf.holder3, shelf.side3b));

  const w31Out = throughTheTrays(w31, onDay(31, 20, 2), {
    developerC: 20.5,
    rounds: 3,
    late: [2, 1, 1, 2, 0, null, 1],
  });
  step(w32, onDay(31, 20, 4), "inProcessAt", "in the trays");
  write(w31, { ...w31Out, at: w31Out.at + 60_000 }, "looked at", {
    hangs: { on: "glass" },
    faults: [
      demoFault(
        journal,
        w31Out,
        "residue",
        [0.68, 0.78, 0.25, 0.16],
        "Grey where the sheets lay on each other in the bleach.",
      ),
    ],
    notes: "First noted 13; the watch said 13.6. Face up on glass.",
  });

  interface DemoSheet {
    readonly id: RecordId;
    readonly code: string;
  }

  function write({ id, code }: DemoSheet, at: Moment, what: string, set: Readonly<Record<string, Json>>): void {
    journal.write(at, `${code} ${what}`, [{ id, kind: "sheet", set }]);
  }

  function layOut(at: Moment, code: string, set: Readonly<Record<string, Json>>): DemoSheet {
    const sheet = { id: journal.idAt(at), code };
    write(sheet, at, "laid out", { code, cameraId: shelf.camera, createdAt: at, ...set });
    return sheet;
  }

  function load(sheet: DemoSheet, at: Moment, set: Readonly<Record<string, Json>>): void {
    write(sheet, at, "loaded", { loadedAt: at, ...set });
  }

  function step(
    sheet: DemoSheet,
    at: Moment,
    date: StepDate,
    what: string,
    set: Readonly<Record<string, Json>> = {},
  ): void {
    write(sheet, at, what, { [date]: at, ...set });
  }

  /** A run of recipe 4: in the trays with its first press, drying with its last. */
  function throughTheTrays(sheet: DemoSheet, at: Moment, run: Pick<DemoRun, "developerC" | "rounds" | "late">): Moment {
    step(sheet, at, "inProcessAt", "in the trays");
    const out = writeRun(journal, {
      ...run,
      at,
      recipeId: shelf.recipe4,
      code: sheet.code,
      sheetId: sheet.id,
      bathIds: bathsOn(dayOf(at)),
    });
    step(sheet, out, "dryingAt", "drying");
    return out;
  }

  function mishap(sheet: DemoSheet, at: Moment, what: Mishap): void {
    const id = journal.idAt(at);
    write(sheet, at, "something went wrong", { [`mishaps.${id}.what`]: what, [`mishaps.${id}.notedAt`]: at });
  }

  /** Freezes the ledger of a scene on a sheet, and says how long the cap is to be off. */
  function plan(sheet: DemoSheet, at: Moment, sceneId: RecordId, lens: Readonly<Record<string, Json>>): number {
    write(sheet, at, "planned", { sceneId, handId: shelf.hand, ...lens });
    const held = journal.peek(sheet.id);
    const answered = planOf(
      kitOf({
        notebook: journal,
        scene: journal.peek(sceneId) as Scene,
        sheet: held?.kind === "sheet" ? held : undefined,
      }),
    );
    if (answered.kind !== "plan") throw new Error(`The demo's sheet ${sheet.code} has no plan: ${answered.kind}.`);
    const { answer, input } = answered;
    write(sheet, at, "ledger kept", {
      planned: {
        timeS: answer.timeS,
        ledger: plainCopy(answer.ledger),
        input: plainCopy(input),
        answer: plainCopy({ ...answer, ledger: [] }),
        frozenAt: at,
      },
    });
    return answer.timeS;
  }

  function expose(
    sheet: DemoSheet,
    at: Moment,
    sceneId: RecordId,
    lens: Readonly<Record<string, Json>>,
    openings: readonly Given[],
    set: Readonly<Record<string, Json>> = {},
  ): void {
    const wantedS = plan(sheet, at, sceneId, lens);
    const fields: Record<string, Json> = { exposedAt: at, ...set };
    let leftS = wantedS;
    for (const { timeS, manner, corrected } of openings) {
      const givenS = manner === "takenAsPlanned" ? wantedS : timeS;
      const sd = Number(openingSdS(givenS, manner === "counted").toFixed(4));
      fields[`openings.${journal.idAt(at)}.opening`] = {
        plannedS: leftS,
        givenS: { value: givenS, sd },
        manner,
        handId: shelf.hand,
        startedAt: at,
        ...(corrected && { corrected }),
      };
      leftS = Math.max(0.1, leftS - givenS);
    }
    write(sheet, at, "exposed", fields);
  }

  /** One figure more for the hull: the light has not moved. */
  function readAgain(at: Moment): void {
    const hullId = beforeTheShed.areaIds.get("hull");
    const readingId = journal.idAt(at);
    journal.write(at, "hull read again", [
      {
        id: beforeTheShed.id,
        kind: "scene",
        set: {
          [`readings.${readingId}.areaId`]: hullId ?? null,
          [`readings.${readingId}.reading`]: dialReading({ text: "1/15", timeS: 1 / 16 }),
          [`readings.${readingId}.takenAt`]: at,
          [`areas.${hullId}.readingId`]: readingId,
        },
      },
    ]);
  }
}

/** The scatter of one opening by the practice of the hand on the shelf. */
function openingSdS(timeS: number, counted: boolean): number {
  return counted
    ? Math.hypot(handSd({ timeS, motorSdS: 0.1, weber: 0.04 }), 0.1, (0.01 * timeS) / 0.95)
    : Math.hypot(handSd({ timeS, motorSdS: 0.1, weber: 0.033 }), 0.07);
}

/** Plain data without the keys that are not there. */
function plainCopy(value: unknown): Json {
  return JSON.parse(JSON.stringify(value)) as Json;
}
