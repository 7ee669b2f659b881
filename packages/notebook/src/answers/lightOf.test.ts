import { expect, test } from "vitest";
import { lampMoved } from "./lampMoved.ts";
import { lightOf } from "./lightOf.ts";
import { planOf } from "./planOf.ts";
import { someKit } from "./testing.ts";

const sources = ["daylight:5500", "daylight:10000", "filament:2700", "whiteLed:4000"];
const ownSheets = { found: { how: "ownSheets", source: "daylight:6500" } } as const;

test.each([
  ["an index that was told", someKit({})],
  ["an index from own sheets under an overcast", someKit({ exposureIndex: ownSheets })],
  [
    "a bromide paper behind old thin glass",
    someKit({ paperBox: { sensitivity: "bromide" }, lens: { glass: "simple" } }),
  ],
])("%s: each light as the ledger would charge it", (_, kit) => {
  for (const { source, stops } of lightOf({ kit, sources }).lights) {
    const plan = planOf({ ...kit, scene: { ...kit.scene, light: { source } } });
    const line = plan.kind === "plan" ? plan.answer.ledger.find((one) => one.line === "colourOfLight") : undefined;
    expect(stops?.value).toBeCloseTo(line?.stops.value ?? Number.NaN, 12);
    expect(stops?.sd).toBeCloseTo(line?.stops.sd ?? Number.NaN, 12);
  }
});

test("a filament asks a chlorobromide paper for 2.08 stops more than the meter says [peer: sums over 44 wavelengths]", () => {
  const light = lightOf({ kit: someKit({ paperBox: { sensitivity: "chlorobromide" } }), sources });
  expect(light.lights.find(({ source }) => source === "filament:2700")?.stops?.value).toBeCloseTo(2.0757, 3);
  expect(light).toMatchObject({ source: "daylight:5500", supposed: true, thenSource: undefined });
});

test("a chloride paper hardly sees a white LED: a bound, no figure; a temperature no table reaches is not offered", () => {
  const kit = someKit({ paperBox: { sensitivity: "chloride" } });
  const { lights } = lightOf({ kit, sources: ["whiteLed:5000", "whiteLed:9000", "daylight:5500"] });
  expect(lights.map(({ source, atLeastStops }) => [source, atLeastStops])).toEqual([
    ["whiteLed:5000", 4],
    ["daylight:5500", undefined],
  ]);
});

test("a lamp moved from 1.5 to 3 m costs exactly 2 stops, and four times the time [photometry: inverse square]", () => {
  const plan = planOf(someKit({ paperBox: { reciprocity: { exponent: 1, fromS: 1 } } }));
  const moved = lampMoved({ fromMm: 1500, toMm: 3000, plan });
  expect(moved).toMatchObject({ kind: "moved", stops: { value: 2 } });
  const timeS = plan.kind === "plan" ? plan.answer.timeS : 0;
  expect(moved.kind === "moved" ? moved.time?.timeS : 0).toBeCloseTo(4 * timeS, 6);
});

test("a panel of 30 cm radius from 1 to 2 m: log2(4.09 / 1.09) = 1.91 stops, not 2 [by hand: I / (d² + a²)]", () => {
  const moved = lampMoved({ fromMm: 1000, toMm: 2000, radiusMm: 300 });
  expect(moved.kind === "moved" ? moved.stops.value : 0).toBeCloseTo(Math.log2(4.09 / 1.09), 12);
  expect(moved).toMatchObject({ time: undefined });
});

test("a centimetre of doubt at 0.5 m is 0.058 stop [by hand: 2 / (d ln 2)]; a distance of nothing is refused", () => {
  const moved = lampMoved({ fromMm: 500, toMm: 500 });
  expect(moved.kind === "moved" ? moved.stops.sd : 0).toBeCloseTo(Math.SQRT2 * 0.0577, 3);
  expect(lampMoved({ fromMm: 0, toMm: 500 })).toMatchObject({
    kind: "refused",
    fault: { code: "distanceNotPositive" },
  });
});
