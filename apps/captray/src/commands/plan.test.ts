import { describe, expect, it } from "vitest";
import * as z from "zod/mini";
import recorded from "../../fixtures/plan-hull-and-snow.json" with { type: "json" };
import { answerPlan, plan } from "./plan.ts";

const lens = { focalLengthMm: 240, fNumber: "f/11" };
const paper = { exposureIndex: 1.5 };
const hull = { area: "hull", timeS: "1/15", fNumber: "f/8", iso: 100 };
const base = { lens, paper, readings: [hull] };
const pinhole = { kind: "pinhole", holeMm: 0.5, extensionMm: 150 };

interface Answer {
  readonly timeS: number;
  readonly ledger: readonly {
    readonly line: string;
    readonly stops: { readonly value: number; readonly sd: number };
  }[];
  readonly said: { readonly ranked: readonly object[] } | null;
  readonly assumed: readonly string[];
  readonly optics: object;
}

function answerOf(input: object): Answer {
  const { document, exit } = answerPlan(input);
  expect([exit, document.error]).toEqual([0, undefined]);
  return document as unknown as Answer;
}

function lineOf(input: object, name: string) {
  return answerOf(input).ledger.find(({ line }) => line === name)?.stops;
}

/** Numbers rounded to six decimals, as a worked example prints them. */
function rounded(value: unknown): unknown {
  if (typeof value === "number") return Math.round(value * 1e6) / 1e6 + 0;
  if (Array.isArray(value)) return value.map(rounded);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, rounded(inner)]));
}

describe("the recorded run: an upturned hull at 300 mm, snow three stops above it", () => {
  const answer = answerOf(recorded.input);

  it("answers what was worked out apart from it, to six decimals [peer: runners/plan_hull_and_snow.py]", () => {
    const ledger = answer.ledger.map(({ line, stops }) => ({ line, stops }));
    const { said: _, ...numbers } = answer;
    expect(rounded({ ...numbers, ledger })).toEqual(recorded.output);
  });

  it("the time is (1/16) · 2 · 1.25² · 100/1.5 s [by hand]", () => {
    expect(answer.timeS).toBeCloseTo((1 / 16) * 2 * 1.25 ** 2 * (100 / 1.5), 10);
  });

  it("8 s is told as the bellows forgotten [peer: runners/plan_hull_and_snow.py]", () => {
    const { first, ...others } = recorded.said;
    expect(rounded(answer.said)).toMatchObject(others);
    expect(rounded(answer.said?.ranked[0])).toEqual(first);
  });

  it("every line has a sentence as its ground", () => {
    for (const { ground } of answer.ledger as unknown as { ground: string }[])
      expect(ground).toMatch(/^[A-Z0-9].*\.$/s);
  });

  it("is what the published schema says", () => {
    expect(z.safeParse(plan.published.output as z.ZodMiniType, answer).error?.issues).toBeUndefined();
  });

  it.each([
    ["filament:2700", 2.075654, 0.172361],
    ["whiteLed:4000", 1.89125, 1.026785],
    ["daylight:6500", -0.404263, 0.153128],
  ])("in %s the colour line is %s ± %s stops [worked apart from it, docs/guide/terminal.md]", (source, value, sd) => {
    expect(rounded(lineOf({ ...recorded.input, light: { source } }, "colourOfLight"))).toEqual({ value, sd });
  });
});

describe("notation", () => {
  const time = (reading: object) => answerOf({ ...base, readings: [{ ...hull, ...reading }] }).timeS;

  it("the time of a reading that is a text and a mark means its exact member, a number stands [iso-516, common practice]", () => {
    expect(time({ timeS: "1/15" }) / time({ timeS: 1 / 15 })).toBeCloseTo(15 / 16, 12);
    expect(time({ timeS: "15 s" }) / time({ timeS: 15 })).toBeCloseTo(16 / 15, 12);
    expect(time({ timeS: "1/13" }) / time({ timeS: 1 })).toBeCloseTo(0.0787450656, 9);
  });

  it("a text that is no mark stands as it is", () => {
    expect(time({ timeS: "7 s" })).toBeCloseTo(time({ timeS: 7 }), 12);
  });

  it("what was said is literal: 15 s is 15 s", () => {
    const said = (saidTimeS: unknown) => answerOf({ ...base, saidTimeS }).said;
    expect(said("15 s")).toEqual(said(15));
  });

  it("an f-number that is a text and a mark is exact and doubted by 0.10 stop, a number is measured, 0.07", () => {
    const aperture = (fNumber: unknown) => lineOf({ ...base, lens: { ...lens, fNumber } }, "aperture");
    expect(aperture("f/11")).toEqual({ value: expect.closeTo(1, 12), sd: 0.1 });
    expect(aperture("f/5.6⅓")).toEqual({ value: expect.closeTo(-2 / 3, 12), sd: 0.1 });
    expect(aperture(11)).toEqual({ value: expect.closeTo(2 * Math.log2(11 / 8), 12), sd: 0.07 });
    expect(aperture("f/7.7")).toEqual({ value: expect.closeTo(2 * Math.log2(7.7 / 8), 12), sd: 0.07 });
  });

  it("a doubt that is given stands, also beside a mark", () => {
    expect(lineOf({ ...base, lens: { ...lens, apertureSdStops: 0.02 } }, "aperture")?.sd).toBe(0.02);
  });

  it("an EV may carry a fraction", () => {
    const ev = (value: unknown) => answerOf({ ...base, readings: [{ ev: value, iso: 100 }] }).timeS;
    expect(ev("12⅓")).toBeCloseTo(ev(12 + 1 / 3), 12);
  });
});

describe("faults", () => {
  const with_ = (changes: object) => ({ ...base, ...changes });
  const reading = (changes: object) => with_({ readings: [changes] });

  it.each<[string, unknown, string]>([
    ["an empty input", {}, "missingKey /lens"],
    ["no paper", { lens, readings: [hull] }, "missingKey /paper"],
    ["no readings", { lens, paper }, "missingKey /readings"],
    ["a key at the top", with_({ camera: 1 }), "unknownKey /camera"],
    ["a key of the lens", with_({ lens: { ...lens, mm: 1 } }), "unknownKey /lens/mm"],
    ["a key of a reading", reading({ ...hull, iso100: 1 }), "unknownKey /readings/0/iso100"],
    ["a key of foundWith", with_({ paper: { ...paper, foundWith: { lens: 1 } } }), "unknownKey /paper/foundWith/lens"],
    ["neither f-number nor diameter", with_({ lens: { focalLengthMm: 240 } }), "missingKey /lens/fNumber"],
    ["f-number and diameter", with_({ lens: { ...lens, diameterMm: 20 } }), "twoOfOne /lens/diameterMm"],
    ["no focal length", with_({ lens: { fNumber: 8 } }), "missingKey /lens/focalLengthMm"],
    ["a pinhole without extension", with_({ lens: { kind: "pinhole", holeMm: 0.5 } }), "missingKey /lens/extensionMm"],
    [
      "a pinhole with a focal length",
      with_({ lens: { ...pinhole, focalLengthMm: 9 } }),
      "unknownKey /lens/focalLengthMm",
    ],
    ["a kind of lens that is none", with_({ lens: { kind: "mirror" } }), "unknownWord /lens/kind"],
    ["an empty focus", with_({ focus: {} }), "missingKey /focus/extensionMm"],
    ["a focus with its doubt only", with_({ focus: { sdStops: 0.1 } }), "missingKey /focus/extensionMm"],
    ["two ways of focus", with_({ focus: { magnification: 1, travelMm: 1 } }), "twoOfOne /focus/magnification"],
    ["an image without its subject", with_({ focus: { imageSizeMm: 60 } }), "missingKey /focus/subjectSizeMm"],
    ["a subject without its image", with_({ focus: { subjectSizeMm: 60 } }), "twoOfOne /focus/subjectSizeMm"],
    ["a hiatus without its way", with_({ focus: { extensionMm: 300, hiatusMm: 0 } }), "twoOfOne /focus/hiatusMm"],
    ["larger without its way", with_({ focus: { larger: true } }), "twoOfOne /focus/larger"],
    ["focus with a pinhole", with_({ lens: pinhole, focus: { magnification: 1 } }), "focusNotForPinhole /focus"],
    ["no exposure index", with_({ paper: {} }), "missingKey /paper/exposureIndex"],
    [
      "exponent and table",
      with_({
        paper: {
          ...paper,
          reciprocity: {
            exponent: 0.9,
            table: [
              [1, 1],
              [2, 3],
            ],
          },
        },
      }),
      "twoOfOne /paper/reciprocity/table",
    ],
    [
      "neither exponent nor table",
      with_({ paper: { ...paper, reciprocity: {} } }),
      "missingKey /paper/reciprocity/exponent",
    ],
    [
      "fromS with a table",
      with_({
        paper: {
          ...paper,
          reciprocity: {
            fromS: 1,
            table: [
              [1, 1],
              [2, 3],
            ],
          },
        },
      }),
      "twoOfOne /paper/reciprocity/fromS",
    ],
    ["readings that are no list", with_({ readings: hull }), "wrongType /readings"],
    ["an empty list of readings", with_({ readings: [] }), "noReadings /readings"],
    ["a reading without a way", reading({ area: "hull" }), "missingKey /readings/0/timeS"],
    ["a reading with only its settings", reading({ fNumber: 8, iso: 100 }), "missingKey /readings/0/timeS"],
    ["a time without its f-number", reading({ timeS: 1, iso: 100 }), "missingKey /readings/0/fNumber"],
    ["a time without its ISO", reading({ timeS: 1, fNumber: 8 }), "missingKey /readings/0/iso"],
    ["an EV without its ISO", reading({ ev: 12 }), "missingKey /readings/0/iso"],
    ["a time and an EV", reading({ ...hull, ev: 12 }), "twoOfOne /readings/0/ev"],
    ["an EV and an f-number", reading({ ev: 12, iso: 100, fNumber: 8 }), "twoOfOne /readings/0/fNumber"],
    ["an EV100 and an ISO", reading({ ev100: 12, iso: 100 }), "twoOfOne /readings/0/iso"],
    ["two readings of light", reading({ luminanceCdM2: 1, illuminanceLx: 1 }), "twoOfOne /readings/0/illuminanceLx"],
    ["incident cd/m²", reading({ kind: "incident", luminanceCdM2: 1 }), "unknownWord /readings/0/kind"],
    ["reflected lux", reading({ kind: "reflected", illuminanceLx: 1 }), "unknownWord /readings/0/kind"],
    ["a filter without its loss", with_({ filters: [{ name: "grey" }] }), "missingKey /filters/0/neutralDensity"],
    ["a filter with two", with_({ filters: [{ neutralDensity: 0.3, stops: 1 }] }), "twoOfOne /filters/0/stops"],
    ["a light without its source", with_({ light: {} }), "missingKey /light/source"],
    ["a light that is none", with_({ light: { source: "moonlight" } }), "unknownWord /light/source"],
    ["a reading that cannot be read", reading({ ...hull, timeS: "12 bananas" }), "unreadable /readings/0/timeS"],
    ["f/0", with_({ lens: { ...lens, fNumber: 0 } }), "notPositive /lens/fNumber"],
    ["an ISO of −3", reading({ ...hull, iso: -3 }), "notPositive /readings/0/iso"],
    [
      "a light meter of 1e400",
      JSON.parse('{"lens":{"focalLengthMm":240,"fNumber":8},"paper":{"exposureIndex":1},"readings":[{"ev100":1e400}]}'),
      "notFinite /readings/0/ev100",
    ],
    [
      "a transmission above 1",
      with_({ lens: { ...lens, transmission: 1.1 } }),
      "transmissionOutOfRange /lens/transmission",
    ],
    ["a doubt below 0", with_({ meter: { sdStops: -0.1 } }), "negative /meter/sdStops"],
    [
      "an exponent of 1/2",
      with_({ paper: { ...paper, reciprocity: { exponent: 0.5 } } }),
      "exponentOutOfRange /paper/reciprocity/exponent",
    ],
    [
      "a table that falls",
      with_({
        paper: {
          ...paper,
          reciprocity: {
            table: [
              [2, 2],
              [1, 3],
            ],
          },
        },
      }),
      "tableNotRising /paper/reciprocity/table",
    ],
    [
      "an extension too short",
      with_({ focus: { extensionMm: 180 } }),
      "extensionShorterThanFocalLength /focus/extensionMm",
    ],
    ["a travel below 0", with_({ focus: { travelMm: -1 } }), "travelNegative /focus/travelMm"],
    [
      "a subject inside the focal length",
      with_({ focus: { subjectDistanceMm: 240 } }),
      "subjectInsideFocalLength /focus/subjectDistanceMm",
    ],
    [
      "a total below four focal lengths",
      with_({ focus: { totalDistanceMm: 900 } }),
      "closerThanFourFocalLengths /focus/totalDistanceMm",
    ],
    ["a place that is no area", with_({ place: { area: "door" } }), "unknownArea /place/area"],
    ["two areas of one name", with_({ readings: [hull, hull] }), "outOfRange /readings/1/area"],
    [
      "a mean of two kinds",
      with_({ readings: [hull, { illuminanceLx: 1000 }] }),
      "mixedIncidentAndReflected /readings",
    ],
    ["a light outside its colours", with_({ light: { source: "daylight:1000" } }), "cctOutOfRange /light/source"],
    [
      "a light no paper of silver chloride sees",
      with_({ paper: { ...paper, sensitivity: "chloride" }, light: { source: "whiteLed:5000" } }),
      "lampHasNoLightForThisPaper /light/source",
    ],
    [
      "that light, also where nothing changed since",
      with_({
        paper: { ...paper, sensitivity: "chloride", foundWith: { source: "whiteLed:5000" } },
        light: { source: "whiteLed:5000" },
      }),
      "lampHasNoLightForThisPaper /light/source",
    ],
    ["a time beyond all numbers", reading({ ev100: -1e9 }), "outOfRange "],
    ["a time below all numbers", reading({ ev100: 1e9 }), "outOfRange "],
  ])("%s [docs/guide/terminal.md]", (_, input, fault) => {
    const { document, exit } = answerPlan(input);
    const error = document.error as { code: string; path: string } | undefined;
    expect([exit, `${error?.code} ${error?.path}`]).toEqual([2, fault]);
  });
});

describe("assumed [docs/guide/terminal.md]", () => {
  const assumed = (changes: object) => answerOf({ ...base, ...changes }).assumed;

  it("tells nothing of what was given", () => {
    const given = { meter: { meterK: 14 }, hand: { biasS: 0 }, place: { area: "hull", stops: 0 } };
    for (const key of ["/meter/meterK", "/hand/biasS", "/place/stops"]) expect(assumed(given)).not.toContain(key);
    expect(assumed(given)).toContain("/meter/meterC");
  });

  it("tells of an object that was left out leaf by leaf, but not of one whose absence means something", () => {
    expect(assumed({})).toContain("/place/stops");
    for (const pointer of assumed({}))
      expect(pointer).not.toMatch(/^\/(focus|light|filters|paper\/(reciprocity|foundWith)|meter$)/);
  });

  it("tells of what goes with the way taken, and not with another", () => {
    expect(assumed({ focus: { magnification: 0.25 } }).filter((each) => each.startsWith("/focus"))).toEqual([
      "/focus/sdStops",
    ]);
    expect(assumed({ focus: { totalDistanceMm: 2000 } }).filter((each) => each.startsWith("/focus"))).toEqual([
      "/focus/hiatusMm",
      "/focus/larger",
      "/focus/sdStops",
    ]);
    expect(assumed({ paper: { ...paper, reciprocity: { exponent: 0.9 } } })).toContain("/paper/reciprocity/fromS");
    expect(
      assumed({
        paper: {
          ...paper,
          reciprocity: {
            table: [
              [1, 1],
              [9, 10],
            ],
          },
        },
      }),
    ).not.toContain("/paper/reciprocity/fromS");
  });

  it("tells of a pinhole what a pinhole has", () => {
    expect(assumed({ lens: pinhole }).filter((each) => each.startsWith("/lens"))).toEqual([
      "/lens/transmission",
      "/lens/transmissionSdStops",
      "/lens/apertureSdStops",
      "/lens/glass",
    ]);
  });

  it("tells of each filter", () => {
    expect(assumed({ filters: [{ stops: 1, sdStops: 0.1 }, { factor: 2 }] })).toContain("/filters/1/sdStops");
  });
});

it("a pinhole has no magnification and its own f-number [docs/guide/terminal.md]", () => {
  expect(answerOf({ ...base, lens: pinhole }).optics).toEqual({
    fNumber: 300,
    magnification: null,
    extensionMm: 150,
    effectiveFNumber: 300,
  });
});

it("an id is handed back as the first key", () => {
  expect(Object.keys(answerPlan({ ...base, id: "W31" }).document)[0]).toBe("id");
});

it("without a time said, said is null", () => {
  expect(answerOf(base).said).toBeNull();
});
