import fc from "fast-check";
import { expect, test } from "vitest";
import { rows } from "../../fixtures/light/actinic.json";
import cie from "../../fixtures/light/cie-illuminants.json";
import { actinicSd } from "./actinicSd.ts";
import { actinicStops } from "./actinicStops.ts";
import { glassOf, type LensGlass, type PaperSensitivity, paperResponse } from "./paperResponse.ts";
import { observer, wavelengthsNm } from "./spectralGrid.ts";

const fixed = { seed: 20261125 };
const papers: readonly PaperSensitivity[] = [
  "chloride",
  "chlorobromide",
  "bromide",
  "orthochromatic",
  "variableContrast",
];
const sources = fc.oneof(
  fc.integer({ min: 2000, max: 6000 }).map((cctK) => `filament:${cctK}`),
  fc.integer({ min: 4000, max: 25_000 }).map((cctK) => `daylight:${cctK}`),
  fc.integer({ min: 2500, max: 7000 }).map((cctK) => `whiteLed:${cctK}`),
);

/** The correction for a published table, from the table itself. */
function ofTable(name: "A" | "D75" | "LED-B1" | "LED-B3" | "LED-B5", paper: PaperSensitivity): number {
  const seen = (table: { readonly firstNm: number; readonly relative: readonly number[] }) => {
    let byPaper = 0;
    let byMeter = 0;
    wavelengthsNm.forEach((nm, index) => {
      const light = table.relative[(nm - table.firstNm) / 10] ?? 0;
      byPaper += light * (glassOf("standard")[index] ?? 0) * (paperResponse(paper)[index] ?? 0);
      byMeter += light * (observer.y[index] ?? 0);
    });
    return byPaper / byMeter;
  };
  return Math.log2(seen(cie[name]) / seen(cie.D55));
}

test("sixteen lights, five papers, three glasses [peer: plain Python on the tables of cie-15 and iso-6728]", () => {
  for (const { source, lens, stops } of rows) {
    for (const paper of papers) {
      const found = actinicStops({ source, paper, lens: lens as LensGlass });
      expect(Math.abs(found - stops[paper])).toBeLessThan(1e-8);
    }
  }
});

test.each([
  ["illuminantA", -1.8987, -1.8013, -1.6704, -1.0975, -1.3856],
  ["filament:2700", -2.2434, -2.0757, -1.9059, -1.2229, -1.5599],
  ["whiteLed:4000", -3.6555, -1.8912, -0.9027, -0.6167, -0.7677],
  ["whiteLed:6500", -6.3565, -1.5846, -0.2131, -0.1327, -0.1765],
  ["daylight:10000", 1.3974, 1.0974, 0.9444, 0.7483, 0.8599],
])("%s, worked apart in four decimals [by hand]", (source, ...stops) => {
  papers.forEach((paper, index) => {
    expect(Math.abs(actinicStops({ source, paper }) - (stops[index] ?? Number.NaN))).toBeLessThan(1e-3);
  });
});

test("A and D75 from their published tables, to a thousandth of a stop [cie-15]", () => {
  for (const paper of papers) {
    expect(Math.abs(actinicStops({ source: "illuminantA", paper }) - ofTable("A", paper))).toBeLessThan(1e-3);
    expect(Math.abs(actinicStops({ source: "daylight:7500", paper }) - ofTable("D75", paper))).toBeLessThan(1e-3);
  }
});

test.each([
  ["LED-B1", "chlorobromide", -3.386],
  ["LED-B1", "bromide", -2.112],
  ["LED-B3", "chlorobromide", -2.028],
  ["LED-B3", "bromide", -0.899],
  ["LED-B5", "chlorobromide", -1.476],
  ["LED-B5", "bromide", -0.182],
] as const)(
  "the published table of %s on %s paper gives %d; the model of it is within a third of its doubt [cie-15]",
  (name, paper, stops) => {
    const source = { "LED-B1": "whiteLed:2733", "LED-B3": "whiteLed:4103", "LED-B5": "whiteLed:6598" }[name];
    // Three decimals, the last of them touched by whether D55 is read or computed.
    expect(Math.abs(ofTable(name, paper) - stops)).toBeLessThan(1e-3);
    expect(Math.abs(actinicStops({ source, paper }) - stops)).toBeLessThan(actinicSd({ source, paper }) / 3);
  },
);

test("without glass and with old thin glass on chlorobromide paper [by hand]", () => {
  expect(actinicStops({ source: "illuminantA", lens: "none" })).toBeCloseTo(-1.8948928, 6);
  expect(actinicStops({ source: "daylight:10000", lens: "none" })).toBeCloseTo(1.2558351, 6);
  expect(actinicStops({ source: "illuminantA", lens: "simple" })).toBeCloseTo(-1.8819889, 6);
  expect(actinicStops({ source: "daylight:10000", lens: "simple" })).toBeCloseTo(1.2396973, 6);
});

test("chlorobromide, the standard lens and daylight of 5500 K unless said otherwise", () => {
  const said = { paper: "chlorobromide", lens: "standard", reference: "daylight:5500" } as const;
  expect(actinicStops({ source: "filament:2700" })).toBe(actinicStops({ source: "filament:2700", ...said }));
});

test("a light against itself is nothing; there and back is nothing; steps add [property]", () => {
  fc.assert(
    fc.property(sources, sources, fc.constantFrom(...papers), (source, reference, paper) => {
      expect(actinicStops({ source, reference: source, paper })).toBeCloseTo(0, 9);
      const there = actinicStops({ source, reference, paper });
      expect(actinicStops({ source: reference, reference: source, paper })).toBeCloseTo(-there, 9);
      const viaDaylight = actinicStops({ source, paper }) - actinicStops({ source: reference, paper });
      expect(there).toBeCloseTo(viaDaylight, 9);
    }),
    fixed,
  );
});

test("the bluer a filament or daylight, the more the paper sees, and the less green it knows the more so [property]", () => {
  for (const paper of papers) {
    const filaments = [2400, 2700, 3000, 3400].map((cctK) => actinicStops({ source: `filament:${cctK}`, paper }));
    const skies = [4000, 5000, 6500, 8000, 12_000].map((cctK) => actinicStops({ source: `daylight:${cctK}`, paper }));
    expect([...filaments].sort((a, b) => a - b)).toEqual(filaments);
    expect([...skies].sort((a, b) => a - b)).toEqual(skies);
  }
  expect(actinicStops({ source: "illuminantA", paper: "bromide" })).toBeLessThan(
    actinicStops({ source: "illuminantA", paper: "orthochromatic" }),
  );
});

test("lights, papers and glasses of no such name are refused at their key", () => {
  const refused = (more: object, code: string, key: string) =>
    expect(() => actinicStops({ source: "illuminantA", ...more })).toThrow(expect.objectContaining({ code, key }));
  refused({ source: "torch" }, "unknownWord", "source");
  refused({ source: "whiteLed:9000" }, "cctOutOfRange", "source");
  refused({ reference: "noon" }, "unknownWord", "reference");
  refused({ reference: "daylight:1" }, "cctOutOfRange", "reference");
  refused({ paper: "blue" }, "unknownWord", "paper");
  refused({ paper: "toString" }, "unknownWord", "paper");
  refused({ lens: "plastic" }, "unknownWord", "lens");
});
