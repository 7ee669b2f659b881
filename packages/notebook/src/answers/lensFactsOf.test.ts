import { expect, test } from "vitest";
import { bestHolesOf } from "./bestHolesOf.ts";
import { glassPassesOf } from "./glassPassesOf.ts";
import { lensFactsOf } from "./lensFactsOf.ts";
import { demoSheet, idNumber, recordOf } from "./testing.ts";

test("the demo's lens is f/11.4 ±0.2 [the mock-up of the shelf]", async () => {
  const { kit } = await demoSheet("W30");
  if (kit.lens === undefined) throw new Error("no lens");
  const [stop] = [...lensFactsOf({ lens: kit.lens }).fNumbers.values()];
  expect(stop).toMatchObject({ value: 11.4, measured: true });
  expect((1.645 * (stop?.sd ?? 0)).toFixed(1)).toBe("0.2");
});

test("a pupil makes an f-number only where the focal length is known, and its doubt goes along", () => {
  const stop = { [`stops.${idNumber(20)}.diameterMm`]: { value: 20, sd: 0.4 } };
  expect(lensFactsOf({ lens: recordOf("lens", idNumber(2), stop) }).fNumbers.size).toBe(0);
  const lens = recordOf("lens", idNumber(2), { ...stop, markedFocalLengthMm: { value: 200 } });
  const found = lensFactsOf({ lens }).fNumbers.get(idNumber(20));
  expect(found?.value).toBeCloseTo(10, 9);
  expect(found?.sd).toBeCloseTo(10 * 0.02 * Math.SQRT2, 6); // 2 % of the mark, 2 % of the pupil
});

test("a single lens of 250 mm: the back goes in by 4.5 mm ±1, an achromat's does not [f δ with δ = 0.018: by hand]", () => {
  const of = (correction: string) =>
    lensFactsOf({
      lens: recordOf("lens", idNumber(2), {
        markedFocalLengthMm: { value: 250 },
        chemicalFocus: { correction, found: "assumed" },
      }),
    }).chemicalShiftMm;
  expect(of("single")?.value).toBeCloseTo(4.5, 9);
  expect(of("single")?.sd).toBeCloseTo(1, 9);
  expect(of("achromat")?.value).toBe(0);
});

test("four bare surfaces pass 0.83, eight 0.68 [n about 1.55: 0.8265 and 0.6831, surface-reflection]", () => {
  expect(glassPassesOf({ count: 4, coating: "bare" }).value).toBeCloseTo(0.8265, 2);
  expect(glassPassesOf({ count: 8, coating: "bare" }).value).toBeCloseTo(0.6831, 2);
  expect(glassPassesOf({ count: 0, coating: "bare" }).value).toBe(1);
});

test("the best hole 200 mm off is 0.63 mm for the eye [pinhole-pages: 1.9 √(f λ)], smaller for paper that sees blue", () => {
  const { eyeMm, blueMm } = bestHolesOf({ extensionMm: 200 });
  expect(eyeMm).toBeCloseTo(0.63, 2);
  expect(blueMm).toBeCloseTo(eyeMm * Math.sqrt(450 / 550), 9);
});
