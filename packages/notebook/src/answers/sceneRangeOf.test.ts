import { expect, test } from "vitest";
import type { Reading } from "../records/index.ts";
import { averagedReading } from "./averagedReading.ts";
import { planOf } from "./planOf.ts";
import { sceneRangeOf } from "./sceneRangeOf.ts";
import { areasOf, demoSheet, dial, idNumber, recordOf } from "./testing.ts";

const sceneOf = (readings: Parameters<typeof areasOf>[0], more = {}) =>
  recordOf("scene", idNumber(1), { ...areasOf(readings), ...more });

test("snow and shed door are 7 stops apart, 3 above and 4 below the hull [by hand: 1/128 and 1 s against 1/16]", async () => {
  const { kit } = await demoSheet("W30");
  const { areas, range } = sceneRangeOf(kit);
  expect(areas.map(({ fromGroundStops }) => Number(fromGroundStops?.toFixed(6)))).toEqual([3, 2.333333, 0, -1, -4]);
  expect(range).toMatchObject({ stops: 7, lightest: "snow", darkest: "shed door" });
  expect(range?.sd).toBeCloseTo(Math.SQRT2 * 0.15, 12);
  const plan = planOf(kit);
  expect(plan.kind === "plan" ? plan.answer.sceneRangeStops : 0).toBeCloseTo(7, 12);
});

test("without a placed area from the middle of all; what was not read stands nowhere", () => {
  const scene = sceneOf(
    [
      ["snow", dial(1 / 64)],
      ["rope", dial(1 / 4)],
    ],
    { place: null, [`areas.${idNumber(150)}.name`]: "door" },
  );
  expect(sceneRangeOf({ scene }).areas.map(({ fromGroundStops }) => fromGroundStops)).toEqual([2, -2, undefined]);
});

test("one area has no range, and a reading of the light itself makes none", () => {
  expect(sceneRangeOf({ scene: sceneOf([["hull", dial(1 / 16)]]) }).range).toBeUndefined();
  const scene = sceneOf([
    ["hull", dial(1 / 16)],
    ["light", { way: "illuminance", illuminanceLx: { value: 9000 } }],
  ]);
  expect(sceneRangeOf({ scene }).range).toBeUndefined();
});

test("three readings of one hull: the middle in stops, in the way of the last [by hand: 1/8, 1/16, 1/32 → 1/16]", () => {
  const readings = [1 / 8, 1 / 32, 1 / 16].map((timeS) => dial(timeS, "1/15") as unknown as Reading);
  const middle = averagedReading({ readings });
  expect(middle).toMatchObject({ kind: "reading", reading: { way: "time", fNumber: { value: 8 } } });
  const timeS =
    middle?.kind === "reading" && middle.reading.way === "time" ? middle.reading.timeS : { value: 0, text: "1/15" };
  expect(timeS.value).toBeCloseTo(1 / 16, 12);
  expect(timeS.text).toBeUndefined();
});

test("EV 12 and 128 cd/m², which is EV 10: 256 cd/m² between them [iso-2720, K 12.5]", () => {
  const readings: Reading[] = [
    { way: "ev100", ev100: { value: 12 } },
    { way: "luminance", luminanceCdM2: { value: 128 } },
  ];
  const middle = averagedReading({ readings });
  const found = middle?.kind === "reading" && middle.reading.way === "luminance" ? middle.reading : undefined;
  expect(found?.luminanceCdM2.value).toBeCloseTo(256, 9);
  expect(averagedReading({ readings: [] })).toBeUndefined();
  const light: Reading = { way: "illuminance", illuminanceLx: { value: 1000 } };
  expect(averagedReading({ readings: [...readings, light] })).toEqual({ kind: "mixed" });
});
