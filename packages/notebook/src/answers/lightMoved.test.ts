import fc from "fast-check";
import { expect, test } from "vitest";
import type { Json, Reading } from "../records/index.ts";
import { lightMoved } from "./lightMoved.ts";
import { planOf } from "./planOf.ts";
import { areasOf, dial, idNumber, recordOf, someKit } from "./testing.ts";

const placedId = idNumber(100);
const sceneOf = (readings: Parameters<typeof areasOf>[0]) => recordOf("scene", idNumber(1), areasOf(readings));
const read = (timeS: number) => dial(timeS) as unknown as Reading;

test("the hull a stop darker: every other area a stop darker, in the way it was read [by hand]", () => {
  const scene = sceneOf([
    ["hull", dial(1 / 16, "1/15")],
    ["snow", { way: "ev", kind: "incident", ev: { value: 13, text: "13" }, iso: { value: 25 } }],
    ["jug", { way: "ev100", ev100: { value: 12 } }],
    ["rope", { way: "luminance", luminanceCdM2: { value: 64 } }],
    ["door", { way: "illuminance", illuminanceLx: { value: 80 } }],
    ["slip", dial(1 / 8, "1/8")],
  ]);
  const { stops, moved } = lightMoved({ scene, placedId, reading: read(1 / 8) });
  expect(stops).toBeCloseTo(-1, 12);
  expect(moved.map(({ areaId }) => areaId)).toEqual([1, 2, 3, 4, 5].map((place) => idNumber(100 + place)));
  // What was typed and what stood on the dial is no longer what was read: only the figure remains.
  expect(moved.map(({ reading }) => reading)).toEqual([
    { way: "ev", kind: "incident", ev: { value: 12 }, iso: { value: 25 } },
    { way: "ev100", ev100: { value: 11 } },
    { way: "luminance", luminanceCdM2: { value: 32 } },
    { way: "illuminance", illuminanceLx: { value: 40 } },
    { way: "time", timeS: { value: 1 / 4 }, fNumber: { value: 8 }, iso: { value: 100 } },
  ]);
});

test("a reading in another way is compared as light: EV 10 at ISO 100 is 128 cd/m² [iso-2720, K 12.5]", () => {
  const scene = sceneOf([
    ["hull", dial(1 / 16)],
    ["rope", dial(1 / 8)],
  ]);
  const asLuminance: Reading = { way: "luminance", luminanceCdM2: { value: 256 } };
  const { stops, moved } = lightMoved({ scene, placedId, reading: asLuminance });
  expect(stops).toBeCloseTo(1, 12);
  expect(moved[0]?.reading).toMatchObject({ timeS: { value: 1 / 16 } });
  // EV 9 on a dial at ISO 25 is EV 11 at ISO 100.
  const asEv: Reading = { way: "ev", ev: { value: 9 }, iso: { value: 25 } };
  expect(lightMoved({ scene, placedId, reading: asEv }).stops).toBeCloseTo(1, 12);
  expect(lightMoved({ scene, placedId, reading: { way: "ev100", ev100: { value: 9 } } }).stops).toBeCloseTo(-1, 12);
  // 1280 lx are EV 9 by C = 250.
  const asLux: Reading = { way: "illuminance", illuminanceLx: { value: 1280 } };
  expect(lightMoved({ scene, placedId, reading: asLux }).stops).toBeCloseTo(-1, 12);
  // The dial set otherwise: f/16 for 1/4 s at ISO 100 is EV 10 too.
  const otherDial = { way: "time", timeS: { value: 1 / 4 }, fNumber: { value: 16 }, iso: { value: 100 } } as Reading;
  expect(lightMoved({ scene, placedId, reading: otherDial }).stops).toBeCloseTo(0, 12);
});

test("an area without a reading does not move; a placed area without one says nothing of the light", () => {
  const scene = recordOf("scene", idNumber(1), {
    ...areasOf([
      ["hull", dial(1 / 16)],
      ["rope", dial(1 / 8)],
    ]),
    [`areas.${idNumber(150)}.name`]: "door",
  });
  expect(lightMoved({ scene, placedId, reading: read(1 / 32) }).moved).toHaveLength(1);
  const unread = lightMoved({ scene, placedId: idNumber(150), reading: read(1 / 32) });
  expect(unread.stops).toBe(0);
  expect(unread.moved.map(({ reading }) => reading)).toMatchObject([
    { timeS: { value: 1 / 16 } },
    { timeS: { value: 1 / 8 } },
  ]);
});

test("the differences between the areas stay, and the cap time moves by what the light moved [property]", () => {
  const timeS = fc.double({ min: 1 / 500, max: 30, noNaN: true });
  fc.assert(
    fc.property(timeS, timeS, timeS, (hull, rope, hullNow) => {
      const fields = areasOf([
        ["hull", dial(hull)],
        ["rope", dial(rope)],
      ]);
      const before = planOf(someKit({ scene: fields }));
      const scene = recordOf("scene", idNumber(1), fields);
      const { stops, moved } = lightMoved({ scene, placedId, reading: read(hullNow) });
      const after = planOf(
        someKit({
          scene: {
            ...fields,
            [`readings.${idNumber(200)}.reading`]: dial(hullNow),
            [`readings.${idNumber(201)}.reading`]: moved[0]?.reading as unknown as Json,
          },
        }),
      );
      if (before.kind !== "plan" || after.kind !== "plan") throw new Error("no plan");
      const above = (plan: typeof before) => plan.answer.areas[1]?.aboveMidStops ?? Number.NaN;
      expect(above(after)).toBeCloseTo(above(before), 9);
      expect(after.answer.timeStops.value).toBeCloseTo(before.answer.timeStops.value - stops, 9);
    }),
    { seed: 20261125, numRuns: 100 },
  );
});
