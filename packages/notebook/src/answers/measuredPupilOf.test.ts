import { expect, test } from "vitest";
import { measuredPupilOf } from "./measuredPupilOf.ts";

test("18.4 mm before 210 mm is f/11.41 [N = f / D: by hand]", () => {
  const { fNumber, diameterMm } = measuredPupilOf({
    diametersMm: [18.4],
    ruler: "halfMm",
    focalLengthMm: { value: 210, sd: 0 },
  });
  expect(diameterMm).toEqual({ value: 18.4, sd: 0.3 });
  expect(fNumber?.value).toBeCloseTo(11.413, 3);
  expect(fNumber?.sd).toBeCloseTo((11.413 * 0.3) / 18.4, 3);
});

test("readings that differ by more than the ruler tells widen the doubt; equal ones do not narrow it below the ruler's", () => {
  const three = measuredPupilOf({ diametersMm: [17, 18, 19], ruler: "calliper" });
  expect(three.diameterMm).toEqual({ value: 18, sd: expect.closeTo(1 / Math.sqrt(3), 9) });
  expect(measuredPupilOf({ diametersMm: [18, 18, 18], ruler: "calliper" }).diameterMm.sd).toBe(0.15);
});

test("half a millimetre in 20 mm is 0.07 stop [2 log2(1 + 0.5/20) = 0.0712: by hand, first order]", () => {
  const { sdStops } = measuredPupilOf({ diametersMm: [20], ruler: "wholeMm" });
  expect(sdStops).toBeCloseTo(2 * Math.log2(1 + 0.5 / 20), 2);
});
