import { expect, test } from "vitest";
import { cardStopsOf } from "./cardStopsOf.ts";

function stopsOf(asked: Parameters<typeof cardStopsOf>[0]) {
  const answer = cardStopsOf(asked);
  if (answer.kind !== "stops") throw answer.fault;
  return answer.stops;
}

test("at the glass f/8, 11, 16, 22 of 180 mm are 22.5, 15.91, 11.25, 7.95 mm [f / N: by hand]", () => {
  const holes = stopsOf({ focalLengthMm: 180, fNumbers: [8, 2 ** 3.5, 16, 2 ** 4.5] }).map(({ holeMm }) => holeMm);
  expect(holes.map((one) => Number(one.toFixed(3)))).toEqual([22.5, 15.91, 11.25, 7.955]);
});

test("a card 30 mm behind 250 mm: 20 mm are f/11, seen from the front 22.7 mm, pupil ratio 0.88 [1/f = 1/u + 1/v: by hand]", () => {
  const place = { side: "behind", distanceMm: 30, glassMm: 60 } as const;
  const [cut] = stopsOf({ focalLengthMm: 250, place, fNumbers: [11] });
  expect(cut).toMatchObject({ holeMm: 20, fNumber: 11 });
  expect(cut?.diameterMm).toBeCloseTo(22.727273, 6);
  expect(cut?.pupilRatio).toBeCloseTo(0.88, 12);
  const [held] = stopsOf({ focalLengthMm: 250, place, holesMm: [20] });
  expect(held).toEqual(cut);
});

test("before the glass the hole is its own pupil, and a card away from the glass darkens the corners [similar triangles: by hand]", () => {
  const place = { side: "front", distanceMm: 40, glassMm: 60 } as const;
  const [stop] = stopsOf({ focalLengthMm: 250, place, holesMm: [20] });
  expect(stop).toMatchObject({ diameterMm: 20, fNumber: 12.5 });
  expect(stop?.halfMmStops).toBeCloseTo(0.0712, 4); // 0.5 mm in 20 mm
  expect(stop?.corners?.fullDeg).toBeCloseTo(26.565051, 6);
  expect(stop?.corners?.noneDeg).toBeCloseTo(45, 9);
  expect(stop?.corners?.noneCircleMm).toBeCloseTo(500, 9);
});

test.each([
  [{ side: "behind", distanceMm: 250 }, "stopBeyondFocus"],
  [{ side: "front", distanceMm: 30, glassMm: 15 }, "stopWiderThanGlass"],
] as const)("what cannot be is an answer, not an error: %o", (place, code) => {
  expect(cardStopsOf({ focalLengthMm: 250, place, holesMm: [20] })).toMatchObject({ kind: "refused", fault: { code } });
});
