import { expect, test } from "vitest";
import { planOf } from "./planOf.ts";
import { demoSheet, someKit } from "./testing.ts";
import { waysOf } from "./waysOf.ts";

function askedOf(kit: Parameters<typeof planOf>[0]) {
  const plan = planOf(kit);
  if (plan.kind !== "plan") throw new Error("no plan");
  return { plan, ways: waysOf({ kit, plan }) };
}

test("12.6 s: to the 13th tick, or 13 counted seconds of 0.95 s each [13 × 0.95 = 12.35 s: by hand]", async () => {
  const { kit } = await demoSheet("W30");
  const { ways } = askedOf(kit);
  const found = ways.byHand.kind === "ways" ? ways.byHand.ways : [];
  expect(found.find(({ how }) => how === "ticks")).toMatchObject({ counts: 13, givenS: 13 });
  const head = found.find(({ how }) => how === "head");
  expect(head).toMatchObject({ counts: 13 });
  expect(head?.how === "head" ? head.givenS : Number.NaN).toBeCloseTo(12.35, 9);
});

test("a subject that keeps still for 60 s is asked for 12.6 s; where nobody said how long, nothing is asked", async () => {
  const { kit } = await demoSheet("W30");
  expect(askedOf(kit).ways.still).toEqual({ kind: "keepsStill" });
  const gusty = someKit({ scene: { stillS: { value: 4 } } });
  expect(askedOf(gusty).ways.still).toMatchObject({ kind: "tooLong" });
  expect(askedOf(someKit({})).ways.still).toBeUndefined();
});

test("too short for the cap: what would make it long enough, and the extension counts with its pupil ratio", () => {
  const bright = { exposureIndex: { value: { value: 100, sdStops: 0.5 } } };
  const plain = askedOf(someKit(bright));
  const tele = askedOf(someKit({ ...bright, lens: { pupilRatio: { value: 0.5, sd: 0.05 } } }));
  expect(plain.plan.answer.byHand.how).toBe("tooShort");
  expect(plain.ways.byHand.kind).toBe("tooShort");
  expect(tele.ways.byHand.kind).toBe("tooShort");
  expect(tele.ways).not.toEqual(plain.ways);
});
