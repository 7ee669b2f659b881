import { hoursFor, lampMoved } from "@captray/notebook/answers";
import { kinds, newId } from "@captray/notebook/records";
import { describe, expect, test } from "vitest";
import { hourLacks, timeTyped, withFace } from "./hourForm.ts";
import { lampWords } from "./lampWords.ts";
import { clock, costWords, hourWords, movedWords, offeredLights, readDegrees } from "./lightWords.ts";
import { setMark, steppedBy } from "./photographMarks.ts";

const id = newId({ now: 1_795_000_000_000, random: () => 0.5 });
const lamp = (fields: object) => kinds.lamp.assemble(id, new Map(Object.entries(fields)));

describe("the light in words", () => {
  test("lamps of the shelf are offered by their names; one whose light nobody said is not", () => {
    const names = (lamps: Parameters<typeof offeredLights>[0]["lamps"]) =>
      offeredLights({ lamps }).map(({ name }) => name);
    const usual = names([]).length;
    const own = names([
      lamp({ name: "desk lamp", sort: "filament", source: "filament:2700" }),
      lamp({ name: "panel", sort: "whiteLed", cctK: { value: 5600, sd: 200 } }),
      lamp({ name: "lantern", sort: "other" }),
    ]);
    expect(own.slice(usual)).toEqual(["desk lamp", "panel"]);
  });

  test("what a light costs, with its ±; nothing where it is in the index; no figure where the paper hardly sees it", () => {
    const cost = (stops: { value: number; sd: number } | undefined) =>
      costWords({ source: "x", stops, atLeastStops: undefined });
    expect(cost({ value: 2.0757, sd: 0.15 })).toBe("+2.1 ±0.25");
    expect(cost({ value: 0, sd: 0 })).toBe("already in the EI");
    expect(cost(undefined)).toBe("this paper hardly sees it");
  });

  test("a lamp from 1.5 to 3 m: 2.00 stops more time; too little typed, and a distance of nothing, say what is wrong", () => {
    expect(movedWords(lampMoved({ fromMm: 1500, toMm: 3000 }), "mm")).toMatch(
      /^2\.00 stops more time, give or take 0\.0/,
    );
    expect(movedWords(lampMoved({ fromMm: 2000, toMm: 2000 }), "mm")).toMatch(/^No change/);
    const typed = { plan: { kind: "missing", missing: [] }, lengthUnit: "mm" } as const;
    expect(lampWords({ from: "1.5 m", to: "", radius: "", ...typed })).toContain("twice as far");
    expect(lampWords({ from: "3 m", to: "1.5 m", radius: "0.3 m", ...typed })).toMatch(/^1\.9\d stops less time/);
    expect(movedWords(lampMoved({ fromMm: 0, toMm: 1 }), "mm")).not.toMatch(/NaN|Infinity/);
  });
});

describe("the hour in words", () => {
  const moments = [
    { minute: 540, sunDeg: 5, timeS: 9, lowS: 4, highS: 20 },
    { minute: 720, sunDeg: 15, timeS: 3, lowS: 1.4, highS: 6.5 },
    { minute: 900, sunDeg: 5, timeS: 9, lowS: 4, highS: 20 },
  ];
  const day = { kind: "hours", moments, sunUpMin: 540, sunDownMin: 900, shortestS: 3, longestS: 9 } as const;

  test("the hours that give it, and what the sky may do to them", () => {
    const spans = [
      { fromMin: 540, toMin: 615 },
      { fromMin: 825, toMin: 900 },
    ];
    const words = hourWords({ hours: { ...day, spans, noHour: undefined }, leastS: 6, mostS: undefined });
    expect(words.head).toBe("From 9:00 to 10:15 and 13:45 to 15:00");
    expect(words.say).toContain("may as well be 1.4 s or 6.5 s, nine in ten");
  });

  test("too much light all day is said so, and the other way round too", () => {
    const none = (noHour: "alwaysShorter" | "alwaysLonger" | "between") =>
      hourWords({ hours: { ...day, spans: [], noHour }, leastS: 60, mostS: 1 });
    expect(none("alwaysShorter").head).toContain("always too much light");
    expect(none("alwaysShorter").say).toContain("never as long as 60 s. Stop down");
    expect(none("alwaysLonger").head).toContain("never enough light");
    expect(none("alwaysLonger").say).toContain("never as short as 1 s. Open the lens");
    expect(none("between").head).toBe("No hour that day");
  });

  test("what is still to say; a day that is not in the calendar gets its sentence", () => {
    expect(hourLacks({ kind: "missing", missing: ["site", "day", "focalLength"] }, "mm")).toBe(
      "Still to say: the place, the day and the sky, a lens with its focal length.",
    );
    const scene = kinds.scene.assemble(id, new Map());
    expect(hourLacks(hoursFor({ kit: { scene }, offsetMin: 0 }), "mm")).toContain("Still to say");
  });

  test.each([
    ["52.4", "latitude", 52.4],
    ["−41,3", "latitude", -41.3],
    ["52° 24′ N", "latitude", 52.4],
    ["33.9 S", "latitude", -33.9],
    ["3.1 W", "longitude", -3.1],
    ["+175", "longitude", 175],
  ] as const)("%s is a %s of %f", (text, of, value) => {
    const read = readDegrees(text, of);
    expect(read.kind === "read" ? read.value : Number.NaN).toBeCloseTo(value, 9);
  });

  test.each(["91", "52 N E", "12 bananas", "181", "3.1 W"])("%s is no latitude", (text) => {
    expect(readDegrees(text, "latitude").kind).toBe("unreadable");
  });

  test("times, walls and clocks", () => {
    expect(timeTyped("4", "")).toEqual({ leastS: { value: 4, text: "4" } });
    expect(timeTyped("x", "0")).toEqual({});
    const said = { day: "2026-12-01", sky: "clear", facesDeg: 0, snow: true } as const;
    expect(withFace(said, "level")).toEqual({ day: "2026-12-01", sky: "clear" });
    expect(withFace(said, "east")).toEqual({ ...said, facesDeg: 90 });
    expect([clock(0), clock(615), clock(1440), clock(-10)]).toEqual(["0:00", "10:15", "0:00", "23:50"]);
  });
});

test("a mark is set once an area, stays inside the picture, and an arrow begins in the middle", () => {
  const marks = setMark({ marks: [], areaId: id, at: { x: 1.2, y: -0.1 } });
  expect(marks).toEqual([{ areaId: id, x: 1, y: 0 }]);
  expect(setMark({ marks, areaId: id, at: { x: 0.3, y: 0.4 } })).toHaveLength(1);
  expect(setMark({ marks, areaId: id, at: undefined })).toEqual([]);
  expect(steppedBy({ key: "ArrowLeft", from: undefined })).toEqual({ x: 0.48, y: 0.5 });
  expect(steppedBy({ key: "Enter", from: undefined })).toBeUndefined();
});
