import { type AnyRecord, kinds, newId } from "@captray/notebook/records";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { withSet } from "../recordMerge.ts";
import { type Draft, type DraftEvent, emptyDraft, nextDraft } from "./draft.ts";
import type { FreshIds, ShelfView } from "./draftRecords.ts";
import { knownKits } from "./kitTexts.ts";
import { readingNowView } from "./readingNowView.ts";

const emptyShelf: ShelfView = { lenses: [], meters: [], boxes: [], indexes: [], scenes: [], hands: [] };
const takenAt = { at: 1_795_000_000_000, offsetMin: 60 };

let drawn = 0;
function freshIds(): FreshIds {
  const id = () => newId({ now: 1_795_000_000_000 + drawn++, random: () => 0.5 });
  return {
    lens: id(),
    stop: id(),
    meter: id(),
    box: id(),
    negative: id(),
    positive: id(),
    scene: id(),
    area: id(),
    reading: id(),
  };
}

/** Types the seven fields of the boatyard's hull, one event each. */
const hull: readonly DraftEvent[] = [
  { event: "typed", field: "time", text: "1/15" },
  { event: "typed", field: "meterFNumber", text: "8" },
  { event: "typed", field: "iso", text: "100" },
  { event: "typed", field: "focalLength", text: "210" },
  { event: "typed", field: "lensFNumber", text: "11" },
  { event: "typed", field: "extension", text: "248" },
  { event: "result", result: "positive" },
];
const hullDraft = hull.reduce(nextDraft, emptyDraft);

function view(draft: Draft, shelf: ShelfView = emptyShelf) {
  return readingNowView({ draft, shelf, fresh: freshIds(), takenAt, lengthUnit: "mm" });
}

/** The shelf after what a draft writes has been kept. */
function shelfAfter(draft: Draft, shelf: ShelfView = emptyShelf): { shelf: ShelfView; sceneId: string } {
  const { records } = view(draft, shelf);
  const lists = {
    lens: [...shelf.lenses],
    meter: [...shelf.meters],
    paperBox: [...shelf.boxes],
    exposureIndex: [...shelf.indexes],
    scene: [...shelf.scenes],
  };
  for (const change of records.sets) {
    const list = lists[change.kind as keyof typeof lists] as AnyRecord[];
    const at = list.findIndex((one) => one.id === change.id);
    const next = withSet(at < 0 ? undefined : list[at], change);
    if (at < 0) list.push(next);
    else list[at] = next;
  }
  return {
    shelf: {
      lenses: lists.lens,
      meters: lists.meter,
      boxes: lists.paperBox,
      indexes: lists.exposureIndex,
      scenes: lists.scene,
      hands: shelf.hands,
    },
    sceneId: records.sceneId,
  };
}

describe("seven fields", () => {
  it("1/15 at f/8 and ISO 100, 210 mm at f/11, 248 mm, direct positive of EI 0.7: 25 s, nine in ten 10 to 61 s [by hand: log2 of 2^-4 · 2 · (248/210)^2 · 100/0.7 is 4.63]", () => {
    const { bar, plan, extensionSaid } = view(hullDraft);
    expect(plan.kind).toBe("plan");
    if (plan.kind !== "plan") return;
    expect(plan.answer.timeS).toBeCloseTo((1 / 16) * 2 * (248 / 210) ** 2 * (100 / 0.7), 9);
    expect(bar.time).toEqual({ figures: "25", unit: "s" });
    expect(bar.head).toBe("nine in ten: 10 to 61 s");
    expect(extensionSaid).toBe("0.48 stop of extension; sharp at 1.37 m");
  });

  it("the time stands as soon as reading, lens and kind are there, and says what it supposes", () => {
    const draft = nextDraft(hullDraft, { event: "typed", field: "extension", text: "" });
    const { bar } = view(draft);
    expect(bar.time).toEqual({ figures: "18", unit: "s" });
    expect(bar.second).toMatch(/if the subject is distant/);
    expect(view(nextDraft(draft, { event: "typed", field: "extension", text: "distant" })).bar.second).toBeUndefined();
  });

  it("says which field is missing, in reading order", () => {
    expect(view(emptyDraft).bar.head).toBe("Type what the meter says");
    const { bar } = view(nextDraft(hullDraft, { event: "typed", field: "focalLength", text: "" }));
    expect(bar.time).toBeUndefined();
    expect(bar.head).toBe("Type the focal length");
    expect(bar.waits).toBe("a time");
  });

  it("a meter in exposure values gives the same time: EV 10 at ISO 100 is 1/16 at f/8 [EV = log2(N²/t): 2·3 + 4]", () => {
    const draft = [
      { event: "typed", field: "time", text: "EV 10" } as const,
      { event: "typed", field: "meterFNumber", text: "" } as const,
    ].reduce(nextDraft, hullDraft);
    const { plan } = view(draft);
    expect(plan.kind === "plan" && plan.answer.timeS).toBeCloseTo((1 / 16) * 2 * (248 / 210) ** 2 * (100 / 0.7), 9);
  });

  it("an extension shorter than the focal length is said in words, and the rest stays", () => {
    const { problem, bar, records } = view(nextDraft(hullDraft, { event: "typed", field: "extension", text: "180" }));
    expect(problem?.head).toBe("The extension (180 mm) is shorter than the focal length (210 mm).");
    expect(bar.time).toBeUndefined();
    expect(records.kit.lens?.markedFocalLengthMm?.value).toBe(210);
  });

  it("lists what it takes for granted, the largest doubt first, as the page shows it", () => {
    const { granted } = view(hullDraft);
    expect(granted[0]).toMatchObject({ subject: "exposureIndex", name: "EI 0.7" });
    const sds = granted.map(({ sdStops }) => sdStops);
    expect([...sds].sort((a, b) => b - a)).toEqual(sds);
    expect(granted.map(({ subject }) => subject).sort()).toEqual(
      ["aperture", "exposureIndex", "glass", "hand", "infinity", "light", "longExposure", "meter", "place"].sort(),
    );
  });
});

describe("what was typed becomes records", () => {
  const kept = shelfAfter(hullDraft);

  it("one lens with its stop, one meter, one box with its index, one scene with its reading", () => {
    expect(kept.shelf.lenses).toHaveLength(1);
    expect(kept.shelf.lenses[0]?.stops).toHaveLength(1);
    expect(kept.shelf.meters).toHaveLength(1);
    expect(kept.shelf.boxes).toHaveLength(1);
    expect(kept.shelf.indexes[0]?.value).toEqual({ value: 0.7, sdStops: 0.7 });
    expect(kept.shelf.scenes[0]?.readings[0]?.reading).toMatchObject({
      way: "time",
      timeS: { value: 1 / 16, text: "1/15", mark: true },
    });
  });

  it("every set passes its kind's own schema", () => {
    for (const { kind, set } of view(hullDraft).records.sets) {
      for (const [path, value] of Object.entries(set)) {
        const field = kinds[kind].fieldAt(path);
        expect(field?.safeParse(value).success, `${kind} ${path}`).toBe(true);
      }
    }
  });

  it("the same kit again makes nothing new; another f-number is another stop of the same lens", () => {
    const again = { ...hullDraft, sceneId: kept.sceneId };
    expect(view(again, kept.shelf).records.sets).toEqual([]);
    const wider = nextDraft(hullDraft, { event: "typed", field: "lensFNumber", text: "16" });
    const after = shelfAfter(wider, kept.shelf);
    expect(after.shelf.lenses).toHaveLength(1);
    expect(after.shelf.lenses[0]?.stops.map((stop) => stop.marked?.text)).toEqual(["11", "16"]);
  });

  it("negative and positive keep an index each for the same box", () => {
    const after = shelfAfter(nextDraft(hullDraft, { event: "result", result: "negative" }), kept.shelf);
    expect(after.shelf.boxes).toHaveLength(1);
    expect(after.shelf.indexes.map(({ result, value }) => [result, value?.value])).toEqual([
      ["positive", 0.7],
      ["negative", 2],
    ]);
  });

  it("two kits stand as one tap each, the last one first", () => {
    const second = [
      { event: "anotherScene" } as const,
      { event: "typed", field: "time", text: "1/30" } as const,
      { event: "typed", field: "focalLength", text: "150" } as const,
      { event: "typed", field: "lensFNumber", text: "8" } as const,
    ].reduce(nextDraft, hullDraft);
    const { shelf } = shelfAfter(second, kept.shelf);
    expect(knownKits(shelf, "mm").map(({ name }) => name)).toEqual(["150 mm, f/8", "210 mm, f/11"]);
  });

  it("an index found with own sheets leaves glass and colour of the light uncharged [own sheets hold them]", () => {
    const draft = nextDraft(hullDraft, {
      event: "better",
      said: { exposureIndex: { positive: "1.4" }, howFound: { positive: "threeSheets" } },
    });
    const { plan } = view(draft);
    if (plan.kind !== "plan") throw new Error(plan.kind);
    const line = (name: string) => plan.answer.ledger.find((one) => one.line === name)?.stops;
    expect(line("colourOfLight")).toEqual({ value: 0, sd: 0 });
    expect(line("transmission")?.value).toBe(0);
    expect(line("exposureIndex")?.sd).toBe(0.15);
  });
});

it("whatever is typed: never NaN, never Infinity, never an exception; what cannot be read is kept [property, 10,000 random drafts]", () => {
  const text = fc.oneof(
    fc.constantFrom(
      "",
      "0",
      "-3",
      "1/0",
      "1e400",
      "12 bananas",
      "1/60",
      "1m20",
      "2,5",
      "f/5.6⅓",
      "210",
      "248 mm",
      "distant",
      "EV 11",
      "∞",
      "8 1/2 in",
      "11 as cut",
    ),
    fc.string({ maxLength: 12 }),
    fc.double().map(String),
  );
  const draft: fc.Arbitrary<Draft> = fc.record({
    texts: fc.record({
      time: text,
      meterFNumber: text,
      iso: text,
      focalLength: text,
      lensFNumber: text,
      extension: text,
    }),
    result: fc.constantFrom("negative" as const, "positive" as const, undefined),
    better: fc.record({
      exposureIndex: fc.record({ negative: text, positive: text }),
      howFound: fc.constant({}),
      placeStops: text,
      meterOffset: text,
      infinityExtension: text,
      transmission: text,
      exponent: text,
      light: fc.constantFrom("daylight:5500", "filament:2700", "whiteLed:4000"),
    }),
    said: text,
  });
  fc.assert(
    fc.property(draft, (typed) => {
      const seen = view(typed);
      const shown = JSON.stringify([seen.bar, seen.granted, seen.problem, seen.extensionSaid, seen.indexes, seen.said]);
      expect(shown).not.toMatch(/NaN|Infinity|undefined|\[object/);
      if (seen.plan.kind === "plan") expect(Number.isFinite(seen.plan.answer.timeS)).toBe(true);
      for (const { kind, set } of seen.records.sets) {
        for (const [path, value] of Object.entries(set)) {
          if (value !== null && kinds[kind].fieldAt(path)?.safeParse(value).success !== true) {
            throw new Error(`${kind} ${path} would be refused: ${JSON.stringify(value)}`);
          }
        }
      }
    }),
    { numRuns: 10_000, seed: 4870 },
  );
}, 60_000);
