import { expect, test } from "vitest";
import cie from "../../fixtures/light/cie-illuminants.json";
import colormath from "../../fixtures/light/colormath-tables.json";
import { rows } from "../../fixtures/light/spectra.json";
import { spectrum } from "./spectrum.ts";

interface PublishedTable {
  readonly firstNm: number;
  readonly stepNm: number;
  readonly relative: readonly number[];
}

function at(source: string, nm: number): number {
  const { wavelengthNm, relative } = spectrum({ source });
  return relative[wavelengthNm.indexOf(nm)] ?? Number.NaN;
}

function largestGap(source: string, table: PublishedTable, scale = 1): number {
  return Math.max(
    ...table.relative.map((value, index) => Math.abs(at(source, table.firstNm + table.stepNm * index) * scale - value)),
  );
}

test("350 to 780 nm in steps of 10, 44 values, and a list of one's own each time", () => {
  const first = spectrum({ source: "daylight:5500" });
  expect(first.wavelengthNm).toEqual(Array.from({ length: 44 }, (_, index) => 350 + 10 * index));
  expect(first.relative).toHaveLength(44);
  expect(spectrum({ source: "daylight:5500" }).relative).not.toBe(first.relative);
});

test("A, D55, D65 and D75 as published, to 0.0006 [cie-15]", () => {
  // D55 and D75 are printed with three decimals, A and D65 with six digits; the worst rounding is 0.0005.
  expect(largestGap("illuminantA", cie.A)).toBeLessThan(0.0006);
  expect(largestGap("daylight:5500", cie.D55)).toBeLessThan(0.0006);
  expect(largestGap("daylight:6500", cie.D65)).toBeLessThan(0.0006);
  expect(largestGap("daylight:7500", cie.D75)).toBeLessThan(0.0006);
});

test("single values: D65 at 450 and 400 nm, D55 at 420, A at 400 and 700 [cie-15]", () => {
  expect(at("daylight:6500", 450)).toBeCloseTo(117.0076, 6);
  expect(at("daylight:6500", 400)).toBeCloseTo(82.7549, 6);
  expect(at("daylight:5500", 420)).toBeCloseTo(71.5771, 4);
  expect(at("illuminantA", 400)).toBeCloseTo(14.708038, 6);
  expect(at("illuminantA", 700)).toBeCloseTo(198.26122, 5);
});

test("A to 0.11 and D65 to 0.35 of another library's tables [peer: colormath 3.0.0]", () => {
  const peer = (relative: readonly number[]) => ({ firstNm: 350, stepNm: 10, relative: relative.slice(1) });
  expect(colormath.wavelengthNm[1]).toBe(350);
  expect(largestGap("illuminantA", peer(colormath.A))).toBeLessThan(0.11);
  expect(largestGap("daylight:6500", peer(colormath.D65))).toBeLessThan(0.35);
});

test.each([
  ["whiteLed:2733", "LED-B1"],
  ["whiteLed:4103", "LED-B3"],
  ["whiteLed:6598", "LED-B5"],
] as const)("%s lies along %s, 2.5 % of its peak in the root mean square [cie-15]", (source, name) => {
  const table = cie[name];
  const model = table.relative.map((_, index) => at(source, table.firstNm + table.stepNm * index));
  const product = model.reduce((sum, value, index) => sum + value * (table.relative[index] ?? 0), 0);
  const scale = product / model.reduce((sum, value) => sum + value ** 2, 0);
  const squares = model.map((value, index) => (value * scale - (table.relative[index] ?? 0)) ** 2);
  const rms = Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
  expect(rms / Math.max(...table.relative)).toBeLessThan(0.025);
});

test("a 5000 K LED at 450 and 560 nm, and sixteen lights throughout [peer: plain Python]", () => {
  expect(at("whiteLed:5000", 450)).toBeCloseTo(1.0334544, 7);
  expect(at("whiteLed:5000", 560)).toBeCloseTo(0.72566807, 7);
  for (const row of rows) {
    const { relative } = spectrum({ source: row.source });
    row.relative.forEach((value, index) => {
      expect((relative[index] ?? 0) / value).toBeCloseTo(1, 8);
    });
  }
});

test("a filament is 100 at 560 nm; at 800 K, dull red, 400 nm is 1.4 hundred-thousandths of that [by hand: Wien’s form]", () => {
  expect(at("filament:2700", 560)).toBe(100);
  const wien = 1.4 ** 5 * Math.exp((-1.438777e7 / 800) * (1 / 400 - 1 / 560));
  expect(at("filament:800", 400) / 100 / wien).toBeCloseTo(1, 9);
});

test("an unknown light is refused", () => {
  expect(() => spectrum({ source: "moonlight" })).toThrow(
    expect.objectContaining({ code: "unknownWord", key: "source" }),
  );
  expect(() => spectrum({ source: "daylight:3000" })).toThrow(
    expect.objectContaining({ code: "cctOutOfRange", key: "source" }),
  );
});
