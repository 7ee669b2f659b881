import { altitudeForTime, sunPosition } from "@captray/science/light";
import { describe, expect, test } from "vitest";
import type { Json } from "../records/index.ts";
import { type Hours, hoursFor } from "./hoursFor.ts";
import { idNumber, someKit } from "./testing.ts";

const holland = { latitudeDeg: 52, longitudeEastDeg: 5 };
const winter = { day: "2026-12-21", sky: "clear" } as const;

/** A paper without long exposures of its own and clear glass: the ledger is then just the incident formula. */
function plainKit(scene: Readonly<Record<string, Json>>, fNumber = 8, exposureIndex = 1) {
  return someKit({
    scene: { focus: { by: "distant" }, site: holland, daylight: winter, ...scene },
    lens: { [`stops.${idNumber(20)}.marked`]: { value: fNumber }, transmission: { value: 0.9, sdStops: 0 } },
    exposureIndex: { value: { value: exposureIndex, sdStops: 0.3 } },
    paperBox: { reciprocity: { exponent: 1, fromS: 1 } },
  });
}

function hours(kit: ReturnType<typeof someKit>, offsetMin = 60): Hours {
  const answer = hoursFor({ kit, offsetMin });
  if (answer.kind !== "hours") throw new Error(JSON.stringify(answer));
  return answer;
}

describe("the hour of the day", () => {
  test("21 December at 52° N 5° E: 9.5° high at 09:30 UTC, which the local clock calls 10:30 [almanac; peer within 0.01°]", () => {
    const { moments } = hours(plainKit({}));
    // The peer's 9.5296° is airless; the air lifts the sun by 0.1° there.
    expect(moments.find(({ minute }) => minute === 630)?.sunDeg).toBeCloseTo(9.53 + 0.095, 1);
  });

  test("a level subject: the hour ends where the sun has the height that altitudeForTime finds [ies-1984, two ways]", () => {
    const kit = plainKit({ timeWanted: { leastS: { value: 1 } } }, 8, 2);
    const { spans, noHour } = hours(kit);
    expect(noHour).toBeUndefined();
    expect(spans).toHaveLength(2);
    const altitude = altitudeForTime({ minimumTimeS: 1, fNumber: 8, exposureIndex: 2, dayOfYear: 355, sky: "clear" });
    for (const minute of [spans[0]?.toMin ?? 0, spans[1]?.fromMin ?? 0]) {
      const { altitudeDeg } = sunPosition({
        year: 2026,
        month: 12,
        day: 21,
        hourUtc: (minute - 60) / 60,
        ...holland,
        refraction: true,
      });
      // The sun climbs at most 0.15° a minute there.
      expect(Math.abs(altitudeDeg - altitude)).toBeLessThan(0.2);
    }
  });

  test("±: half a stop of sky and 0.3 of the index, nine in ten [by hand: with a marked f-number's 0.1 and the hand's]", () => {
    const [first] = hours(plainKit({})).moments;
    const stops = Math.log2((first?.highS ?? 0) / (first?.timeS ?? 1)) / 1.645;
    expect(stops).toBeGreaterThan(Math.hypot(0.5, 0.3));
    expect(stops).toBeLessThan(0.7);
  });

  test("at no hour: always shorter than a long one, always longer than a short one, or past both between two looks", () => {
    const wanted = (timeWanted: Json) => {
      const { spans, noHour } = hours(plainKit({ timeWanted }));
      return [spans.length, noHour];
    };
    expect(wanted({ leastS: { value: 10_000 } })).toEqual([0, "alwaysShorter"]);
    expect(wanted({ mostS: { value: 0.001 } })).toEqual([0, "alwaysLonger"]);
    expect(wanted({ leastS: { value: 2.001 }, mostS: { value: 2 } })).toEqual([0, "between"]);
    expect(hours(plainKit({})).spans).toHaveLength(1);
  });

  test("a hull that faces north has the sun never, and snow before it lends it light", () => {
    const noon = (daylight: Json) =>
      hours(plainKit({ daylight })).moments.find(({ minute }) => minute === 720)?.timeS ?? 0;
    const south = noon({ ...winter, facesDeg: 180 });
    const north = noon({ ...winter, facesDeg: 0 });
    expect(north).toBeGreaterThan(4 * south);
    expect(noon({ ...winter, facesDeg: 0, snow: true })).toBeLessThan(north);
  });

  test("no sun in the polar night; the far side of the date line finds its own day", () => {
    const polar = plainKit({ site: { latitudeDeg: 80, longitudeEastDeg: 15 } });
    expect(hoursFor({ kit: polar, offsetMin: 60 })).toEqual({ kind: "noSun" });
    const east = hours(plainKit({ site: { latitudeDeg: -41, longitudeEastDeg: 175 } }), 13 * 60);
    // Midsummer there: the sun is up from about six to about nine by a clock that is put forward.
    expect(east.sunUpMin).toBeGreaterThan(5 * 60);
    expect(east.sunDownMin).toBeLessThan(21.5 * 60);
    const noon = east.moments.reduce((a, b) => (a.sunDeg > b.sunDeg ? a : b));
    expect(noon.sunDeg).toBeCloseTo(90 - 41 + 23.44, 0);
  });

  test("asks for place and day, and for what a cap time lacks; no reading is asked for", () => {
    expect(hoursFor({ kit: plainKit({ site: null, daylight: null }), offsetMin: 0 })).toEqual({
      kind: "missing",
      missing: ["site", "day"],
    });
    const bare = { scene: plainKit({}).scene };
    expect(hoursFor({ kit: bare, offsetMin: 0 })).toMatchObject({
      missing: ["focalLength", "aperture", "exposureIndex"],
    });
    const none = hoursFor({ kit: plainKit({ daylight: { ...winter, day: "2027-02-31" } }), offsetMin: 0 });
    expect(none.kind).toBe("refused");
  });
});
