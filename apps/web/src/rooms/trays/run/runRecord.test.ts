import type { Run, RunEvent, Sheet } from "@captray/notebook/records";
import { describe, expect, test } from "vitest";
import type { Mirror } from "../../../devices/mirror.ts";
import { firstStart } from "./firstStart.ts";
import { lastPress } from "./lastPress.ts";
import { addPending, readPending, settlePending } from "./pendingPresses.ts";
import { sheetsFollow } from "./sheetsFollow.ts";
import { laneAt, negative } from "./testing.ts";

const began = 1_764_957_600_000;

function runOf(lanes: readonly Partial<Run["lanes"][number]>[], events: readonly RunEvent[] = []): Run {
  return {
    id: "run",
    kind: "run",
    startedAt: { at: began, offsetMin: 60 },
    lanes,
    events: events.map((event, place) => ({ id: `e${place}`, event })),
    readings: [],
    edits: [],
  } as unknown as Run;
}
function eventOf(laneId: string, press: RunEvent["press"], atS: number): RunEvent {
  return { laneId, press, sinceStartMs: atS * 1000, wallMs: began + atS * 1000 } as unknown as RunEvent;
}
function sheetOf(id: string, more: Partial<Sheet> = {}): Sheet {
  return {
    id,
    kind: "sheet",
    code: id,
    exposedAt: { at: began - 60_000, offsetMin: 60 },
    openings: [],
    mishaps: [],
    ...more,
  } as unknown as Sheet;
}
const through = [
  [10, "start"],
  [100, "next"],
  [130, "next"],
  [190, "next"],
] as const;

describe("sheets follow the run", () => {
  const run = runOf([{ id: "W35" as never, code: "W35", sheetIds: ["W35" as never] }]);
  const setsAt = (presses: readonly (readonly [number, RunEvent["press"]])[], untilS: number, sheet: Sheet) =>
    sheetsFollow({
      run,
      lanes: [laneAt(negative, ["W35"], presses, untilS)],
      sheetOf: (id) => (id === sheet.id ? sheet : undefined),
      offsetMin: 60,
    });

  test("in process from the first bath on, by the second of the press [by hand]", () => {
    expect(setsAt([], 5, sheetOf("W35"))).toEqual([]);
    expect(setsAt(through.slice(0, 1), 20, sheetOf("W35"))).toEqual([
      { id: "W35", kind: "sheet", set: { inProcessAt: { at: began + 10_000, offsetMin: 60 } } },
    ]);
  });

  test("drying from the moment it came out; nothing more to set once it says so", () => {
    const sheet = sheetOf("W35", { inProcessAt: { at: began + 10_000, offsetMin: 60 } } as Partial<Sheet>);
    const out = [...through, [430, "next"]] as const;
    expect(setsAt(out, 440, sheet)).toEqual([
      { id: "W35", kind: "sheet", set: { dryingAt: { at: began + 430_000, offsetMin: 60 } } },
    ]);
    expect(setsAt(out, 440, { ...sheet, dryingAt: { at: began + 430_000, offsetMin: 60 } } as Sheet)).toEqual([]);
  });

  test("taken back, the dates go; one from before the run is not its to clear", () => {
    const sheet = sheetOf("W35", { inProcessAt: { at: began + 10_000, offsetMin: 60 } } as Partial<Sheet>);
    expect(
      setsAt(
        [
          [10, "start"],
          [12, "takeBack"],
        ],
        15,
        sheet,
      ),
    ).toEqual([{ id: "W35", kind: "sheet", set: { inProcessAt: null } }]);
    const earlier = sheetOf("W35", { inProcessAt: { at: began - 5000, offsetMin: 60 } } as Partial<Sheet>);
    expect(setsAt([], 5, earlier)).toEqual([]);
  });

  test("two pieces of one sheet, each by its own lane: one set, both letters", () => {
    const pieces = ["a", "b"].map((letter) => ({ letter, cut: "half", place: { x: 0, y: 0, width: 1, height: 0.5 } }));
    const sheet = sheetOf("W36", { pieces } as unknown as Partial<Sheet>);
    const both = runOf(
      ["a", "b"].map((letter) => ({
        id: letter as never,
        code: `W36${letter}`,
        pieces: [{ sheetId: "W36" as never, letter }],
      })),
    );
    const lanes = ["a", "b"].map((letter, place) => ({
      ...laneAt(negative, [`W36${letter}`], [[10 + place, "start"]], 20),
      id: letter,
    }));
    const [one, ...more] = sheetsFollow({ run: both, lanes, sheetOf: () => sheet, offsetMin: 60 });
    expect(more).toEqual([]);
    expect(one?.set.inProcessAt).toEqual({ at: began + 10_000, offsetMin: 60 });
    const pieceDates = (one?.set.pieces ?? []) as { inProcessAt: { at: number } }[];
    expect(pieceDates.map((piece) => piece.inProcessAt.at)).toEqual([began + 10_000, began + 11_000]);
  });
});

describe("what would be taken back", () => {
  test("of two lanes the press made last that still stands", () => {
    const lanes = [
      laneAt(
        negative,
        ["W35"],
        [
          [0, "start"],
          [90, "next"],
        ],
        100,
      ),
      laneAt(negative, ["W36"], [[30, "start"]], 100),
    ];
    const events = [eventOf("W35", "start", 0), eventOf("W36", "start", 30), eventOf("W35", "next", 90)];
    expect(lastPress({ lanes, events })).toEqual({ laneId: "W35", press: "next", atMs: 90_000 });
    const back = [
      laneAt(
        negative,
        ["W35"],
        [
          [0, "start"],
          [90, "next"],
          [95, "takeBack"],
        ],
        100,
      ),
      ...lanes.slice(1),
    ];
    expect(lastPress({ lanes: back, events: [...events, eventOf("W35", "takeBack", 95)] })).toEqual({
      laneId: "W36",
      press: "start",
      atMs: 30_000,
    });
    expect(lastPress({ lanes: [laneAt(negative, ["W35"], [], 5)], events: [] })).toBeNull();
  });
});

describe("the timetable counts from the first sheet", () => {
  const lanes = [
    { id: "a" as never, plannedStartS: 0 },
    { id: "b" as never, plannedStartS: 137 },
  ];
  test("40 s between the lights and the first press: every start is 40 s later [by hand]", () => {
    expect(firstStart({ run: runOf(lanes), laneId: "a", atS: 40 })).toEqual({
      "lanes.a.plannedStartS": 40,
      "lanes.b.plannedStartS": 177,
    });
  });
  test("later starts move nothing", () => {
    expect(firstStart({ run: runOf(lanes, [eventOf("a", "start", 40)]), laneId: "b", atS: 200 })).toEqual({});
  });
});

describe("presses on their way", () => {
  const held = new Map<string, string>();
  const mirror: Mirror = {
    read: (name) => JSON.parse(held.get(name) ?? "null") as unknown,
    write: (name, value) => {
      held.set(name, JSON.stringify(value));
      return true;
    },
    drop: (name) => void held.delete(name),
  };
  test("written down at once, each once, and dropped when the notebook has them; broken ones are none", () => {
    const one = { id: "e1", event: eventOf("a", "next", 5) };
    addPending(mirror, "r", one);
    addPending(mirror, "r", one);
    expect(readPending(mirror, "r")).toEqual([one]);
    addPending(mirror, "r", { id: "e2", event: eventOf("a", "next", 9) });
    settlePending(mirror, "r", "e1");
    expect(readPending(mirror, "r").map(({ id }) => id)).toEqual(["e2"]);
    settlePending(mirror, "r", "e2");
    expect(held.size).toBe(0);
    mirror.write("captray-run-pending-r", [7, null, { id: "x" }, { id: "y", event: { press: 1 } }]);
    expect(readPending(mirror, "r")).toEqual([]);
  });
});
