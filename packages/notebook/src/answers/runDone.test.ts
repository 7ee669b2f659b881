import { describe, expect, test } from "vitest";
import { openForTest } from "../journal/testing.ts";
import type { Json, Run } from "../records/index.ts";
import { finishOf } from "./finishOf.ts";
import { at } from "./holdersTesting.ts";
import { runDoneOf, type StayDone } from "./runDoneOf.ts";
import { runsOfSheet } from "./runsOfSheet.ts";
import { stayEditSets } from "./stayEditSets.ts";
import { idNumber, recordOf } from "./testing.ts";

const lane = idNumber(300);
const steps: Json = [
  { step: "developer", does: "develop", timeS: 120, bathC: 20.5, drainS: 10 },
  { step: "stop", does: "stop", timeS: 30 },
  { step: "fixer", does: "fix", timeS: 60 },
  { step: "wash", does: "wash", timeS: 240 },
];

async function notebookWith(
  presses: readonly (readonly [sinceS: number, press: string])[],
  more: Record<string, Json> = {},
) {
  const notebook = await openForTest();
  const set: Record<string, Json> = {
    recipe: { kind: "negative", steps },
    startedAt: at(10),
    [`lanes.${lane}.code`]: "W35",
    [`lanes.${lane}.sheetIds`]: [idNumber(35)],
    ...more,
  };
  for (const [n, [sinceS, press]] of presses.entries()) {
    set[`events.${idNumber(400 + n)}.event`] = {
      laneId: lane,
      press,
      sinceStartMs: 1000 * sinceS,
      wallMs: at(10).at + 1000 * sinceS,
    };
  }
  await notebook.change([{ id: idNumber(290), kind: "run", set }], "a run").kept;
  const read = () => notebook.shelf("run")[0] as Run;
  return { notebook, read };
}

function staysOf(run: Run): readonly StayDone[] {
  const told = runDoneOf({ run });
  if (told.kind !== "done") throw new Error(told.kind);
  return told.lanes[0]?.stays ?? [];
}

// In at 0, into the stop at 126 (6 s late), into the fixer at 160; then nobody presses, and the run was left at 600 s.
const pressed = [
  [0, "start"],
  [126, "next"],
  [160, "next"],
] as const;

describe("a run afterwards", () => {
  test("planned and done stand side by side; nobody pressed is wider [by hand: 126 · 2^0.05 = 130.443]", async () => {
    const { read } = await notebookWith(pressed, { endedAt: at(20) });
    const stays = staysOf(read());
    expect(stays.map(({ step, plannedS, actualS, how }) => [step, plannedS, actualS.value, how])).toEqual([
      ["developer", 120, 126, "tapped"],
      ["stop", 30, 34, "tapped"],
      ["fixer", 60, 60, "assumed"],
      ["wash", 240, 240, "assumed"],
    ]);
    expect(stays[2]?.actualS.sd).toBeGreaterThan(3 * (stays[1]?.actualS.sd ?? 9));
    expect(stays[0]?.effectiveS).toBeCloseTo(130.443, 2);
    expect(stays[0]?.log2Ratio).toBeCloseTo(0.120389, 4);
  });

  test("put right: the new time stands with the warmth of its bath, what was pressed stays beside it, and can come back", async () => {
    const { notebook, read } = await notebookWith(pressed, { endedAt: at(20) });
    const put = async (place: number, actualS: number | null) => {
      const run = read();
      const stay = staysOf(run)[place] as StayDone;
      const sets = stayEditSets({ run, stay, actualS, now: at(30), newId: () => notebook.newId() });
      if (sets.length > 0) await notebook.change(sets, "put right").kept;
    };
    await put(0, 132.04);
    const [developer] = staysOf(read());
    expect([developer?.actualS.value, developer?.pressedS, developer?.how]).toEqual([132, 126, "edited"]);
    // The bath at 20.5 works 2^0.05 faster: 132 s in it are 136.655 at 20.
    expect(developer?.effectiveS).toBeCloseTo(132 * 2 ** 0.05, 2);
    await put(0, 131);
    expect(read().edits).toHaveLength(1);
    expect(
      (await notebook.history(read().id, `edits.${read().edits[0]?.id}.actualS`)).map(({ value }) => value),
    ).toEqual(expect.arrayContaining([131, 132]));
    await put(0, null);
    expect(staysOf(read())[0]).toMatchObject({ actualS: { value: 126 }, how: "tapped", editId: undefined });
    await put(2, 0);
    expect(staysOf(read())[2]).toMatchObject({ actualS: { value: 0 }, how: "edited", log2Ratio: null });
    await put(1, Number.NaN);
    await put(1, -4);
    expect(staysOf(read())[1]?.how).toBe("tapped");
  });

  test("a run that was left early says what was not done; one that goes on does not", async () => {
    const early = await notebookWith(pressed, { endedAt: { at: at(10).at + 170_000, offsetMin: 60 } });
    const told = runDoneOf({ run: early.read() });
    expect(told).toMatchObject({ kind: "done", isOver: true, lanes: [{ leftUndone: ["wash"], isIn: null }] });
    const going = await notebookWith(pressed);
    expect(runDoneOf({ run: going.read() })).toMatchObject({
      kind: "done",
      isOver: false,
      lanes: [{ leftUndone: [] }],
    });
  });

  test("a recipe that cannot be read is said, and nothing else is lost", async () => {
    const { read } = await notebookWith(pressed, { recipe: { kind: "negative" } });
    expect(runDoneOf({ run: read() })).toEqual({ kind: "unreadable" });
    expect(read().events).toHaveLength(3);
  });
});

test("the runs of a sheet, whole or in pieces, the earliest first", async () => {
  const { notebook } = await notebookWith(pressed);
  const set: Record<string, Json> = {
    startedAt: at(5),
    [`lanes.${idNumber(310)}.pieces`]: [
      { sheetId: idNumber(35), letter: "a" },
      { sheetId: idNumber(36), letter: "b" },
    ],
  };
  await notebook.change([{ id: idNumber(291), kind: "run", set }], "another").kept;
  const runs = notebook.shelf("run");
  const found = (n: number) => runsOfSheet({ runs, sheetId: idNumber(n) }).map(({ run, letter }) => [run.id, letter]);
  expect(found(35)).toEqual([
    [idNumber(291), "a"],
    [idNumber(290), undefined],
  ]);
  expect(found(36)).toEqual([[idNumber(291), "b"]]);
  expect(found(37)).toEqual([]);
});

describe("the baths when a run is over", () => {
  const bath = (n: number, fields: Readonly<Record<string, Json>>) => recordOf("bath", idNumber(n), fields);
  const bleach = bath(80, {
    name: "bleach",
    role: "acidAndPeroxide",
    holds: [{ what: "h2o2", percentWv: 3 }],
    lastHourAt: at(300),
  });
  const used = bath(81, { name: "fixer", role: "fix", holds: [{ what: "fixer" }], discardedAt: at(90) });
  const bathOf = (id: string) => [bleach, used].find((one) => one.id === id);

  test("each is named; what is in the open ones asks for its cautions", () => {
    const run = recordOf("run", idNumber(290), { bathIds: [bleach.id, used.id] });
    expect(finishOf({ run, bathOf })).toEqual({
      baths: [
        { id: bleach.id, name: "bleach", state: "hasLastHour" },
        { id: used.id, name: "fixer", state: "discarded" },
      ],
      held: [{ substance: "h2o2", percentWw: 3 }],
    });
  });

  test("without baths the recipe of that evening says what was poured; without either nothing is known", () => {
    const recipeThen: Json = { steps: [{ holds: [{ what: "fixer" }] }, {}] };
    expect(finishOf({ run: recordOf("run", idNumber(290), { recipeThen }), bathOf }).held).toEqual([
      { substance: "fixer" },
    ]);
    expect(finishOf({ run: recordOf("run", idNumber(290), {}), bathOf })).toEqual({ baths: [], held: [] });
  });
});
