import { focusOf, kitOf, type Sharp, sharpOf } from "@captray/notebook/answers";
import { openNotebook } from "@captray/notebook/journal";
import type { Camera, Focus, Json } from "@captray/notebook/records";
import { fillDemo } from "@captray/notebook/starters";
import { openMemoryStorage } from "@captray/notebook/storage";
import { describe, expect, test } from "vitest";
import { checklistSteps } from "../checklist/checklistSteps.ts";
import { withSet } from "../recordMerge.ts";
import {
  focusFrom,
  focusRows,
  focusTexts,
  focusWays,
  parseFormat,
  readFormat,
  readMagnification,
} from "./focusForm.ts";
import { focusProblem, setUpWords } from "./focusWords.ts";
import { sharpLacks, sharpWords } from "./sharpWords.ts";

async function skiff(change: Readonly<Record<string, Json>> = {}) {
  const notebook = await openNotebook({
    storage: openMemoryStorage(),
    notebookId: "test",
    now: () => 1_795_000_000_000,
    random: () => 0.5,
    device: "testtest",
  });
  await fillDemo({ notebook });
  const kept = notebook.shelf("scene").find((one) => one.subject === "Upturned skiff before the shed");
  if (kept === undefined) throw new Error("no skiff");
  const scene = withSet<typeof kept>(kept, { id: kept.id, kind: "scene", set: change });
  const camera = notebook.peek(scene.cameraId ?? "") as Camera;
  return { ...kitOf({ notebook, scene }), camera };
}

describe("the focus as it is typed", () => {
  test.each([
    ["extension", "248", ""],
    ["travel", "38 mm", ""],
    ["magnification", "1:5.5", ""],
    ["imageSize", "90", "50 cm"],
    ["subjectDistance", "1.37 m", ""],
    ["totalDistance", "64 in", ""],
  ] as const)("by %s: what is kept shows again as it was typed", (way, first, second) => {
    const focus = focusFrom(way, { first, second });
    expect(focusTexts(focus, way)).toEqual({ first, second });
    for (const { value } of focusWays)
      if (value !== way) expect(focusTexts(focus, value)).toEqual({ first: "", second: "" });
  });

  test("what cannot be read, and one half of an image size, keeps the last sound focus", () => {
    expect(focusFrom("imageSize", { first: "90", second: "" })).toBeUndefined();
    for (const first of ["", "0", "-5", "1e400", "12 bananas"])
      expect(focusFrom("extension", { first, second: "" })).toBeUndefined();
    expect(focusFrom("distant", { first: "", second: "" })).toEqual({ by: "distant" });
  });

  test("a magnification as a number or a ratio; a format with × or x, cm or inches", () => {
    expect(readMagnification("1:4")).toMatchObject({ value: 0.25, understood: "1 to 4" });
    expect(readMagnification("2")).toMatchObject({ understood: "2 to 1" });
    for (const text of ["1:0", "0", "x", "1:2:3:"]) expect(readMagnification(text).kind).not.toBe("read");
    expect(parseFormat("13 × 18 cm")).toEqual({ widthMm: 130, heightMm: 180 });
    expect(parseFormat("180x130")).toEqual({ widthMm: 130, heightMm: 180 });
    expect(parseFormat("13x18")).toEqual({ widthMm: 130, heightMm: 180 });
    expect(parseFormat("4x5 in")?.heightMm).toBeCloseTo(127, 9);
    expect(readFormat("thirteen").kind).toBe("unreadable");
  });
});

describe("the skiff set up", () => {
  test("from 248 mm all the other ways, each with its ± [by hand: m = 38/210, u = f (1 + 1/m), ±1.645 sd of 0.01 stop]", async () => {
    const kit = await skiff();
    const found = focusOf(kit);
    if (found.kind !== "focus") throw new Error(found.kind);
    const rows = focusRows({ found, format: kit.camera.format, lengthUnit: "mm" });
    expect(rows.map(({ way }) => way)).toEqual([
      "travel",
      "magnification",
      "imageSize",
      "subjectDistance",
      "totalDistance",
      "takesIn",
    ]);
    expect(rows.find(({ way }) => way === "subjectDistance")).toMatchObject({ value: "1.37 m", plusMinus: "0.04" });
    expect(rows.find(({ way }) => way === "magnification")?.value).toBe("0.181, 1 to 5.5");
    const inFeet = focusRows({ found, format: undefined, lengthUnit: "inch" });
    expect(inFeet.find(({ way }) => way === "subjectDistance")?.value).toBe("4.50 ft");
    expect(setUpWords({ scene: kit.scene, lens: kit.lens, focus: found, sharp: sharpOf(kit), lengthUnit: "mm" })).toBe(
      "210 mm at f/11.4, subject at 1.37 m",
    );
  });

  test("Sharp from 1.31 to 1.43 m at f/11.4; 0.15 mm; covers 13 × 18; corner 0.5 stop [by hand]", async () => {
    const kit = await skiff();
    const words = sharpWords({ sharp: sharpOf(kit) as Sharp, lengthUnit: "mm" });
    expect([words.head, words.at]).toEqual(["Sharp from 1.31 to 1.43 m", "at f/11.4"]);
    expect(words.below).toContain("Blur at most 0.15 mm.");
    expect(words.below).toContain("Covers 13 × 18 cm; the corner loses 0.5 stop.");
  });

  test("distant, out of the bellows, shorter than the focal length, without a lens: each its own words", async () => {
    const distant = await skiff({ focus: { by: "distant" } });
    expect(sharpWords({ sharp: sharpOf(distant) as Sharp, lengthUnit: "mm" }).head).toMatch(/to the horizon$/);
    const close = await skiff({ focus: { by: "magnification", magnification: { value: 1.5 } } });
    const far = focusProblem({ focus: focusOf(close), camera: close.camera, lengthUnit: "mm" });
    expect(far?.head).toBe("The bellows do not reach so far");
    expect(far?.say).toContain("140 mm to 420 mm; this wants 525 mm");
    const short = await skiff({ focus: { by: "extension", extensionMm: { value: 180 } } });
    expect(focusProblem({ focus: focusOf(short), camera: undefined, lengthUnit: "mm" })?.head).toContain("shorter");
    expect(sharpLacks(sharpOf(short), "mm")).toContain("shorter than the focal length");
    expect(sharpLacks(sharpOf({ scene: distant.scene }), "mm")).toBe("What is sharp needs a lens.");
  });
});

describe("the checklist", () => {
  const keys = (steps: readonly { readonly key: string }[]) => steps.map(({ key }) => key);

  test("a single lens of 250 mm at m 0.25: the push of 7.0 mm stands between focusing and clamping [by hand: (1 + m)² f δ]", () => {
    const steps = checklistSteps({
      chemicalFocus: { kind: "push", shiftMm: 7.03125, sdMm: 1.5625, blurMm: 0.497 },
      focusSaid: undefined,
      boxName: "box C",
    });
    expect(keys(steps).slice(1, 4)).toEqual(["focus", "push", "clamp"]);
    const push = steps.find(({ key }) => key === "push");
    expect(push?.say).toBe("Now push the back in, towards the lens, by 7.0 mm.");
    expect(push?.why).toContain("give or take 2.6");
    expect(push?.why).toContain("a disc of 0.5 mm");
  });

  test("other lenses have no such step; the cap is on before the slide comes out", () => {
    const plain = keys(checklistSteps({ chemicalFocus: { kind: "none" }, focusSaid: undefined, boxName: undefined }));
    expect(plain).not.toContain("push");
    expect(plain.indexOf("cap")).toBeLessThan(plain.indexOf("slide"));
    expect(plain.indexOf("holder")).toBeLessThan(plain.indexOf("slide"));
    const other = checklistSteps({ chemicalFocus: { kind: "otherLight" }, focusSaid: undefined, boxName: undefined });
    expect(other.find(({ key }) => key === "push")?.say).toContain("slanted ruler");
  });
});

test("every way of the form is one the record knows", () => {
  const ways: readonly Focus["by"][] = focusWays.map(({ value }) => value);
  expect(new Set(ways).size).toBe(7);
});
