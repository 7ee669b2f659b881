import { expect, test } from "vitest";
import type { Json } from "../records/index.ts";
import { type Sharp, sharpOf } from "./sharpOf.ts";
import { demoSheet, idNumber, recordOf, someKit } from "./testing.ts";

type Change = Parameters<typeof someKit>[0];
const format13x18 = { widthMm: 130, heightMm: 180 };

function sharp(change: Change, camera: Readonly<Record<string, Json>> = { format: format13x18 }): Sharp {
  const answer = sharpOf({ ...someKit(change), camera: recordOf("camera", idNumber(50), camera) });
  if (answer.kind !== "sharp") throw new Error(JSON.stringify(answer));
  return answer;
}

test("the skiff at f/11.4, 248 mm: sharp from 1.31 to 1.43 m, disc 0.15 mm, corners 0.5 stop [by hand]", async () => {
  const { notebook, kit } = await demoSheet("W30");
  const camera = notebook.peek(kit.scene.cameraId ?? "") as ReturnType<typeof recordOf<"camera">>;
  const answer = sharpOf({ ...kit, camera }) as Sharp;
  expect(answer.confusionMm).toBeCloseTo(Math.hypot(130, 180) / 1500, 12);
  // g = c / (m D) = 0.148 / (0.18095 · 18.42) = 0.0444; s = 210 (1/0.18095 + 1) = 1370.5 mm.
  expect(answer.nearMm.value / 1000).toBeCloseTo(1.31, 2);
  expect((answer.farMm?.value ?? 0) / 1000).toBeCloseTo(1.43, 2);
  expect(answer.cornerStops).toBeCloseTo(2 * Math.log2(1 + (111.018 / 248) ** 2), 4);
  // The lens of the demo lights 260 mm at infinity, 260 · 248/210 here.
  expect(answer.covered).toMatchObject({ covers: true });
  expect(answer.covered?.circleMm).toBeCloseTo((260 * 248) / 210, 9);
  expect(answer.takesInMm?.widthMm).toBeCloseTo((130 * 210) / 38, 6);
});

test("210 mm, f/16, disc 0.1 mm, distant: from 27.6 m, hyperfocal 27772.5 mm less one focal length, to the horizon [by hand]", () => {
  const answer = sharp({
    scene: { focus: { by: "distant" }, confusion: { by: "typed", confusionMm: { value: 0.1 } } },
    lens: { [`stops.${idNumber(20)}.marked`]: { value: 16 } },
  });
  expect(answer.nearMm.value).toBeCloseTo(27_772.5 - 210, 6);
  expect([answer.farMm, answer.takesInMm, answer.focusMm]).toEqual([null, undefined, null]);
  // The limit is the one of a subject ever farther away.
  const far = sharp({
    scene: {
      focus: { by: "magnification", magnification: { value: 1e-7 } },
      confusion: { by: "typed", confusionMm: { value: 0.1 } },
    },
    lens: { [`stops.${idNumber(20)}.marked`]: { value: 16 } },
  });
  expect(far.nearMm.value / answer.nearMm.value).toBeCloseTo(1, 4);
});

test("in the hand a disc of 0.2 mm; also without any format; with the scene's own format its diagonal", () => {
  expect(sharp({ scene: { confusion: { by: "inTheHand" } } }, {}).confusionMm).toBe(0.2);
  expect(sharp({}, {})).toMatchObject({ confusionMm: 0.2, confusionBy: "inTheHand", format: undefined });
  const own = sharp({ scene: { format: { widthMm: 90, heightMm: 120 } } }, {});
  expect(own.confusionMm).toBeCloseTo(0.1, 12);
});

test("circle 210 over 127 × 101.6: shift 28.39 along the long side; 150 does not cover it [by hand]", () => {
  const format = { widthMm: 127, heightMm: 101.6 };
  const distant = { scene: { focus: { by: "distant" } } } as const;
  const wide = sharp({ ...distant, lens: { imageCircleMm: 210 } }, { format });
  expect(wide.covered?.shiftMm?.alongWidth).toBeCloseTo(28.393199, 5);
  expect(wide.covered?.shiftMm?.alongHeight).toBeCloseTo(32.822664, 5);
  const narrow = sharp({ ...distant, lens: { imageCircleMm: 150 } }, { format });
  expect(narrow.covered).toEqual({ circleMm: 150, covers: false, shiftMm: undefined });
  expect(sharp(distant, { format }).covered).toBeUndefined();
});

test("a single lens of 250 mm at m 0.25: push the back in by 7.0 mm, ±1.6 as one sd [by hand: (1 + m)² f δ]", () => {
  const change: Change = {
    lens: { markedFocalLengthMm: { value: 250 }, chemicalFocus: { correction: "single", found: "assumed" } },
    scene: { focus: { by: "magnification", magnification: { value: 0.25 } } },
  };
  expect(sharp(change).chemicalFocus).toMatchObject({
    kind: "push",
    shiftMm: expect.closeTo(7.03125, 9),
    sdMm: 1.5625,
  });
  // At f/11, N_e = 11.31 · 1.25: left undone a point becomes a disc of 0.497 mm.
  const push = sharp(change).chemicalFocus;
  expect(push.kind === "push" ? push.blurMm : 0).toBeCloseTo(0.49718448, 6);
  expect(sharp({ ...change, paperBox: { sensitivity: "orthochromatic" } }).chemicalFocus.kind).toBe("otherLight");
  const filter = { [`filters.${idNumber(30)}.filter`]: { by: "factor", value: 2 } };
  expect(sharp({ ...change, scene: { ...change.scene, ...filter } }).chemicalFocus.kind).toBe("otherLight");
  expect(sharp({}).chemicalFocus.kind).toBe("none");
});

test("no lens, no stop, a pinhole, a focus that cannot be: each its own answer", () => {
  const { scene } = someKit({});
  expect(sharpOf({ scene })).toEqual({ kind: "missing", missing: "lens" });
  const lens = recordOf("lens", idNumber(2), { markedFocalLengthMm: { value: 210 } });
  expect(sharpOf({ scene, lens })).toEqual({ kind: "missing", missing: "aperture" });
  expect(sharpOf({ scene, lens: recordOf("lens", idNumber(2), { sort: "pinhole" }) })).toEqual({ kind: "pinhole" });
  expect(sharpOf(someKit({ scene: { focus: { by: "extension", extensionMm: { value: 100 } } } })).kind).toBe("refused");
});
