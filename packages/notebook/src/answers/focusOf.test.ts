import fc from "fast-check";
import { expect, test } from "vitest";
import type { Json } from "../records/index.ts";
import { type FocusFound, focusOf } from "./focusOf.ts";
import { planOf } from "./planOf.ts";
import { idNumber, recordOf, someKit } from "./testing.ts";

function found(scene: Readonly<Record<string, Json>>, lens: Readonly<Record<string, Json>> = {}): FocusFound {
  const focus = focusOf(someKit({ scene, lens }));
  if (focus.kind !== "focus") throw new Error(focus.kind);
  return focus;
}
const typed = (value: number) => ({ value });

test("210 mm racked out to 248: m 0.181, subject at 1.37 m, 1.62 m to the paper [gauss; by hand: u = f (1 + 1/m)]", () => {
  const focus = found({ focus: { by: "extension", extensionMm: typed(248) } });
  expect(focus.magnification.value).toBeCloseTo(38 / 210, 12);
  expect(focus.subjectDistanceMm?.value).toBeCloseTo(210 * (1 + 210 / 38), 6);
  expect(focus.totalDistanceMm?.value).toBeCloseTo(210 * (1 + 210 / 38) + 248, 6);
  expect(focus.travelMm.value).toBeCloseTo(38, 9);
});

test("said in any of the six ways, the others come out alike [property]", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.02, max: 0.95, noNaN: true }), (m) => {
      const f = 210;
      const ways: Json[] = [
        { by: "extension", extensionMm: typed(f * (1 + m)) },
        { by: "travel", travelMm: typed(f * m) },
        { by: "magnification", magnification: typed(m) },
        { by: "imageSize", imageSizeMm: typed(100 * m), subjectSizeMm: typed(100) },
        { by: "subjectDistance", subjectDistanceMm: typed(f * (1 + 1 / m)) },
        { by: "totalDistance", totalDistanceMm: typed(f * (2 + m + 1 / m)) },
      ];
      for (const focus of ways) {
        const { magnification, extensionMm, totalDistanceMm } = found({ focus });
        expect(magnification.value / m).toBeCloseTo(1, 8);
        expect(extensionMm.value / (f * (1 + m))).toBeCloseTo(1, 8);
        expect((totalDistanceMm?.value ?? 0) / (f * (2 + m + 1 / m))).toBeCloseTo(1, 8);
      }
    }),
    { seed: 20261125, numRuns: 40 },
  );
});

test("where infinity was measured only the travel beyond it counts, and the ruler keeps its own zero [by hand]", () => {
  const lens = { infinityExtensionMm: { value: 216, sd: 0.5 } };
  const ruler = found({ focus: { by: "extension", extensionMm: typed(248) } }, lens);
  expect(ruler.magnification.value).toBeCloseTo(32 / 210, 12);
  expect(ruler.extensionMm.value).toBe(248);
  const image = found({ focus: { by: "imageSize", imageSizeMm: typed(32), subjectSizeMm: typed(210) } }, lens);
  expect(image.extensionMm.value).toBeCloseTo(248, 9);
});

test("the doubt is the one of the ledger's extension: 0.05 stop at m 0.5 is 0.026 of m [by hand: dm = ds ln2 (P + m) / 2]", () => {
  const scene = { focus: { by: "magnification", magnification: typed(0.5) }, focusSdStops: 0.05 } as const;
  const focus = found(scene);
  expect(focus.magnification.sd).toBeCloseTo(0.05 * 0.34657 * 1.5, 5);
  expect(focus.subjectDistanceMm?.sd).toBeCloseTo((210 / 0.25) * focus.magnification.sd, 6);
  const plan = planOf(someKit({ scene }));
  const line = plan.kind === "plan" ? plan.answer.ledger.find((one) => one.line === "extension") : undefined;
  expect(line?.stops.sd).toBe(0.05);
});

test("a distant subject has no distance and no doubt of it; nothing said counts as distant", () => {
  for (const focus of [{ by: "distant" }, null] as const) {
    const { magnification, subjectDistanceMm, totalDistanceMm, extensionMm } = found({ focus });
    expect(magnification).toEqual({ value: 0, sd: 0 });
    expect([subjectDistanceMm, totalDistanceMm, extensionMm.value]).toEqual([null, null, 210]);
  }
});

test("beyond the bellows it is said, not refused; an extension shorter than the focal length is refused at its key", () => {
  const camera = recordOf("camera", idNumber(50), { extensionLimits: { leastMm: 140, mostMm: 420 } });
  const reach = (mm: number) => {
    const focus = focusOf({ ...someKit({ scene: { focus: { by: "travel", travelMm: typed(mm) } } }), camera });
    return focus.kind === "focus" ? focus.reach : focus.kind;
  };
  expect([reach(10), reach(210), reach(211)]).toEqual(["within", "within", "tooLong"]);
  const short = focusOf(someKit({ scene: { focus: { by: "extension", extensionMm: typed(180) } } }));
  expect(short).toMatchObject({ kind: "refused", fault: { code: "extensionShorterThanFocalLength" } });
  const near = focusOf(someKit({ scene: { focus: { by: "totalDistance", totalDistanceMm: typed(800) } } }));
  expect(near).toMatchObject({ kind: "refused", fault: { code: "closerThanFourFocalLengths" } });
});

test("figures beyond all reason never come out as no number", () => {
  for (const focus of [
    { by: "magnification", magnification: typed(1e-12) },
    { by: "magnification", magnification: typed(1e12) },
    { by: "magnification", magnification: typed(-1) },
    { by: "imageSize", imageSizeMm: typed(1e12), subjectSizeMm: typed(1e-12) },
  ]) {
    expect(JSON.stringify(focusOf(someKit({ scene: { focus } })))).not.toMatch(/NaN|Infinity|null,"sd"/);
  }
});

test("no lens, a lens without a focal length, a pinhole", () => {
  const { scene } = someKit({});
  expect(focusOf({ scene })).toEqual({ kind: "missing", missing: "lens" });
  expect(focusOf({ scene, lens: recordOf("lens", idNumber(2), {}) })).toMatchObject({ missing: "focalLength" });
  const hole = focusOf({ scene, lens: recordOf("lens", idNumber(2), { sort: "pinhole" }) });
  expect(hole).toMatchObject({ kind: "pinhole", extensionMm: 248 });
});
