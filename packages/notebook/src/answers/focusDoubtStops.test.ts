import { expect, test } from "vitest";
import type { Focus } from "../records/index.ts";
import { focusDoubtStops } from "./focusDoubtStops.ts";
import { someKit } from "./testing.ts";

const doubt = (focus: Focus, lens = {}) => focusDoubtStops({ ...someKit({ lens }), focus });

test("90 mm of half a metre, a millimetre and one in a hundred out: 0.0066 stop [by hand: 2 dm / (ln 2 (1 + m)), dm = 0.18 · 0.0150]", () => {
  const focus = { by: "imageSize", imageSizeMm: { value: 90 }, subjectSizeMm: { value: 500 } } as const;
  expect(doubt(focus)).toBeCloseTo((2 * 0.18 * Math.hypot(1 / 90, 0.01)) / (Math.LN2 * 1.18), 9);
});

test("said by the distance it is what moving the tape by its doubt does to the stops [by hand: a difference]", () => {
  const at = (u: number) => 2 * Math.log2(1 + 210 / (u - 210));
  const u = 1370;
  const du = Math.hypot(5, 13.7);
  expect(doubt({ by: "subjectDistance", subjectDistanceMm: { value: u } })).toBeCloseTo(
    (at(u - du) - at(u + du)) / 2,
    4,
  );
});

test("near 1:1 the whole distance says little of the size, and the doubt stays a number", () => {
  const near = doubt({ by: "totalDistance", totalDistanceMm: { value: 840 } });
  expect(near).toBeGreaterThan(0.3);
  expect(near).toBeLessThan(1);
  expect(doubt({ by: "totalDistance", totalDistanceMm: { value: 4000 } })).toBeLessThan(0.02);
});

test("a ruler counts for itself only where infinity and focal length were measured; a distant subject has no doubt", () => {
  const ruler = { by: "extension", extensionMm: { value: 248 } } as const;
  expect(doubt(ruler)).toBeUndefined();
  const measured = { measuredFocalLengthMm: { value: 210, sd: 1 }, infinityExtensionMm: { value: 212, sd: 0.5 } };
  const dm = Math.hypot(1, 0.5, 36 / 210) / 210;
  expect(doubt(ruler, measured)).toBeCloseTo((2 * dm) / (Math.LN2 * (1 + 36 / 210)), 9);
  expect(doubt({ by: "distant" })).toBeUndefined();
  expect(doubt({ by: "extension", extensionMm: { value: 100 } })).toBeUndefined();
});
