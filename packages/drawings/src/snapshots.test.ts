import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { snapshots } from "./snapshots.ts";

const folder = new URL("../snapshots/", import.meta.url);
const fileOf = (name: string) => new URL(`${name}.svg`, folder);

describe("pictures kept in drawings/snapshots", () => {
  const made = snapshots();

  // What ours printed last time is no ground for a number; it shows what moved. The numbers have their own tests.
  test.each([...made.keys()])("%s is as it was looked at last; else look at the one that changed", (name) => {
    const changed = fileOf(`${name}-changed`);
    const kept = existsSync(fileOf(name)) ? readFileSync(fileOf(name), "utf8") : "";
    if (made.get(name) === kept) rmSync(changed, { force: true });
    else writeFileSync(changed, made.get(name) ?? "");
    expect(made.get(name) === kept, `see ${name}-changed.svg; keep it: node scripts/snapshots.mjs`).toBe(true);
  });

  test("there is no picture that nothing makes", () => {
    const kept = readdirSync(folder).filter((file) => !file.endsWith("-changed.svg"));
    expect(kept.sort()).toEqual([...made.keys()].map((name) => `${name}.svg`).sort());
  });

  test.each([...made])("%s: no broken number, nothing from elsewhere [property]", (_name, svg) => {
    expect(svg).not.toMatch(/NaN|Infinity|undefined|null/);
    expect(svg).not.toMatch(/https?:(?!\/\/www\.w3\.org\/2000\/svg)|<image|<script/);
    expect(svg.length).toBeLessThan(60_000);
  });
});
