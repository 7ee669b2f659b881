import { describe, expect, it } from "vitest";
import { impuritiesOf } from "./tools/impurities.ts";
import { filesOf, textOf } from "./tools/repo.ts";

const pureFolders = [
  "packages/science/src",
  "packages/scans/src",
  "packages/drawings/src",
  "packages/notebook/src/journal",
  "packages/notebook/src/records",
  "packages/notebook/src/answers",
  "packages/notebook/src/search",
];

describe("pure code", () => {
  const files = filesOf(...pureFolders).filter((path) => path.endsWith(".ts") && !path.includes(".test."));

  it("is there to be looked at", () => {
    expect(files.length).toBeGreaterThan(20);
  });

  it("has no clock, no chance, no machine and no state of its own", () => {
    expect(files.flatMap((path) => impuritiesOf(path, textOf(path)))).toEqual([]);
  });

  const planted = {
    "the clock": "export const now = () => Date.now();",
    "a new date": "export const day = () => new Date(0);",
    chance: "export const draw = () => Math.random();",
    "a timer": "export const soon = (f: () => void) => setTimeout(f, 1);",
    "the machine": "export const where = () => process.cwd();",
    state: "let count = 0; export const next = () => ++count;",
    "a way around": "export const all = () => globalThis;",
  };
  for (const [what, text] of Object.entries(planted)) {
    it(`a planted violation is seen: ${what}`, () => {
      expect(impuritiesOf("planted.ts", text)).not.toEqual([]);
    });
  }

  it("a field called process or Date in somebody's type is no violation", () => {
    expect(impuritiesOf("fine.ts", "export const f = ({ process = 1 }) => process;")).toEqual([]);
    expect(
      impuritiesOf("fine.ts", "export interface A { process: string } export const f = (a: A) => a.process;"),
    ).toEqual([]);
  });
});
