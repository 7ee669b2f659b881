import { expect, test } from "vitest";
import { rows } from "../../fixtures/light/actinic.json";
import { actinicSd } from "./actinicSd.ts";
import type { PaperSensitivity } from "./paperResponse.ts";

const papers: readonly PaperSensitivity[] = [
  "chloride",
  "chlorobromide",
  "bromide",
  "orthochromatic",
  "variableContrast",
];

function peerStops(source: string, paper: PaperSensitivity): number {
  return rows.find((row) => row.source === source && row.lens === "standard")?.stops[paper] ?? Number.NaN;
}

test("filaments and daylight 0.15 whatever the paper [assumption: ±10 nm in the edge of the paper, a floor for the meter]", () => {
  for (const paper of papers) {
    for (const source of ["illuminantA", "filament:2700", "daylight:10000"]) {
      expect(actinicSd({ source, paper })).toBe(0.15);
    }
  }
});

test("white LEDs 0.9, 0.9, 0.3, 0.2 and 0.2 [assumption: ±10 nm in the edge of the paper]", () => {
  expect(papers.map((paper) => actinicSd({ source: "whiteLed:4000", paper }))).toEqual([0.9, 0.9, 0.3, 0.2, 0.2]);
});

test.each(["illuminantA", "daylight:10000", "whiteLed:4000", "whiteLed:6500"])(
  "a blue-sensitive paper of unknown make under %s: half the gap between two makes comes on top [by hand]",
  (source) => {
    const gap = peerStops(source, "chlorobromide") - peerStops(source, "bromide");
    const known = source.startsWith("whiteLed") ? 0.9 : 0.15;
    expect(actinicSd({ source })).toBeCloseTo(Math.sqrt(known ** 2 + (gap / 2) ** 2), 7);
  },
);

test("the light and glass the index was found with: no doubt, known make or not", () => {
  expect(actinicSd({ source: "whiteLed:4000", foundSource: "whiteLed:4000" })).toBe(0);
  const halogen = { source: "filament:3200", paper: "bromide", foundSource: "filament:3200" } as const;
  expect(actinicSd({ ...halogen, lens: "simple", foundLens: "simple" })).toBe(0);
  expect(actinicSd({ ...halogen, lens: "simple", foundLens: "standard" })).toBe(0.15);
});

test("a change of light: the larger figure if either is an LED, and half the gap of the changes [by hand]", () => {
  expect(actinicSd({ source: "daylight:5500", paper: "bromide", foundSource: "whiteLed:4000" })).toBe(0.3);
  expect(actinicSd({ source: "whiteLed:4000", paper: "bromide", foundSource: "daylight:5500" })).toBe(0.3);
  const change = (paper: PaperSensitivity) => peerStops("daylight:10000", paper) - peerStops("illuminantA", paper);
  const gap = change("chlorobromide") - change("bromide");
  expect(actinicSd({ source: "daylight:10000", foundSource: "illuminantA" })).toBeCloseTo(Math.hypot(0.15, gap / 2), 7);
});

test("lights, papers and glasses of no such name are refused at their key", () => {
  const refused = (more: object, code: string, key: string) =>
    expect(() => actinicSd({ source: "illuminantA", ...more })).toThrow(expect.objectContaining({ code, key }));
  refused({ source: "torch" }, "unknownWord", "source");
  refused({ foundSource: "torch" }, "unknownWord", "foundSource");
  refused({ foundSource: "daylight:1" }, "cctOutOfRange", "foundSource");
  refused({ paper: "grey" }, "unknownWord", "paper");
  refused({ lens: "plastic" }, "unknownWord", "lens");
  refused({ paper: "bromide", lens: "plastic" }, "unknownWord", "lens");
  refused({ foundSource: "illuminantA", foundLens: "plastic" }, "unknownWord", "foundLens");
});
