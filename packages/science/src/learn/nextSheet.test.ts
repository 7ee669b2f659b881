import { describe, expect, it } from "vitest";
import peer from "../../fixtures/learn/next.json" with { type: "json" };
import { type CausesOfGreyInput, causesOfGrey } from "./causesOfGrey.ts";
import { nextSheet } from "./nextSheet.ts";
import type { NextSheetInput } from "./nextTypes.ts";

const names = ["underexposed", "firstDevelopment", "bleach", "stain"] as const;

function near(value: number, wanted: number, within: number, what: string): void {
  expect(Math.abs(value - wanted), `${what}: ${value} is not ${wanted}`).toBeLessThan(within);
}

describe("why the whites are grey", () => {
  it("shares, their doubts, and what each control patch would leave of them [peer: numpy, information added]", () => {
    for (const each of peer.causes) {
      const found = causesOfGrey(each.in as unknown as CausesOfGreyInput);
      near(found.density, each.density, 1e-9, "density");
      for (const [index, name] of names.entries()) {
        const { share, interval } = found.causes[name];
        near(share, each.shares[index] ?? 0, 1e-8, name);
        near(found.now.sdLnShare[name], each.now[index] ?? 0, 1e-5, `${name} now`);
        const isFar = name === "underexposed" && each.share > 0.9;
        const wide = Math.exp(1.6448536269514722 * (each.now[index] ?? 0));
        near(interval.high, (each.shares[index] ?? 0) * wide, 1e-5, `${name} to`);
        near(interval.low, isFar ? 0 : (each.shares[index] ?? 0) / wide, 1e-5, `${name} from`);
      }
      for (const [place, { kind, sdLnShare }] of each.patches.entries()) {
        expect(found.patches[place]?.kind).toBe(kind);
        for (const [index, name] of names.entries()) {
          near(found.patches[place]?.sdLnShare[name] ?? 0, sdLnShare[index] ?? 0, 1e-5, `${kind} ${name}`);
        }
      }
      const sum = names.reduce((all, name) => all + found.causes[name].share, 0);
      near(sum, found.excess, 1e-12, "the shares add up");
    }
  });

  it("two plain sheets do not tell first development from bleach; the patch bleached only would", () => {
    const found = causesOfGrey(peer.causes[0]?.in as unknown as CausesOfGreyInput);
    expect(found.undecided).toContainEqual(["firstDevelopment", "bleach"]);
    const left = (kind: string) => found.patches.find((patch) => patch.kind === kind)?.sdLnShare.firstDevelopment ?? 0;
    expect(left("bleachOnly")).toBeLessThan(found.now.sdLnShare.firstDevelopment / 2);
    // Fogged and black patches are white-area or black-area silver of both kinds.
    expect(left("fogged")).toBeGreaterThan(0.8 * found.now.sdLnShare.firstDevelopment);
    expect(left("black")).toBeGreaterThan(0.8 * found.now.sdLnShare.firstDevelopment);
  });

  it.each<[string, object, string]>([
    ["a negative", { sheets: [{ sheet: "W1", process: "negative" }] }, "notAReversal"],
    ["a sheet not there", { ask: { sheet: "W9", logExposure: 1 } }, "unknownSheet"],
    ["light beyond all light", { ask: { sheet: "W1", logExposure: 400 } }, "outOfRange"],
  ])("%s is refused", (_, more, code) => {
    const input = {
      sheets: [{ sheet: "W1" }],
      patches: [{ sheet: "W1", logExposure: 1, density: { value: 0.8 } }],
      ask: { sheet: "W1", logExposure: 1 },
      ...more,
    };
    expect(() => causesOfGrey(input as CausesOfGreyInput)).toThrow(expect.objectContaining({ code }));
  });
});

describe("the next sheet", () => {
  const [each] = peer.next;
  const input = each?.in as unknown as NextSheetInput;

  it("best settings, bits, doubts, errors and scores of six candidates [peer: numpy, information added]", () => {
    const { best, candidates } = nextSheet(input);
    expect(best.settings).toEqual(each?.best.settings);
    near(best.rms, each?.best.rms ?? 0, 1e-8, "rms");
    for (const { name, ...wanted } of each?.candidates ?? []) {
      const found = candidates.find((candidate) => candidate.name === name);
      for (const [key, value] of Object.entries(wanted)) {
        near((found as unknown as Record<string, number>)[key] ?? Number.NaN, value, 1e-6, `${name} ${key}`);
      }
    }
  });

  it("the list falls by score; one change is the most telling of the single ones; each lever says what it does", () => {
    const { candidates: _, ...standard } = input;
    const { candidates, oneChange, bestPicture, levers } = nextSheet(standard);
    const scores = candidates.map(({ score }) => score);
    expect(scores).toEqual([...scores].sort((one, other) => other - one));
    expect(bestPicture).toBe(candidates.find(({ test }) => test === "picture")?.name);
    expect(candidates.find(({ name }) => name === oneChange)?.controls).toEqual([]);
    expect(new Set(candidates.map(({ name }) => name)).size).toBe(candidates.length);
    const more = levers.find(({ name }) => name === "1 stop more");
    // A direct positive gets lighter with light, in its middle most.
    for (const { change } of more?.areas ?? []) expect(change.value).toBeLessThan(0);
    expect(candidates.length).toBe(23);
  });

  it("more patches never teach less, and learning never adds doubt [property of information]", () => {
    const { candidates: _, ...standard } = input;
    const { candidates } = nextSheet(standard);
    const bits = (name: string) => candidates.find((candidate) => candidate.name === name)?.bits ?? 0;
    expect(bits("repeat with black patch")).toBeGreaterThan(bits("repeat"));
    expect(bits("repeat with four patches")).toBeGreaterThan(bits("repeat with patch bleached only"));
    expect(bits("split step test")).toBeGreaterThan(bits("step test"));
    for (const { sdTargetsAfter, sdTargetsBefore, rmsAfter, rmsNow } of candidates) {
      expect(sdTargetsAfter).toBeLessThanOrEqual(sdTargetsBefore);
      expect(rmsAfter).toBeLessThanOrEqual(rmsNow + 1e-12);
    }
  });

  it("one patch whose prediction is .08 sure, seen with .03: 1.51 bits [by hand: ½ log2(1 + (8/3)²)]", () => {
    // A black patch: its prediction's doubt against its noise, both read off the answer of a single one.
    const black = { name: "black", controls: ["black" as const] };
    const [none, one] = [{ name: "none" }, black].map(
      (candidate) =>
        nextSheet({ ...input, scene: [{ area: "a", logExposure: -60, wanted: 1 }], candidates: [candidate] })
          .candidates[0],
    );
    // Two equal looks at one tone teach less than twice one look.
    expect(one?.bits ?? 0).toBeGreaterThan(none?.bits ?? 0);
    expect(one?.bits ?? 0).toBeLessThan(2 * (none?.bits ?? 0));
  });

  it("a test is never the best picture, whatever its score; alone it is named all the same", () => {
    const test = { name: "split", test: "splitStepTest" as const };
    expect(nextSheet({ ...input, horizon: 1000, candidates: [test, { name: "repeat" }] }).bestPicture).toBe("repeat");
    expect(nextSheet({ ...input, candidates: [test] }).bestPicture).toBe("split");
  });

  it("tones that are all but met: you have it; tones beyond the paper, well known: it cannot", () => {
    const scene = (wanted: number) => [{ area: "shed door", logExposure: -1, wanted }];
    const near2 = nextSheet({ ...input, scene: scene(2.0), candidates: [{ name: "repeat" }] });
    expect(near2.stop).toEqual({ kind: "reached" });
    expect(nextSheet({ ...input, scene: scene(2.6), candidates: [{ name: "repeat" }], tolerance: 0.2 }).stop).toEqual({
      kind: "limitReached",
    });
  });

  it.each<[string, object, string, string]>([
    ["no scene", { scene: [] }, "tooFew", "scene"],
    ["no candidate", { candidates: [] }, "tooFew", "candidates"],
    ["half a round", { now: { rounds: 1.5 } }, "wrongType", "now/rounds"],
    ["a lever nobody has", { levers: ["luck"] }, "unknownWord", "levers/0"],
    ["a horizon behind", { horizon: -1 }, "negative", "horizon"],
    [
      "a negative",
      {
        sheets: [
          { sheet: "W1", process: "negative" },
          { sheet: "W2", process: "negative" },
        ],
      },
      "notAReversal",
      "sheets/0/process",
    ],
  ])("%s is refused", (_, more, code, key) => {
    expect(() => nextSheet({ ...input, ...more } as NextSheetInput)).toThrow(expect.objectContaining({ code, key }));
  });
});
