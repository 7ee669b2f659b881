import { describe, expect, test } from "vitest";
import { openForTest } from "../journal/testing.ts";
import type { Scene } from "../records/index.ts";
import { fillDemo } from "../starters/index.ts";
import { type FieldCard, fieldCardOf, longestOnCardS } from "./fieldCardOf.ts";
import { kitOf } from "./kitOf.ts";
import { planOf } from "./planOf.ts";
import { areasOf, someKit } from "./testing.ts";

async function demoCard(subject: string, step: "whole" | "half" = "whole") {
  const notebook = await openForTest();
  await fillDemo({ notebook });
  const scene = notebook.shelf("scene").find((one) => one.subject === subject) as Scene;
  const kit = kitOf({ notebook, scene });
  const camera = notebook.shelf("camera").find(({ id }) => id === scene.cameraId);
  return { kit, camera, card: fieldCardOf({ kit, camera, step }) };
}

function cardOf(answer: ReturnType<typeof fieldCardOf>): FieldCard {
  if (answer.kind !== "card") throw new Error(`no card: ${JSON.stringify(answer)}`);
  return answer;
}

const skiff = "Upturned skiff before the shed";

describe("the field card of a scene", () => {
  test("the framed cell is the plan of the scene itself: 12.6 s at 1/15 and 248 mm [by hand, as W30]", async () => {
    const { kit, card: answer } = await demoCard(skiff);
    const card = cardOf(answer);
    const row = card.rows.findIndex(({ isOwn }) => isOwn);
    const column = card.columns.findIndex(({ isOwn }) => isOwn);
    expect(card.rows[row]?.text).toBe("1/15");
    expect(card.columns[column]?.extensionMm).toBeCloseTo(248, 9);
    const plan = planOf(kit);
    expect(card.cells[row]?.[column]).toEqual({ kind: "time", timeS: plan.kind === "plan" ? plan.answer.timeS : 0 });
    expect(card.cells[row]?.[column]?.timeS.toFixed(1)).toBe("12.6");
    expect(card.own.answer.timeS).toBeCloseTo(12.643, 3);
  });

  test("ten whole stops from 1 s to 1/500; each halves the time, as the box's sheets hold its long exposures [by hand]", async () => {
    const card = cardOf((await demoCard(skiff)).card);
    expect(card.rows.map(({ text }) => text)).toEqual([
      "1 s",
      "1/2",
      "1/4",
      "1/8",
      "1/15",
      "1/30",
      "1/60",
      "1/125",
      "1/250",
      "1/500",
    ]);
    for (const column of card.columns.keys()) {
      const times = card.cells.map((line) => line[column]?.timeS ?? 0);
      for (const [row, timeS] of times.slice(1).entries()) expect((times[row] ?? 0) / timeS).toBeCloseTo(2, 9);
    }
  });

  // (248/210)² is 0.48 stop; at 2 m m = 210/1790, (1 + m)² is 0.32 stop; distant 0.
  test("across, only the extension changes: 2 log2(v / f) stops more than distant [by hand]", async () => {
    const card = cardOf((await demoCard(skiff)).card);
    expect(card.columns).toHaveLength(5);
    const distant = card.columns.findIndex(({ distanceMm }) => distanceMm === null);
    expect(distant).toBe(0);
    for (const line of card.cells) {
      for (const [place, { extensionMm }] of card.columns.entries()) {
        const stops = Math.log2((line[place]?.timeS ?? 0) / (line[distant]?.timeS ?? 1));
        expect(stops).toBeCloseTo(2 * Math.log2(extensionMm / 210), 6);
      }
    }
    const extensions = card.columns.map(({ extensionMm }) => extensionMm);
    expect(extensions).toEqual(extensions.toSorted((a, b) => a - b));
    expect(Math.max(...extensions)).toBeLessThanOrEqual(420);
  });

  test("below what a cap can give, and beyond an hour, no time is meant", async () => {
    const card = cardOf((await demoCard(skiff)).card);
    for (const { kind, timeS } of card.cells.flat()) {
      expect(kind).toBe(timeS < card.shortestS ? "tooShort" : timeS > longestOnCardS ? "tooLong" : "time");
    }
    expect(card.cells.flat().filter(({ kind }) => kind === "tooShort").length).toBeGreaterThan(5);
    expect(card.mostSdStops).toBeGreaterThanOrEqual(card.own.answer.timeStops.sd);
  });

  test("long exposures are in every cell: with an exponent of 0.8 two stops less light ask for 2.5 stops more time [by hand]", () => {
    const kit = someKit({ paperBox: { reciprocity: { exponent: 0.8, fromS: 1 } } });
    const card = cardOf(fieldCardOf({ kit, step: "whole" }));
    const times = card.cells.map((line) => line[0]?.timeS ?? 0);
    // Both cells lie above 1 s: t = t0^(1/0.8).
    expect(Math.log2((times[1] ?? 0) / (times[3] ?? 1))).toBeCloseTo(2 / 0.8, 6);
  });

  test("half stops lie around the reading, with the marks of a half-stop dial", async () => {
    const card = cardOf((await demoCard(skiff, "half")).card);
    expect(card.rows.map(({ text }) => text)).toEqual([
      "1/4",
      "1/6",
      "1/8",
      "1/10",
      "1/15",
      "1/20",
      "1/30",
      "1/45",
      "1/60",
      "1/90",
    ]);
    expect(card.rows.filter(({ isOwn }) => isOwn).map(({ text }) => text)).toEqual(["1/15"]);
  });

  test("a reading in exposure values has its rows in them", () => {
    const reading = { way: "ev100", ev100: { value: 11, text: "EV 11" } };
    const kit = someKit({ scene: areasOf([["hull", reading]]) });
    const card = cardOf(fieldCardOf({ kit, step: "whole" }));
    expect(card.rows.map(({ text }) => text)).toEqual(Array.from({ length: 10 }, (_, n) => `EV ${n + 7}`));
    expect(card.rows.filter(({ isOwn }) => isOwn)).toHaveLength(1);
  });

  test("a pinhole has one column, and its times go beyond sense where they do", async () => {
    const card = cardOf((await demoCard("The slip from the tea chest")).card);
    expect(card.columns.map(({ distanceMm, extensionMm }) => [distanceMm, extensionMm])).toEqual([[undefined, 150]]);
    const kinds = card.cells.map(([cell]) => cell?.kind);
    expect(kinds[0]).toBe("tooLong");
    expect(kinds.at(-1)).toBe("time");
  });

  test("a bed with its own scale has its marks on the card: infinity mark and travel", async () => {
    const { kit, camera } = await demoCard(skiff);
    if (camera === undefined) throw new Error("no camera");
    const card = cardOf(
      fieldCardOf({ kit, camera: { ...camera, infinityBedMm: { value: 12, sd: 0.5 } }, step: "whole" }),
    );
    expect(card.columns[0]?.bedMm).toBeCloseTo(12, 9);
    expect(card.columns.find(({ isOwn }) => isOwn)?.bedMm).toBeCloseTo(50, 9);
  });

  test("without a lens or an index it says what is missing", () => {
    const kit = someKit({});
    expect(fieldCardOf({ kit: { ...kit, exposureIndex: undefined }, step: "whole" })).toEqual({
      kind: "missing",
      missing: ["exposureIndex"],
    });
    expect(fieldCardOf({ kit: { ...kit, lens: undefined }, step: "whole" })).toMatchObject({ kind: "missing" });
    const near = { ...kit.scene, focus: { by: "extension", extensionMm: { value: 100 } } } as Scene;
    expect(fieldCardOf({ kit: { ...kit, scene: near }, step: "whole" })).toMatchObject({ kind: "refused" });
  });
});
