import type { Json, Moment, Reading, Scene } from "@captray/notebook/records";
import { kinds, newId } from "@captray/notebook/records";
import { describe, expect, test } from "vitest";
import { withSet } from "../recordMerge.ts";
import { type ReadingTexts, readingOf, startTexts } from "./areasReading.ts";
import { moveArea, readAnew, readToo, removeArea } from "./areasRecord.ts";
import { sceneView } from "./sceneView.ts";

let made = 0;
const id = () => newId({ now: 1_795_000_000_000 + made++, random: () => 0.5 });
const takenAt: Moment = { at: 1_795_000_000_000, offsetMin: 60 };
const dial = (timeS: number): Reading => ({
  way: "time",
  timeS: { value: timeS },
  fNumber: { value: 8, text: "8" },
  iso: { value: 100, text: "100" },
});

/** A scene with areas of these names, the first one read and placed. */
function sceneOf(...names: readonly string[]): Scene {
  const fields = new Map<string, Json>([["subject", "skiff"]]);
  const areaIds = names.map(id);
  for (const [place, name] of names.entries()) fields.set(`areas.${areaIds[place]}.name`, name);
  const [first] = areaIds;
  if (first !== undefined) {
    for (const [path, value] of Object.entries(
      readAnew({ areaId: first, reading: dial(1 / 16), freshId: id(), takenAt }),
    ))
      fields.set(path, value);
    fields.set("place", { areaId: first, stops: 0 });
  }
  return kinds.scene.assemble(id(), fields);
}
const after = (scene: Scene, set: Readonly<Record<string, Json>>) =>
  withSet(scene, { id: scene.id, kind: "scene", set });
const idOf = (scene: Scene, name: string) => scene.areas.find((area) => area.name === name)?.id ?? "";
const viewOf = (scene: Scene) => sceneView({ kit: { scene }, nowMs: takenAt.at, lengthUnit: "mm" });

describe("a reading as it is typed", () => {
  const texts: ReadingTexts = { way: "time", figure: "1/15", fNumber: "8", iso: "100" };

  test("1/15 at f/8 and ISO 100 is the dial's mark, 1/16 s [common practice: marks of a dial]", () => {
    const read = readingOf(texts);
    expect("reading" in read && read.reading).toMatchObject({
      way: "time",
      timeS: { value: 1 / 16, text: "1/15", mark: true },
      fNumber: { value: 8 },
      iso: { value: 100 },
    });
  });

  test.each([
    [
      { way: "ev", figure: "11", iso: "100" },
      { way: "ev", ev: { value: 11 }, iso: { value: 100 } },
    ],
    [
      { way: "ev", figure: "−2", iso: "" },
      { way: "ev100", ev100: { value: -2 } },
    ],
    [
      { way: "time", figure: "EV 11", iso: "25" },
      { way: "ev", ev: { value: 11 }, iso: { value: 25 } },
    ],
    [
      { way: "luminance", figure: "128 cd/m²" },
      { way: "luminance", luminanceCdM2: { value: 128 } },
    ],
    [
      { way: "illuminance", figure: "2560" },
      { way: "illuminance", illuminanceLx: { value: 2560 } },
    ],
    [
      { way: "incidentTime", figure: "1/60" },
      { way: "time", kind: "incident" },
    ],
    [
      { way: "incidentEv", figure: "9" },
      { way: "ev", kind: "incident" },
    ],
  ] as const)("%j is read in its way", (change, wanted) => {
    const read = readingOf({ ...texts, ...change });
    expect("reading" in read && read.reading).toMatchObject(wanted);
  });

  test.each([
    [{ figure: "" }, "a reading"],
    [{ figure: "12 bananas" }, "a reading"],
    [{ figure: "1e400" }, "a reading"],
    [{ fNumber: "" }, "the f-number on the meter"],
    [{ iso: "-3" }, "the ISO on the meter"],
    [{ way: "luminance", figure: "0" }, "a reading"],
  ] as const)("%j is not taken, and says what it lacks", (change, lacks) => {
    expect(readingOf({ ...texts, ...change })).toEqual({ lacks });
  });

  test("the next reading begins as the newest one was read; the very first as a time", () => {
    expect(startTexts({ scenes: [] })).toEqual({ way: "time", figure: "", fNumber: "", iso: "" });
    expect(startTexts({ scenes: [sceneOf("hull")] })).toEqual({ way: "time", figure: "", fNumber: "8", iso: "100" });
  });
});

describe("areas that change", () => {
  test("read three times the middle in stops holds, and all three stay in the scene [by hand: 1/16, 1/8, 1/32 → 1/16]", () => {
    let scene = sceneOf("hull");
    for (const timeS of [1 / 8, 1 / 32]) {
      const areaId = idOf(scene, "hull");
      const change = readToo({ scene, areaId, reading: dial(timeS), freshIds: [id(), id()], takenAt });
      if ("refused" in change) throw new Error(change.refused);
      scene = after(scene, change.set);
    }
    const held = scene.readings.find((one) => one.id === scene.areas[0]?.readingId);
    expect(held?.averageOf).toHaveLength(3);
    expect(held?.reading?.way === "time" ? held.reading.timeS.value : 0).toBeCloseTo(1 / 16, 12);
    expect(viewOf(scene).areas[0]?.madeOf).toBe("The middle of 3 readings.");
    const mixed = readToo({
      scene,
      areaId: idOf(scene, "hull"),
      reading: { way: "illuminance", illuminanceLx: { value: 900 } },
      freshIds: [id(), id()],
      takenAt,
    });
    expect("refused" in mixed && mixed.refused).toContain("have no middle");
  });

  test("moved earlier and later, and one added afterwards stands last", () => {
    const scene = sceneOf("snow", "hull", "rope");
    const moved = moveArea({ scene, areaId: idOf(scene, "rope"), by: -1 });
    const fields = new Map<string, Json>(
      scene.areas.map((area) => [`areas.${area.id}.name`, area.name] as [string, Json]),
    );
    for (const [path, value] of Object.entries(moved?.set ?? {})) fields.set(path, value);
    fields.set(`areas.${id()}.name`, "water");
    const now = kinds.scene.assemble(scene.id, fields);
    expect(now.areas.map((area) => area.name)).toEqual(["snow", "rope", "hull", "water"]);
    expect(moveArea({ scene, areaId: idOf(scene, "snow"), by: -1 })).toBeUndefined();
  });

  test("the placed one taken out: the mean of the others is the ground, its mark goes, and it is said", () => {
    const scene = sceneOf("hull", "rope");
    const marked = after(scene, { marks: [{ areaId: idOf(scene, "hull"), x: 0.5, y: 0.5 }] });
    const { set, note } = removeArea({ scene: marked, areaId: idOf(scene, "hull"), at: takenAt });
    expect(set).toMatchObject({ place: null, marks: [] });
    expect(note).toBe("hull taken out; the mean of the others is placed");
    expect(removeArea({ scene, areaId: idOf(scene, "rope"), at: takenAt }).set).not.toHaveProperty("place");
  });

  test("placed two below it says so, and the others stand as far from it as before", () => {
    let scene = sceneOf("shed door", "snow");
    scene = after(scene, readAnew({ areaId: idOf(scene, "snow"), reading: dial(1 / 128), freshId: id(), takenAt }));
    scene = after(scene, { place: { areaId: idOf(scene, "shed door"), stops: -2 } });
    const { areas, range } = viewOf(scene);
    expect(areas.map((area) => area.standing)).toEqual(["placed −2", "+3.0"]);
    expect(range).toBe("The scene is 3.0 stops, give or take 0.3: from shed door to snow.");
  });
});
