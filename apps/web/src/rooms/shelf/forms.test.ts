import { type ExposureIndex, kinds, type Lens, newId, type PaperBox } from "@captray/notebook/records";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { FormPart, Texts } from "./form/formTypes.ts";
import { changedOnly, waitsFor } from "./form/fromTexts.ts";
import { lengthsIn, readDay, readLengths, readMm } from "./form/readers.ts";
import { numbersIn } from "./measure/cutForm.ts";
import { focalAsked, focalSet } from "./measure/focalForm.ts";
import { meterAsked } from "./measure/meterOffsetForm.ts";
import { boxParts, boxSet, boxTexts, guessedIndex, indexSet, nextBoxName } from "./things/boxForm.ts";
import { lensGranted, lensSet, lensTexts, lensWaits } from "./things/lensForm.ts";
import { lensParts } from "./things/lensParts.ts";
import { cameraParts, cameraSet, cameraTexts, lampSet, lampTexts, meterSet, meterTexts } from "./things/otherForms.ts";

const idOf = (n: number) => newId({ now: n, random: () => 0.5 });
const stopId = idOf(1);

function lensFrom(set: ReturnType<typeof lensSet>): Lens {
  return kinds.lens.assemble(idOf(2), new Map(Object.entries(set).filter(([, value]) => value !== null)));
}
const typedLens = (texts: Texts) => ({ ...lensTexts(undefined, stopId), ...texts });
const stopKey = (field: string) => `${stopId}.${field}`;
const saysOf = (parts: readonly FormPart[]) => parts.flatMap(({ says = [] }) => says).join(" ");

describe("a lens's form", () => {
  it("engraved f/11 is the exact member of the series, a measured 11 is 11 [ISO 517 marks; by hand]", () => {
    const texts = { focalLength: "210", [stopKey("marked")]: "11", [stopKey("measured")]: "11" };
    const lens = lensFrom(lensSet(typedLens(texts), undefined));
    expect(lens.stops[0]?.marked?.value).toBeCloseTo(2 ** 3.5, 9);
    expect(lens.stops[0]?.measuredFNumber?.value).toBe(11);
    expect(lens.name).toBe("210 mm");
  });

  it("shows again what was put in, and an emptied field is cleared", () => {
    const texts = {
      name: "the shed lens",
      focalLength: "8 1/2 in",
      [stopKey("marked")]: "5.6⅓",
      infinityExtension: "221",
    };
    const lens = lensFrom(lensSet(typedLens(texts), undefined));
    expect(lensTexts(lens, "")).toMatchObject(texts);
    expect(lensSet({ ...lensTexts(lens, ""), infinityExtension: "" }, lens).infinityExtensionMm).toBeNull();
  });

  it("what was not touched is not written: its own digits and doubts stay", () => {
    const measured = { measuredFocalLengthMm: { value: 208.437, sd: 1.7 }, name: "brass", sort: "lens" };
    const lens = lensFrom(measured as never);
    const was = lensTexts(lens, stopId);
    const set = changedOnly({ was: lensSet(was, lens), now: lensSet({ ...was, name: "the brass one" }, lens) });
    expect(set).toEqual({ name: "the brass one" });
  });

  it("a single glass of +4 dioptres is 250 mm and focuses shorter for the paper: 4.5 mm ±1.6 [1000/Φ; f δ: by hand]", () => {
    const texts = typedLens({ sort: "single", dioptres: "4" });
    const lens = lensFrom(lensSet(texts, undefined));
    expect(lens).toMatchObject({ markedFocalLengthMm: { value: 250 }, dioptres: { value: 4, text: "4" } });
    expect(lens.chemicalFocus).toEqual({ correction: "single", found: "assumed" });
    expect(saysOf(lensParts(texts, {}))).toContain("push the back in by 4.5 mm ±1.6");
    expect(lensTexts(lens, "")).toMatchObject({ sort: "single", dioptres: "4" });
  });

  it("a hole in a card behind the glass is known by its pupil and pupil ratio, and follows the card [1/f = 1/u + 1/v: by hand]", () => {
    const texts = typedLens({ focalLength: "250", place: "behind", placeDistance: "30", [stopKey("hole")]: "20" });
    const lens = lensFrom(lensSet(texts, undefined));
    expect(lens.stops[0]?.diameterMm?.value).toBeCloseTo(22.727273, 6);
    expect(lens.pupilRatio?.value).toBeCloseTo(0.88, 9);
    expect(saysOf(lensParts(texts, {}))).toContain("Hole 20 mm: f/11, pupil 22.7 mm.");
    const held = lensTexts(lens, "");
    expect(held).toMatchObject({ pupilRatio: "", [stopKey("hole")]: "20", [stopKey("diameter")]: "" });
    const moved = lensSet({ ...held, place: "" }, lens);
    expect(moved).toMatchObject({ stopPlace: null, pupilRatio: null });
    expect(moved[`stops.${stopId}.diameterMm`]).toMatchObject({ value: 20 });
  });

  it("a card wider open than its glass, or beyond its focus, gets its sentence and is not kept", () => {
    const typed = { focalLength: "250", place: "behind", placeDistance: "260", [stopKey("hole")]: "20" };
    const parts = lensParts(typedLens(typed), {});
    expect(waitsFor({ parts, texts: typedLens(typed) })).toMatch(/\(260 mm\)/);
  });

  it("four bare surfaces pass 0.83: 0.12 stop more than a meter supposes [log2(0.90 / 0.827): by hand]", () => {
    const texts = typedLens({ focalLength: "210", surfaces: "4", coating: "bare" });
    expect(saysOf(lensParts(texts, {}))).toContain("0.12 stop more");
    expect(lensFrom(lensSet(texts, undefined)).transmission?.value).toBeCloseTo(0.827, 3);
    expect(lensGranted(texts).join()).not.toContain("the glass");
  });

  it("a pinhole needs its hole alone; the best one is told for its distance", () => {
    const texts = typedLens({ sort: "pinhole", pinholeAt: "200" });
    expect(lensWaits(texts)).toBe("the diameter of the hole");
    expect(saysOf(lensParts(texts, {}))).toContain("0.63 mm for the eye, 0.57 mm for paper that sees blue");
    const hole = lensFrom(lensSet({ ...texts, pinhole: "0.6" }, undefined));
    expect(hole).toMatchObject({ sort: "pinhole", name: "0.6 mm pinhole", stops: [], holeMm: { value: 0.6 } });
  });
});

describe("a box's form", () => {
  const fresh = [idOf(11), idOf(12)] as const;
  const empty = boxTexts({ box: undefined, indexes: [], fresh });
  const asked = { paperBoxId: idOf(10) };
  const positive = fresh[1];

  it("an index is as sure as the way it was found: 0.70, 0.50, 0.30 stop, or as its own ± says [common practice, no source]", () => {
    const sd = (how: string, doubt = "") =>
      indexSet(
        { ...empty, [`${positive}.ei`]: "1,4", [`${positive}.found`]: how, [`${positive}.doubt`]: doubt },
        positive,
        asked,
      )?.value;
    expect([sd("guessed"), sd("told"), sd("stepTest")]).toEqual([
      { value: 1.4, sdStops: 0.7 },
      { value: 1.4, sdStops: 0.5 },
      { value: 1.4, sdStops: 0.3 },
    ]);
    expect(sd("told", "0.329")).toEqual({ value: 1.4, sdStops: expect.closeTo(0.2, 9) });
    expect(indexSet({ ...empty, [`${positive}.ei`]: "12 bananas" }, positive, asked)).toBeUndefined();
  });

  it("what a new box leaves out is guessed, and marked as taken for granted", () => {
    expect(guessedIndex("negative", asked.paperBoxId)).toMatchObject({
      value: { value: 2, sdStops: 0.7 },
      found: { how: "guessed" },
      assumed: ["value"],
    });
  });

  it("how its own sheets were made stays with an index whose figure is put right", () => {
    const found = { how: "ownSheets", source: "daylight:5500", timesS: [6, 9] } as const;
    const known = {
      id: positive,
      result: "positive",
      value: { value: 1.4, sdStops: 0.15 },
      found,
    } as unknown as ExposureIndex;
    const texts = { ...empty, [`${positive}.ei`]: "1.6", [`${positive}.found`]: "threeSheets" };
    expect(indexSet(texts, positive, { ...asked, known })?.found).toEqual(found);
  });

  it("shows again what was put in: table, filters, price, day, cut and size", () => {
    const typed = {
      ...empty,
      width: "130",
      height: "180",
      name: "box C",
      size: "13 × 18 cm",
      sheetsLeft: "14",
      sheetsWhenFull: "25",
      long: "table",
      rows: "2",
      "row.0.metered": "1",
      "row.0.needed": "1",
      "row.1.metered": "10",
      "row.1.needed": "15",
      sensitivity: "variableContrast",
      filters: "1",
      "filter.0.name": "yellow",
      "filter.0.range": "130",
      "filter.0.stops": "0.5",
      price: "40",
      currency: "EUR",
      opened: "9 November 2026",
      cutIntoParts: "4",
    };
    const box = kinds.paperBox.assemble(idOf(10), new Map(Object.entries(boxSet(typed, true)))) as PaperBox;
    expect(box).toMatchObject({
      size: { widthMm: 130, heightMm: 180 },
      reciprocityTable: [
        { meteredS: 1, neededS: 1 },
        { meteredS: 10, neededS: 15 },
      ],
      contrastFilters: [{ name: "yellow", isoRange: 130, extraStops: 0.5 }],
    });
    const { indexes: _, ...again } = boxTexts({ box, indexes: [], fresh });
    expect(again).toMatchObject(Object.fromEntries(Object.entries(typed).filter(([key]) => key in again)));
  });

  it("a table that falls, and more sheets than the box had, get their sentences", () => {
    const parts = (texts: Texts) => boxParts({ ...empty, ...texts }, { recipes: [], todayText: () => "" });
    const waits = (texts: Texts) => waitsFor({ parts: parts(texts), texts: { ...empty, ...texts } });
    const rows = { long: "table", rows: "2", "row.0.metered": "1", "row.0.needed": "3", "row.1.metered": "10" };
    expect(waits({ ...rows, "row.1.needed": "2" })).toMatch(/2 s/);
    expect(waits({ ...rows, "row.1.needed": "20" })).toBeUndefined();
    expect(waits({ sheetsLeft: "30", sheetsWhenFull: "25" })).toContain("30");
    expect(waits({ sheetsLeft: "many" })).toBe("“Sheets left” to be mended or emptied");
  });

  it("the next box takes the next letter or number that is free", () => {
    expect(nextBoxName("Box C", ["Box C"])).toBe("Box D");
    expect(nextBoxName("Box C", ["Box C", "box d"])).toBe("Box E");
    expect(nextBoxName("kraft 9", ["kraft 9"])).toBe("kraft 10");
    expect(nextBoxName("the green one", [])).toBe("the green one 2");
    expect(nextBoxName("Box Z", [])).toBe("Box Z1");
  });
});

describe("camera, meter, lamp", () => {
  it("a camera shows again what was put in; bellows that shrink when racked out get their sentence", () => {
    const texts = {
      ...cameraTexts(undefined),
      name: "red",
      size: "4 × 5 in",
      least: "140",
      most: "420",
      lastExtension: "9 3/4 in",
    };
    const camera = kinds.camera.assemble(idOf(20), new Map(Object.entries(cameraSet(texts, true))));
    expect(cameraTexts(camera)).toMatchObject({
      size: "4 × 5 in",
      least: "140",
      most: "420",
      lastExtension: "9 3/4 in",
    });
    const wrong = { ...texts, most: "120" };
    expect(waitsFor({ parts: cameraParts(wrong), texts: wrong })).toContain("120");
  });

  it("a meter of incident light has a C and no K", () => {
    const set = meterSet(
      { ...meterTexts(undefined), reads: "incident", meterK: "14", meterC: "330", offset: "−0.5" },
      true,
    );
    expect(set).toMatchObject({ reads: "incident", meterC: 330, offsetStops: { value: -0.5, sd: 0.1 } });
    expect(set).not.toHaveProperty("meterK");
  });

  it("a bulb without a figure is taken for 2700 K, and said so", () => {
    expect(lampSet({ ...lampTexts(undefined), name: "desk" }, true)).toMatchObject({
      source: "filament:2700",
      assumed: ["source"],
    });
    expect(lampSet({ sort: "whiteLed", kelvin: "5000" }, true)).toMatchObject({
      source: "whiteLed:5000",
      cctK: { value: 5000 },
    });
    expect(lampSet({ sort: "other" }, true)).not.toHaveProperty("source");
  });
});

describe("what is measured", () => {
  it("a row of readings is a mean; anything else in it is not read", () => {
    expect(lengthsIn("18.3 18,5 18.4 mm")).toEqual([18.3, 18.5, 18.4]);
    expect(readLengths("18 bananas")).toMatchObject({ kind: "unreadable" });
    expect(readMm("0")).toMatchObject({ kind: "unreadable" });
  });

  it("a focal length is asked for once all of it is there; from infinity it is kept only where nothing better is known", () => {
    expect(focalAsked({ way: "twoSizes", v1: "221", v2: "305", image2: "90" })).toBeUndefined();
    expect(
      focalAsked({ way: "twoSizes", v1: "221", image1: "50", v2: "305", image2: "90", subject2: "200" }),
    ).toBeUndefined();
    expect(focalAsked({ way: "twoSizes", v1: "210", v2: "305", image2: "90", subject2: "200" })).toMatchObject({
      first: { extensionMm: 210 },
    });
    const answer = {
      kind: "found",
      focalLengthMm: { value: 210.123, sd: 2.34567 },
      infinityExtensionMm: { value: 212.5, sd: 0.5 },
    } as const;
    const marked = lensFrom({ markedFocalLengthMm: { value: 210 } });
    expect(focalSet({ answer, by: "infinity", lens: marked })).toEqual({
      infinityExtensionMm: { value: 212.5, sd: 0.5 },
    });
    expect(focalSet({ answer, by: "twoSizes", lens: marked })).toMatchObject({
      measuredFocalLengthMm: { value: 210.12, sd: 2.346 },
      focalLengthBy: "twoSizes",
    });
    expect(focalSet({ answer, by: "infinity", lens: lensFrom({}) })).toHaveProperty("measuredFocalLengthMm");
  });

  it("a meter's light is asked for once both readings are there; the sun takes the day of the year [21 June is day 172]", () => {
    const now = { at: Date.UTC(2026, 5, 21, 10), offsetMin: 0 };
    const dial = { time: "1/60", stop: "8", iso: "100" };
    expect(meterAsked({ by: "otherMeter", ...dial }, now)).toBeUndefined();
    expect(meterAsked({ by: "fullSun", shadow: "27", ...dial }, now)?.light).toEqual({
      by: "fullSun",
      altitudeDeg: 27,
      dayOfYear: 172,
    });
    expect(meterAsked({ by: "knownLight", luminance: "512", ...dial }, now)?.reading.timeS).toBeCloseTo(1 / 64, 9);
  });

  it("days are read as they are written, and the 31st of February is none", () => {
    const noon = Date.UTC(2026, 10, 9, 12);
    for (const text of ["9.11.2026", "9/11/2026", "2026-11-09", "9 November 2026", "9. Nov 2026"])
      expect(readDay(text)).toMatchObject({ kind: "read", value: noon });
    for (const text of ["31.2.2026", "soon", "9 Brumaire 2026"]) expect(readDay(text).kind).toBe("unreadable");
  });

  it("a series is read whole or not at all", () => {
    expect(numbersIn("f/8 11 16")?.map(({ text }) => text)).toEqual(["8", "11", "16"]);
    expect(numbersIn("8 8")).toBeUndefined();
    expect(numbersIn("8 wide 16")).toBeUndefined();
  });
});

it("whatever is typed, what a form writes passes its kind's schema, and no sentence breaks [property]", () => {
  const text = fc.oneof(
    fc.constantFrom(
      "",
      "0",
      "-3",
      "1e400",
      "1/0",
      "12 bananas",
      "210",
      "2,5",
      "f/11",
      "0.9",
      "lens",
      "pinhole",
      "single",
    ),
    fc.constantFrom(
      "behind",
      "front",
      "table",
      "exponent",
      "incident",
      "other",
      "variableContrast",
      "told",
      "9.11.2026",
    ),
    fc.string({ maxLength: 14 }),
    fc.double().map(String),
  );
  const fresh = [idOf(31), idOf(32)] as const;
  const start: Texts = {
    ...lensTexts(undefined, stopId),
    ...cameraTexts(undefined),
    ...meterTexts(undefined),
    ...boxTexts({ box: undefined, indexes: [], fresh }),
    ...lampTexts(undefined),
    filters: "2",
    rows: "2",
    "row.0.metered": "",
    "row.0.needed": "",
    "row.1.metered": "",
    "row.1.needed": "",
    "filter.0.range": "",
    "filter.1.stops": "",
  };
  const keys = Object.keys(start).filter((key) => !["stops", "indexes", "filters", "rows"].includes(key));
  const typing = fc.array(fc.tuple(fc.constantFrom(...keys), text), { maxLength: 12 });
  fc.assert(
    fc.property(typing, (typed) => {
      const texts = { ...start, ...Object.fromEntries(typed) };
      const sets = [
        ["lens", lensSet(texts, undefined)],
        ["paperBox", boxSet(texts, true)],
        ["exposureIndex", indexSet(texts, fresh[0], { paperBoxId: idOf(33) }) ?? {}],
        ["meter", meterSet(texts, true)],
        ["camera", cameraSet(texts, true)],
        ["lamp", lampSet(texts, true)],
      ] as const;
      for (const [kind, set] of sets) {
        for (const [path, value] of Object.entries(set)) {
          const fits = value === null || kinds[kind].fieldAt(path)?.safeParse(value).success === true;
          if (!fits) throw new Error(`${kind} ${path} would be refused: ${JSON.stringify(value)}`);
        }
      }
      const parts = [
        ...lensParts(texts, {}),
        ...boxParts(texts, { recipes: [], todayText: () => "" }),
        ...cameraParts(texts),
      ];
      const words = [saysOf(parts), ...lensGranted(texts), waitsFor({ parts, texts }) ?? ""].join(" ");
      if (/NaN|Infinity|undefined/.test(words)) throw new Error(words);
    }),
    { numRuns: 600, seed: 4870 },
  );
}, 60_000);
