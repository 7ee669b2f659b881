import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { boatyard } from "../../fixtures/exposure/checking.ts";
import { type PlanInput, planWithFacts } from "../exposure/index.ts";
import { type LedgerWords, type LengthUnit, ledgerWords } from "./ledgerWords.ts";

const pinhole: PlanInput = {
  lens: { kind: "pinhole", holeMm: 0.4, extensionMm: 150 },
  paper: { exposureIndex: 3, sensitivity: "bromide" },
  readings: [{ luminanceCdM2: 32 }],
};

const scenes: readonly PlanInput[] = [
  boatyard,
  pinhole,
  { ...pinhole, lens: { focalLengthMm: 210, diameterMm: 26 }, readings: [{ area: "snow", illuminanceLx: 640 }] },
  { ...boatyard, focus: undefined, place: undefined, readings: [{ ev100: 9 }, { ev100: 12.3 }] },
  { ...boatyard, place: { area: "hull", stops: -1.5 }, meter: { offsetStops: -0.3 } },
  {
    ...boatyard,
    light: { source: "illuminantA" },
    filters: [{ name: "yellow", factor: 2 }, { neutralDensity: 0.9 }, { stops: -0.5 }],
  },
  { ...boatyard, light: { source: "daylight:6500" }, paper: { exposureIndex: 1.5, foundWith: {} } },
  {
    ...boatyard,
    light: { source: "whiteLed:4000" },
    paper: { exposureIndex: 140, foundWith: { source: "daylight:5500", transmission: 0.7 } },
  },
  { ...boatyard, paper: { exposureIndex: 1.5, foundWith: {}, reciprocity: { exponent: 0.85 } } },
  {
    ...boatyard,
    paper: {
      exposureIndex: 0.01,
      exposureIndexSdStops: 0.15,
      reciprocity: {
        table: [
          [1, 1],
          [10, 14],
        ],
      },
    },
  },
  {
    ...boatyard,
    paper: { exposureIndex: 1.5, exposureIndexSdStops: 0.3, reciprocity: { exponent: 1 } },
    hand: { biasS: 0.2 },
  },
  {
    ...boatyard,
    focus: { totalDistanceMm: 1200 },
    lens: { focalLengthMm: 240, fNumber: 7.7, pupilRatio: 0.8, transmission: 0.6 },
  },
  {
    ...boatyard,
    focus: { travelMm: 12 },
    lens: { focalLengthMm: 240, fNumber: 8 },
    readings: [{ area: "Shed door", ev: 9, iso: 100 }],
    place: { area: "Shed door" },
  },
];

function wordsOf(input: PlanInput, lengthUnit: LengthUnit = "mm"): Readonly<Record<string, LedgerWords>> {
  return Object.fromEntries(
    planWithFacts(input).ledger.map((line) => [line.line, ledgerWords({ ...line, lengthUnit })]),
  );
}

const everyWord = scenes.flatMap((scene) =>
  (["mm", "inch"] as const).flatMap((unit) =>
    Object.entries(wordsOf(scene, unit)).map(([line, words]) => ({ line, words, unit })),
  ),
);

describe("ledgerWords", () => {
  it("the boatyard scene, line by line [wording]", () => {
    const words = wordsOf(boatyard);
    expect(words.reading).toMatchObject({ name: "Meter on the hull", known: "1/16 s at f/8, ISO 100; one reading" });
    expect(words.reading?.ground).toBe(
      "The meter gave 1/16 s at f/8 and ISO 100 on the hull: −4.0 stops from one second.",
    );
    expect(words.place?.name).toBe("Placed on mid grey");
    expect(words.aperture?.name).toBe("Lens at f/11");
    expect(words.aperture?.ground).toBe("The reading is for f/8 and the lens has f/11, so 1 stop is added.");
    expect(words.extension).toMatchObject({
      name: "Extension 300 mm",
      known: "board to ground glass; subject at 1.2 m",
    });
    expect(words.extension?.sum).toBe("2 × log2(1 + 0.25) = +0.64");
    expect(words.exposureIndex).toMatchObject({ name: "Paper at EI 1.5", known: "a guess; every line counts in full" });
    expect(words.exposureIndex?.sum).toBe("log2(100 ÷ 1.5) = +6.1");
    expect(words.transmission?.name).toBe("Glass");
    expect(words.longExposure?.name).toBe("Long exposure (reciprocity)");
    expect(words.hand?.name).toBe("Your hand on the cap");
  });

  it("every number in a sentence is that of the line [numbers by hand]", () => {
    const plain = wordsOf(boatyard);
    expect(plain.exposureIndex?.ground).toBe(
      "From ISO 100 on the dial to EI 1.5 the paper needs 67 times the light, +6.1 stops.",
    );
    expect(plain.extension?.ground).toBe(
      "At 300 mm a 240 mm lens draws the subject 0.25 times its size, so the paper gets 1.56 times less light.",
    );
    expect(plain.hand?.ground).toBe(
      "At 13 s a hand even to ±1.1 s is out by no more than 0.12 stop nine times in ten.",
    );
    expect(plain.longExposure?.ground).toContain("at 13 s nothing is counted, and the doubt is ±0.28 stop");
    // 2.885 / (240 · 1.25) stop a millimetre; 2 log2(1 + 0.5 / 21.2) for half a millimetre of the pupil.
    expect(plain.extension?.surer).toContain("0.01 stop");
    expect(plain.aperture?.surer).toContain("0.067 stop");
    // 1.645 · √(0.10² + 0.15²/3)
    expect(plain.reading?.surer).toContain("±0.22 stop");
    const filtered = wordsOf(scenes[5] as PlanInput);
    expect(filtered.filters?.sum).toBe("log2(2) + 0.9 ÷ 0.301 − 0.5 = +3.49");
    expect(filtered.colourOfLight?.ground).toBe(
      "Of a 2856 K filament lamp a blue-sensitive paper sees 1.8 stops less than the meter, so 1.8 stops are added.",
    );
    const glass = wordsOf(scenes[11] as PlanInput).transmission;
    expect(glass?.ground).toBe(
      "The lens lets 60 % of the light through and the meter supposes 90 %, so 0.58 stop is added.",
    );
    expect(wordsOf(scenes[8] as PlanInput).longExposure?.ground).toBe(
      "By exponent 0.85 from 1 s the metered 13 s needs 20 s, so 0.65 stop is added.",
    );
    expect(wordsOf(pinhole).reading?.ground).toBe(
      "The meter gave 32 cd/m², which is 5h05 at f/375 and EI 3: +14.2 stops from one second.",
    );
  });

  it("lengths in inches where asked [wording]", () => {
    const words = wordsOf(boatyard, "inch");
    expect(words.extension?.name).toBe("Extension 11 13/16 in");
    expect(words.extension?.known).toBe("board to ground glass; subject at 3.94 ft");
    for (const { words: line, unit } of everyWord) {
      if (unit === "inch")
        expect(`${line.name} ${line.known} ${line.ground} ${line.surer}`).not.toMatch(/\d mm\b|\d m\b/);
    }
  });

  it("what an index already holds is said so [wording]", () => {
    const words = wordsOf(scenes[6] as PlanInput);
    expect(words.transmission?.known).toBe("found with this lens: already in the EI");
    expect(words.colourOfLight?.known).toBe("6500 K daylight, as when the EI was found");
    expect(words.colourOfLight?.sum).toBe("already in the EI: 0.00");
  });

  it("every line of thirteen scenes: ground and surer are one sentence each, nothing is empty or unreadable", () => {
    expect(everyWord).toHaveLength(scenes.length * 2 * 10);
    for (const { line, words } of everyWord) {
      for (const text of Object.values(words)) {
        expect(text.trim(), line).not.toBe("");
        expect(text, line).not.toMatch(/NaN|Infinity|undefined|null|\be[+-]\d|≈|≤|≥|→|√/);
      }
      for (const sentence of [words.ground, words.surer]) {
        expect(sentence, line).toMatch(/^[A-Z0-9].*\.$/);
        expect(sentence.split(/[.!?] /), line).toHaveLength(1);
      }
      expect(words.ground, line).not.toMatch(/(?<![.\d])1 stops\b|\d stop are\b|stops is added/);
    }
  });

  it("every source is a key of the list of sources", () => {
    const known = readFileSync(new URL("../../../../docs/SOURCES.md", import.meta.url), "utf8");
    const keys = new Set(
      everyWord.flatMap(({ words }) => words.source.split("; ").map((part) => /^[a-z0-9.-]+/.exec(part)?.[0] ?? part)),
    );
    expect(keys.size).toBeGreaterThan(8);
    for (const key of keys) expect(known, key).toContain(`| ${key} |`);
  });

  it("the sentence of plan is this one, in mm", () => {
    for (const scene of scenes) {
      for (const line of planWithFacts(scene).ledger) expect(line.ground).toBe(ledgerWords(line).ground);
    }
  });
});
