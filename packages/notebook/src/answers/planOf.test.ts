import { OutOfDomain } from "@captray/science/errors";
import { type LedgerLine, type PlanInput, planWithFacts } from "@captray/science/exposure";
import { describe, expect, test } from "vitest";
import type { Json } from "../records/index.ts";
import { planOf } from "./planOf.ts";
import { areasOf, demoSheet, dial, idNumber, recordOf, someKit } from "./testing.ts";

function planned(kit: Parameters<typeof planOf>[0]) {
  const plan = planOf(kit);
  if (plan.kind !== "plan") throw new Error(`no plan: ${JSON.stringify(plan)}`);
  return plan;
}

function line(kit: Parameters<typeof planOf>[0], name: LedgerLine["line"]) {
  const { answer } = planned(kit);
  return answer.ledger.find((one) => one.line === name)?.stops ?? { value: Number.NaN, sd: Number.NaN };
}

const ownSheets = (found: Readonly<Record<string, Json>> = {}) => ({ found: { how: "ownSheets", ...found } });
const stop = (field: string) => `stops.${idNumber(20)}.${field}`;

describe("planOf, a sheet of the invented notebook", () => {
  test("is the plan of the same question asked by hand", async () => {
    const { kit } = await demoSheet("W30");
    const input: PlanInput = {
      lens: {
        focalLengthMm: 210,
        fNumber: 11.4,
        apertureSdStops: 0.03,
        markedFNumber: 2 ** 3.5,
        glass: "standard",
        transmission: 0.83,
        transmissionSdStops: 0.1,
      },
      focus: { extensionMm: 248, sdStops: 0.01 },
      paper: {
        exposureIndex: 1.4,
        exposureIndexSdStops: 0.15,
        sensitivity: "blue",
        foundWith: { source: "daylight:5500", glass: "standard" },
      },
      readings: [
        ["snow", 1 / 128, "1/125"],
        ["jug", 2 ** (-19 / 3), "1/80"],
        ["hull", 1 / 16, "1/15"],
        ["rope", 1 / 8, "1/8"],
        ["shed door", 1, "1"],
      ].map(([area, timeS, text]) => ({ area, kind: "reflected", timeS, text, fNumber: 8, iso: 100 }) as never),
      place: { area: "hull", stops: 0 },
      meter: { meterK: 12.5, sdStops: 0, readingSdStops: 0.15, clickStops: 1 / 3 },
      light: { source: "daylight:5500" },
      // The doubt of the bias, 0.07 s, is scatter to a plan.
      hand: { biasS: 0, motorSdS: Math.hypot(0.1, 0.07), weber: 0.033 },
      saidTimeS: 9,
    };
    const plan = planned(kit);
    expect(plan.input).toEqual(input);
    expect(plan.answer).toEqual(planWithFacts(input));
  });

  test("the light is what the lines say: 2^(−4 + 1.0219 + 0.4799 + 6.1584) = 12.64 s, 13 ticks [by hand]", async () => {
    const { kit } = await demoSheet("W30");
    const byHand = -4 + 2 * Math.log2(11.4 / 8) + 2 * Math.log2(248 / 210) + Math.log2(100 / 1.4);
    expect(byHand).toBeCloseTo(3.6602, 3);
    const { answer } = planned(kit);
    expect(answer.timeStops.value).toBeCloseTo(byHand, 12);
    expect(answer.timeS.toFixed(1)).toBe("12.6");
    expect(answer.byHand).toMatchObject({ how: "oneOpening", countS: 13 });
  });
});

describe("planOf, the lens", () => {
  test("a measured f-number and focal length go before the marked ones", () => {
    const marked = someKit({});
    const measured = someKit({
      lens: { measuredFocalLengthMm: { value: 205, sd: 1 }, [stop("measuredFNumber")]: { value: 12, sdStops: 0.04 } },
    });
    expect(line(marked, "aperture").value).toBeCloseTo(2 * Math.log2(2 ** 3.5 / 8), 12);
    expect(line(marked, "aperture").sd).toBe(0.1);
    expect(line(measured, "aperture")).toEqual({ value: 2 * Math.log2(12 / 8), sd: 0.04 });
    expect(line(measured, "extension").value).toBeCloseTo(2 * Math.log2(248 / 205), 12);
  });

  test("a measured pupil goes before a mark, with its own doubt in stops [2 sd ÷ (d ln 2): by hand]", () => {
    const kit = someKit({ lens: { [stop("diameterMm")]: { value: 18.4, sd: 0.2 } } });
    expect(line(kit, "aperture").value).toBeCloseTo(2 * Math.log2(210 / 18.4 / 8), 12);
    expect(line(kit, "aperture").sd).toBeCloseTo(0.0314, 4);
  });

  test("the stop of the scene is meant, without one the first", () => {
    const second = idNumber(21);
    const lens = { [`stops.${second}.marked`]: { value: 16, mark: true } };
    expect(line(someKit({ lens }), "aperture").value).toBeCloseTo(1, 12);
    expect(line(someKit({ lens, scene: { stopId: second } }), "aperture").value).toBeCloseTo(2, 12);
  });

  test("where its infinity extension is known, only the travel beyond it counts: 73 mm of 150 is 1.14 stops [by hand]", () => {
    const scene = { focus: { by: "extension", extensionMm: { value: 225 } } };
    const lens = { markedFocalLengthMm: { value: 150 } };
    expect(line(someKit({ scene, lens }), "extension").value).toBeCloseTo(2 * Math.log2(1.5), 12);
    const known = { ...lens, infinityExtensionMm: { value: 152, sd: 0.5 } };
    expect(line(someKit({ scene, lens: known }), "extension").value).toBeCloseTo(2 * Math.log2(1 + 73 / 150), 12);
  });

  test.each([
    ["distant", { by: "distant" }, 0],
    ["travel", { by: "travel", travelMm: { value: 38 } }, 2 * Math.log2(248 / 210)],
    ["magnification", { by: "magnification", magnification: { value: 0.5 } }, 2 * Math.log2(1.5)],
    ["image size", { by: "imageSize", imageSizeMm: { value: 50 }, subjectSizeMm: { value: 100 } }, 2 * Math.log2(1.5)],
    // f (1 + 1/m) = 630 mm at m = 0.5.
    ["subject distance", { by: "subjectDistance", subjectDistanceMm: { value: 630 } }, 2 * Math.log2(1.5)],
    // f (2 + m + 1/m) = 945 mm at m = 0.5.
    ["total distance", { by: "totalDistance", totalDistanceMm: { value: 945 } }, 2 * Math.log2(1.5)],
  ])("focus by %s [conjugate equations: by hand]", (_, focus, stops) => {
    expect(line(someKit({ scene: { focus } }), "extension").value).toBeCloseTo(stops, 9);
  });

  test("a pinhole's f-number holds its extension: 248 ÷ 0.4 is f/620, 12.55 stops from f/8, and that line is 0 [by hand]", () => {
    const lens = { sort: "pinhole", holeMm: { value: 0.4, sd: 0.01 } };
    const kit = someKit({ lens });
    expect(line(kit, "aperture").value).toBeCloseTo(2 * Math.log2(620 / 8), 12);
    expect(line(kit, "aperture").sd).toBeCloseTo(0.0721, 4);
    expect(line(kit, "extension").value).toBe(0);
    expect(planned(kit).answer.optics.magnification).toBeNull();
  });
});

describe("planOf, what an exposure index already holds", () => {
  const filament = { light: { source: "filament:2700" } };
  // −A of a 2700 K filament for an unknown blue-sensitive paper: 2.0757 stops, from CIE spectra (table of the light folder's tests).
  const filamentStops = 2.0757;

  test("told or guessed, every line counts: lamp, glass and the meter's own error", () => {
    const kit = someKit({
      scene: filament,
      lens: { transmission: { value: 0.8, sdStops: 0.1 } },
      meter: { offsetStops: { value: 0.3, sd: 0.1 } },
    });
    expect(line(kit, "colourOfLight").value).toBeCloseTo(filamentStops, 3);
    expect(line(kit, "transmission").value).toBeCloseTo(-Math.log2(0.8 / 0.9), 12);
    expect(line(kit, "reading").value).toBeCloseTo(-4 + 0.3, 12);
    expect(line(kit, "reading").sd).toBeCloseTo(Math.hypot(0.1, 0.15), 12);
  });

  test("found with own sheets, nothing of them is charged or doubted twice", () => {
    const kit = someKit({
      scene: filament,
      lens: { transmission: { value: 0.8, sdStops: 0.1 } },
      meter: { offsetStops: { value: 0.3, sd: 0.1 } },
      exposureIndex: ownSheets({ source: "filament:2700", meterId: idNumber(3) }),
    });
    expect(line(kit, "colourOfLight")).toEqual({ value: 0, sd: 0 });
    expect(line(kit, "transmission")).toEqual({ value: 0, sd: 0 });
    expect(line(kit, "reading").value).toBeCloseTo(-4, 12);
    // What is left is that this reading is one reading.
    expect(line(kit, "reading").sd).toBe(0.15);
  });

  test("found in daylight and used under a lamp, the change of light is charged, once", () => {
    const kit = someKit({ scene: filament, exposureIndex: ownSheets({ source: "daylight:5500" }) });
    expect(line(kit, "colourOfLight").value).toBeCloseTo(filamentStops, 3);
    const said = someKit({ exposureIndex: ownSheets({ source: "daylight:5500" }) });
    expect(line(said, "colourOfLight")).toEqual({ value: 0, sd: 0 });
  });

  test("found with another glass, the change of glass is charged", () => {
    const kit = someKit({
      lens: { transmission: { value: 0.8, sdStops: 0.1 } },
      exposureIndex: ownSheets({ transmission: 0.9 }),
    });
    expect(line(kit, "transmission").value).toBeCloseTo(Math.log2(0.9 / 0.8), 12);
  });

  test("found with another meter, the difference of the two meters is charged, and this one's doubt", () => {
    const kit = someKit({
      meter: { offsetStops: { value: 0.3, sd: 0.1 } },
      meterThen: { offsetStops: { value: 0.1, sd: 0.1 } },
      exposureIndex: ownSheets({ meterId: idNumber(4) }),
    });
    expect(line(kit, "reading").value).toBeCloseTo(-4 + 0.2, 12);
    expect(line(kit, "reading").sd).toBeCloseTo(Math.hypot(0.1, 0.15), 12);
  });

  test("a scene that names no meter was read with the one of the sheets", () => {
    const kit = someKit({
      meterThen: { offsetStops: { value: 0.4, sd: 0.1 } },
      exposureIndex: ownSheets({ meterId: idNumber(4) }),
    });
    expect(line(kit, "reading")).toEqual({ value: -4, sd: 0.15 });
  });

  test("an incident reading by a meter of both ways keeps the doubt of its other constant", () => {
    const incident = { ...(dial(1 / 16) as object), kind: "incident" };
    const scene = areasOf([["hull", incident]]);
    const exposureIndex = ownSheets();
    expect(line(someKit({ scene, exposureIndex, meter: { reads: "both" } }), "reading").sd).toBeCloseTo(
      Math.hypot(0.33, 0.15),
      12,
    );
    expect(line(someKit({ scene, exposureIndex, meter: { reads: "incident" } }), "reading").sd).toBe(0.15);
  });
});

describe("planOf, readings", () => {
  test("areas of one name are told apart, and a nameless one is the subject", () => {
    const scene = areasOf([
      ["hull", dial(1 / 16)],
      ["hull", dial(1 / 8)],
      ["  ", dial(1 / 4)],
      ["", dial(1 / 2)],
    ]);
    const { answer } = planned(someKit({ scene }));
    expect(answer.areas.map(({ area, aboveMidStops }) => [area, aboveMidStops])).toEqual([
      ["hull", 0],
      ["hull 2", -1],
      ["subject", -2],
      ["subject 2", -3],
    ]);
  });

  test("without a placed area the mean of all; an area that was not read yet counts for nothing", () => {
    const scene = {
      ...areasOf([
        ["snow", dial(1 / 64)],
        ["rope", dial(1 / 4)],
      ]),
      place: null,
      [`areas.${idNumber(150)}.name`]: "door",
    };
    const { answer } = planned(someKit({ scene }));
    expect(answer.ledger[0]?.stops.value).toBeCloseTo(-4, 12);
    expect(answer.areas).toHaveLength(2);
  });

  test("the placed area stands as many stops above mid as was said", () => {
    const scene = { place: { areaId: idNumber(100), stops: 2 } };
    expect(line(someKit({ scene }), "place").value).toBe(2);
  });

  // f/8 and 1/16 s at ISO 100 is EV 10; 0.125 · 2^10 = 128 cd/m² and 2.5 · 2^10 = 2560 lx [iso-2720 constants 12.5 and 250].
  test.each([
    ["EV at an ISO", { way: "ev", ev: { value: 8 }, iso: { value: 25 } }],
    ["EV at ISO 100", { way: "ev100", ev100: { value: 10 } }],
    ["cd/m²", { way: "luminance", luminanceCdM2: { value: 128 } }],
    ["lux", { way: "illuminance", illuminanceLx: { value: 2560 } }],
  ])("the same light read as %s gives the same time", (_, reading) => {
    const wanted = planned(someKit({})).answer.timeS;
    expect(planned(someKit({ scene: areasOf([["hull", reading as Json]]) })).answer.timeS).toBeCloseTo(wanted, 6);
  });

  test("filters, the paper's long exposures, the hand and a time that was said go along", () => {
    const kit = someKit({
      scene: {
        [`filters.${idNumber(30)}.name`]: "grey",
        [`filters.${idNumber(30)}.filter`]: { by: "neutralDensity", value: 0.9 },
        [`filters.${idNumber(31)}.name`]: "yellow",
        [`filters.${idNumber(31)}.filter`]: { by: "factor", value: 2, sdStops: 0.1 },
        [`filters.${idNumber(32)}.name`]: "not said yet",
        saidTime: { timeS: { value: 60 }, roundingS: 0.5 },
      },
      paperBox: { reciprocity: { exponent: 0.9, fromS: 2 } },
      hand: { toTicks: { biasS: { value: 0.3, sd: 0.1 }, motorSdS: 0.2, weber: 0.04, openings: 12, by: "cap" } },
    });
    const { input, answer } = planned(kit);
    expect(line(kit, "filters").value).toBeCloseTo(0.9 / Math.log10(2) + 1, 9);
    const metered = 2 ** answer.ledger.slice(0, 8).reduce((sum, { stops }) => sum + stops.value, 0);
    expect(answer.timeS).toBeCloseTo(2 * (metered / 2) ** (1 / 0.9), 6);
    expect(input.hand).toEqual({ biasS: 0.3, motorSdS: Math.hypot(0.2, 0.1), weber: 0.04 });
    expect(answer.said).not.toBeNull();
  });
});

test("a box's own table of long exposures goes before its exponent; a single row is no table [its rows: by hand]", () => {
  const table = [
    { meteredS: 1, neededS: 1 },
    { meteredS: 1000, neededS: 8000 },
  ];
  const plain = planned(someKit({})).answer.timeS;
  const withTable = planned(
    someKit({ paperBox: { reciprocityTable: table, reciprocity: { exponent: 0.6, fromS: 1 } } }),
  );
  // From (1, 1) to (1000, 8000) log t rises by 3.903 for 3: t' = t^1.301.
  expect(withTable.answer.timeS).toBeCloseTo(plain ** (Math.log10(8000) / 3), 6);
  expect(planned(someKit({ paperBox: { reciprocityTable: table.slice(0, 1) } })).answer.timeS).toBeCloseTo(plain, 9);
});

describe("planOf, where there is no plan", () => {
  test("what is missing, in the order it is asked for", () => {
    const scene = recordOf("scene", idNumber(1), {});
    expect(planOf({ scene })).toEqual({
      kind: "missing",
      missing: ["reading", "focalLength", "aperture", "exposureIndex"],
    });
    const lens = recordOf("lens", idNumber(2), { markedFocalLengthMm: { value: 210 } });
    expect(planOf({ scene, lens })).toEqual({ kind: "missing", missing: ["reading", "aperture", "exposureIndex"] });
    const hole = recordOf("lens", idNumber(2), { sort: "pinhole" });
    expect(planOf({ scene, lens: hole })).toEqual({
      kind: "missing",
      missing: ["reading", "aperture", "pinholeExtension", "exposureIndex"],
    });
    const noValue = someKit({ exposureIndex: { value: null } });
    expect(planOf(noValue)).toEqual({ kind: "missing", missing: ["exposureIndex"] });
  });

  test.each([
    [
      "an extension shorter than the focal length",
      { scene: { focus: { by: "extension", extensionMm: { value: 180 } } } },
      "extensionShorterThanFocalLength",
      "focus/extensionMm",
    ],
    [
      "a lamp this paper does not see",
      { scene: { light: { source: "whiteLed:5000" } }, paperBox: { sensitivity: "chloride" } },
      "lampHasNoLightForThisPaper",
      "light/source",
    ],
    [
      "a mean of two kinds of reading",
      {
        scene: {
          ...areasOf([
            ["hull", dial(1 / 16)],
            ["snow", { way: "illuminance", illuminanceLx: { value: 2560 } }],
          ]),
          place: null,
        },
      },
      "mixedIncidentAndReflected",
      "readings",
    ],
  ] as const)("%s is an answer, not an error", (_, change, code, key) => {
    const plan = planOf(someKit(change as Parameters<typeof someKit>[0]));
    expect(plan.kind).toBe("refused");
    const fault = plan.kind === "refused" ? plan.fault : undefined;
    expect(fault).toBeInstanceOf(OutOfDomain);
    expect(fault).toMatchObject({ code, key });
  });
});
