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

test("too short for the cap: the larger image that would do counts the pupil ratio [m′ = P ((1 + m/P) 2^(x/2) − 1): by hand]", () => {
  const kit = someKit({
    exposureIndex: { value: { value: 100, sdStops: 0.5 } },
    lens: { pupilRatio: { value: 0.5, sd: 0.05 } },
  });
  const { plan, ways } = askedOf(kit);
  expect(plan.answer.byHand.how).toBe("tooShort");
  const stops = Math.log2(ways.byHand.shortestS / plan.answer.timeS);
  const m = 248 / 210 - 1;
  const wanted = 0.5 * ((1 + m / 0.5) * 2 ** (stops / 2) - 1);
  expect(ways.byHand.kind === "tooShort" ? ways.byHand.levers.magnification : 0).toBeCloseTo(wanted, 9);
});

test("a paper with long exposures of its own needs fewer stops to become short enough: x = p log2(t ÷ still) [by hand]", () => {
  const scene = { stillS: { value: 4 } };
  const kit = someKit({ scene, paperBox: { reciprocity: { exponent: 0.8, fromS: 1 } } });
  const { plan, ways } = askedOf(kit);
  expect(ways.still?.kind === "tooLong" ? ways.still.stops : 0).toBeCloseTo(0.8 * Math.log2(plan.answer.timeS / 4), 9);
});
