import type { LanePress, ProcessRecipe, StepDoes } from "@captray/science/process";
import { forward } from "@captray/science/tone";
import { describe, expect, it } from "vitest";
import type { Json, Run } from "../records/index.ts";
import { costOfDeviation } from "./costOfDeviation.ts";
import { type DeviationsOf, deviationsOf } from "./deviationsOf.ts";
import { idNumber, recordOf } from "./testing.ts";

const recipe: ProcessRecipe = {
  kind: "positive",
  steps: [
    {
      step: "first developer",
      does: "firstDevelop",
      timeS: 120,
      bathC: 22,
      referenceC: 20,
      drainS: 10,
      mustLeaveOnTime: true,
    },
    { step: "stop", does: "stop", timeS: 30, drainS: 8 },
    { step: "peroxide", does: "bleach", timeS: 90, group: { id: "r", min: 1, max: 3, until: "noDarkSilver" } },
    { step: "light", does: "reexpose", timeS: 30, light: "whiteRequired" },
    { step: "second developer", does: "redevelop", timeS: 90, light: "whiteAllowed" },
  ],
};
const lane = idNumber(1);
const dueS = 120 / 2 ** 0.2;

function runOfEvents(said: readonly (readonly [number, LanePress])[], more: Readonly<Record<string, Json>> = {}): Run {
  const fields: Record<string, Json> = { recipe: recipe as unknown as Json, [`lanes.${lane}.code`]: "W51" };
  for (const [place, [atS, press]] of said.entries()) {
    fields[`events.${idNumber(500 + place)}.event`] = {
      laneId: lane,
      press,
      sinceStartMs: atS * 1000,
      wallMs: atS * 1000,
    };
  }
  return recordOf("run", idNumber(9), { ...fields, ...more });
}

function deviations(
  said: readonly (readonly [number, LanePress])[],
  more?: Readonly<Record<string, Json>>,
  asked: object = {},
): DeviationsOf {
  const answer = deviationsOf({ run: runOfEvents(said, more), laneId: lane, ...asked });
  if (answer === undefined) throw new Error("nothing");
  return answer;
}
/** The first developer this much later than due, the stop on time, the bleach one round. */
const late = (byS: number): readonly (readonly [number, LanePress])[] => [
  [0, "start"],
  [dueS + byS, "next"],
  [dueS + byS + 30, "next"],
  [dueS + byS + 120, "clear"],
];

describe("stay by stay", () => {
  it("120 s at 20 °C are due after 104.466 s at 22 °C; a second more or less is as planned [by hand: 120 / 2^0.2]", () => {
    const [developer] = deviations(late(0.9)).rows;
    expect(developer?.dueS).toBeCloseTo(104.466, 3);
    expect(developer).toMatchObject({
      against: "asPlanned",
      how: "tapped",
      plannedS: 120,
      cost: { weight: "nothing" },
    });
    expect(developer?.offS).toBeCloseTo(0.9, 9);
    expect(deviations(late(4)).rows[0]).toMatchObject({ against: "longer", cost: { weight: "lasting" } });
    expect(deviations(late(-4)).rows[0]).toMatchObject({ against: "shorter", cost: { weight: "lasting" } });
  });

  it("a step nobody pressed is assumed, with a doubt of 5 s or its drain [assumption]", () => {
    const { rows } = deviations([
      [0, "start"],
      [400, "trouble"],
    ]);
    expect(rows.slice(0, 3).map(({ how, actualS }) => [how, actualS.sd])).toEqual([
      ["assumed", 10],
      ["assumed", 8],
      ["assumed", 5],
    ]);
    expect(rows[0]?.against).toBe("asPlanned");
  });

  it("a time put right afterwards stands as edited; what was pressed stays in the record", () => {
    const edit = `edits.${idNumber(90)}`;
    const more = { [`${edit}.laneId`]: lane, [`${edit}.at`]: 0, [`${edit}.round`]: 1, [`${edit}.actualS`]: dueS };
    const { rows, development } = deviations(late(30), more);
    expect(rows[0]).toMatchObject({ how: "edited", against: "asPlanned" });
    expect(rows[0]?.actualS.value).toBeCloseTo(dueS, 9);
    expect(development?.ratioStops.value).toBeCloseTo(0, 9);
    expect(runOfEvents(late(30), more).events).toHaveLength(4);
  });

  it("what was left out is said with its cost, and rounds are counted", () => {
    const { rows, rounds } = deviations([
      [0, "start"],
      [50, "skip"],
      [dueS, "next"],
      [dueS + 90, "another"],
      [dueS + 180, "clear"],
    ]);
    expect(rows[1]).toMatchObject({ step: "stop", against: "skipped", how: "skipped", cost: { weight: "lasting" } });
    expect(rounds).toBe(2);
  });
});

describe("the first developer, by the model of reversal", () => {
  it("10 s too short leaves grey in the whites as two predictions differ [peer: forward, starting beliefs]", () => {
    const { development } = deviations(late(-10));
    const u1 = (dueS - 10) / dueS;
    const [planned = 0, short = 0] = forward({
      sheets: [{}, { u1 }],
      patches: [0, 1].map((sheet) => ({ sheet, kind: "fogged" as const })),
    }).density;
    expect(development?.change.exposed.value).toBeCloseTo(short - planned, 4);
    expect(development?.change.exposed.interval.low).toBeGreaterThan(0);
    expect(development?.effectiveS.value).toBeCloseTo(120 * u1, 6);
  });

  it("a second costs by the derivative there: by hand from two predictions a second apart", () => {
    const { development } = deviations(late(0));
    const [before = 0, after = 0] = forward({
      sheets: [{ u1: 119.5 / 120 }, { u1: 120.5 / 120 }],
      patches: [0, 1].map((sheet) => ({ sheet, kind: "fogged" as const })),
    }).density;
    expect(development?.perSecond).toBeCloseTo(after - before, 5);
    expect(development?.perSecond).toBeLessThan(0);
  });

  it("who did not press is less sure of it, and who has measured the paper is surer", () => {
    const pressed = deviations(late(-10)).development?.change.exposed.sd ?? 0;
    const measured = { curve: { m1: { value: 0.04, sd: 0.1 } } };
    expect(deviations(late(-10), {}, { measured }).development?.change.exposed.sd).toBeLessThan(pressed);
    const assumed = deviations([
      [0, "start"],
      [dueS + 40, "trouble"],
    ]).development;
    expect(assumed?.ratioStops.sd).toBeGreaterThan(0.1);
    expect(assumed?.change.exposed.sd).toBeGreaterThan(0);
  });

  it("is not said while the sheet is still in it", () => {
    expect(
      deviations([
        [0, "start"],
        [60, "trouble"],
      ]).development,
    ).toBeUndefined();
    expect(
      deviations([
        [0, "start"],
        [60, "repeat"],
        [70, "trouble"],
      ]).development,
    ).toBeUndefined();
  });

  it("two stays count together", () => {
    const { development } = deviations([
      [0, "start"],
      [dueS, "repeat"],
      [2 * dueS, "next"],
    ]);
    expect(development?.ratioStops.value).toBeCloseTo(1, 9);
  });
});

it("a lane that is not there, or a recipe that cannot be read, gives nothing", () => {
  expect(deviationsOf({ run: runOfEvents([]), laneId: idNumber(77) })).toBeUndefined();
  expect(deviationsOf({ run: runOfEvents([], { recipe: 5 }), laneId: lane })).toBeUndefined();
});

it("a stop twice as long is forgiven, longer soaks the edges; every step has words for every slip [common practice]", () => {
  const stop = (shareOff: number) =>
    costOfDeviation({ does: "stop", kind: "positive", against: "longer", shareOff }).weight;
  expect([stop(0.9), stop(1.1)]).toEqual(["nothing", "small"]);
  const all: StepDoes[] = [
    "develop",
    "firstDevelop",
    "stop",
    "rinse",
    "bleach",
    "clear",
    "reexpose",
    "redevelop",
    "fix",
    "wash",
    "other",
  ];
  for (const does of all)
    for (const against of ["longer", "shorter", "skipped"] as const)
      expect(costOfDeviation({ does, kind: "negative", against, shareOff: 0.2 }).words).toMatch(/^[A-Z].*\.$/);
});
