import { bathsOnHand } from "@captray/notebook/answers";
import { type Bath, bath as bathKind, checkSet, kinds, type RecordId } from "@captray/notebook/records";
import { describe, expect, test } from "vitest";
import {
  countedSet,
  discardSet,
  holdsWords,
  isVented,
  labelOf,
  readCount,
  readSeconds,
  stripSet,
  vesselsFor,
} from "./bathPageState.ts";

const now = { at: Date.UTC(2025, 11, 1, 19), offsetMin: 60 };
const mixedAt = { at: Date.UTC(2025, 11, 1, 17, 40), offsetMin: 60 };
const bathWith = (fields: Record<string, unknown>) =>
  kinds.bath.assemble(
    "00000000000000000000000001" as RecordId,
    new Map(Object.entries({ mixedAt, volumeMl: 1000, ...fields })) as never,
  ) as Bath;
const bleach = bathWith({
  role: "acidAndPeroxide",
  lastHourAt: { at: mixedAt.at + 6 * 3_600_000, offsetMin: 60 },
  holds: [
    { what: "citric", percentWv: 2 },
    { what: "h2o2", percentWv: 3 },
  ],
});
const fixer = bathWith({ role: "fix", name: "rapid fixer", holds: [{ what: "fixer" }] });

describe("the end of a bath", () => {
  test("is asked for two vessels and neither; the wrong ones have their reason, the right one has none", () => {
    const of = (bath: Bath) => vesselsFor(bath).map(({ vessel, refusal }) => [vessel, refusal === undefined]);
    expect(of(bleach)).toEqual([
      ["usedBleach", true],
      ["usedFixer", false],
      ["neither", false],
    ]);
    expect(of(fixer)).toEqual([
      ["usedBleach", false],
      ["usedFixer", true],
      ["neither", false],
    ]);
    expect(vesselsFor(bleach)[1]?.refusal).toContain("never share a vessel");
  });

  test("everything written down of it fits its record", () => {
    for (const set of [discardSet("usedBleach", now), countedSet(bleach, 3, 0.0234, now), stripSet(bleach, 62, now)]) {
      expect(checkSet(bathKind, set)).toBe(true);
    }
    const counted = bathWith({ ...countedSet(bleach, 3, 0.0234, now) });
    expect(countedSet(counted, 2, 0.0234, now).byHand).toHaveLength(2);
  });
});

describe("its label", () => {
  const onHand = (bath: Bath) => {
    const [one] = bathsOnHand({ baths: [bath], atMs: now.at });
    if (one === undefined) throw new Error("not on hand");
    return one;
  };

  test("says what, how strong, since when and until when, and that peroxide is vented", () => {
    expect(labelOf(onHand(bleach))).toMatchObject({
      title: "bleach, acid and peroxide",
      lines: ["citric acid 2 % w/v, peroxide 3 % w/v", "1 litre"],
      mixed: "mixed 1 December 2025, 18:40",
      lastHour: "last hour 00:40",
      isVented: true,
    });
  });

  test("fixer is closed as any bottle, and has no last hour", () => {
    expect(labelOf(onHand(fixer))).not.toHaveProperty("lastHour");
    expect(isVented(fixer)).toBe(false);
    expect(isVented(bathWith({ role: "stop", holds: [{ what: "h2o2" }] }))).toBe(true);
    expect(holdsWords(fixer)).toBe("fixer");
  });
});

test("counts and times that cannot be have their sentence", () => {
  expect(["2", "0", "-3", "1.5", "x", ""].map((text) => readCount(text).kind)).toEqual([
    "read",
    "unreadable",
    "unreadable",
    "unreadable",
    "unreadable",
    "empty",
  ]);
  expect(["60 s", "1m20", "0", "3 h"].map((text) => readSeconds(text).kind)).toEqual([
    "read",
    "read",
    "unreadable",
    "unreadable",
  ]);
});
