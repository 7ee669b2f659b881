import fc from "fast-check";
import { expect, test } from "vitest";
import type { Sheet, StepDate } from "../records/sheet.ts";
import { stepDates } from "../records/sheet.ts";
import { sheetState } from "../records/sheetState.ts";
import { newMemoryBase } from "../storage/index.ts";
import type { Notebook } from "./notebook.ts";
import { openForTest } from "./testing.ts";

type Dates = { readonly [D in StepDate]?: number } & { readonly owed?: boolean };
/** All forms the sheet has had; taking back drops the last. */
interface Model {
  forms: Dates[];
  minute: number;
}
interface Real {
  notebook: Notebook;
  readonly id: string;
  readonly reopen: () => Promise<Notebook>;
}

/** The state told in another way than the code's: the last step named in the sentence of the journey. */
function stateOf(dates: Dates): string {
  const said: [StepDate, string][] = [
    ["loadedAt", "loaded"],
    ["flashedAt", "flashed"],
    ["exposedAt", dates.owed && dates.flashedAt === undefined ? "flashOwed" : "exposed"],
    ["inProcessAt", "inProcess"],
    ["dryingAt", "drying"],
    ["measuredAt", "measured"],
  ];
  const end = { keptAt: "kept", discardedAt: "discarded" } as const;
  const { keptAt = -1, discardedAt = -1 } = dates;
  if (keptAt >= 0 || discardedAt >= 0) return keptAt >= discardedAt ? end.keptAt : end.discardedAt;
  return said.reduce((state, [step, word]) => (dates[step] === undefined ? state : word), "blank");
}

async function agree(model: Model, { notebook, id }: Real): Promise<void> {
  const dates = model.forms.at(-1);
  const sheet = (await notebook.load(id)) as Sheet | undefined;
  if (dates === undefined) {
    expect([sheet, notebook.cards()]).toEqual([undefined, []]);
    return;
  }
  expect(sheet && sheetState(sheet)).toBe(stateOf(dates));
  expect(notebook.cards().map(({ state }) => state)).toEqual([stateOf(dates)]);
  for (const step of stepDates) expect(sheet?.[step]?.at).toBe(dates[step]);
}

class Step implements fc.AsyncCommand<Model, Real> {
  readonly step: StepDate;
  readonly clear: boolean;
  constructor(step: StepDate, clear: boolean) {
    this.step = step;
    this.clear = clear;
  }
  check = (): boolean => true;
  async run(model: Model, real: Real): Promise<void> {
    const before: Dates = model.forms.at(-1) ?? {};
    const at = model.minute++;
    const { [this.step]: _, ...rest } = before;
    model.forms.push(this.clear ? rest : { ...rest, [this.step]: at });
    const set = { code: "W1", [this.step]: this.clear ? null : { at, offsetMin: 60 } };
    await real.notebook.change([{ id: real.id, kind: "sheet", set }], this.step).kept;
    await agree(model, real);
  }
  toString = (): string => `${this.clear ? "clear" : "date"} ${this.step}`;
}

class PlanFlash implements fc.AsyncCommand<Model, Real> {
  check = (): boolean => true;
  async run(model: Model, real: Real): Promise<void> {
    model.forms.push({ ...model.forms.at(-1), owed: true });
    const set = { code: "W1", flashPlanned: { timeS: 4, when: "afterExposure" } };
    await real.notebook.change([{ id: real.id, kind: "sheet", set }], "flash planned").kept;
    await agree(model, real);
  }
  toString = (): string => "plan the flash after the exposure";
}

class TakeBack implements fc.AsyncCommand<Model, Real> {
  check = (): boolean => true;
  async run(model: Model, real: Real): Promise<void> {
    const taken = await real.notebook.takeBack();
    expect(taken.kind).toBe(model.forms.length === 0 ? "nothing" : "takenBack");
    model.forms.pop();
    await agree(model, real);
    expect(real.notebook.nextToTakeBack() === undefined).toBe(model.forms.length === 0);
  }
  toString = (): string => "take back";
}

class Reload implements fc.AsyncCommand<Model, Real> {
  check = (): boolean => true;
  async run(model: Model, real: Real): Promise<void> {
    await real.notebook.close();
    real.notebook = await real.reopen();
    await agree(model, real);
  }
  toString = (): string => "reload";
}

test("a sheet's state follows from its dates through steps, clearing, taking back and reloads [model]", async () => {
  const commands = fc.commands(
    [
      ...stepDates.map((step) => fc.boolean().map((clear) => new Step(step, clear))),
      fc.constant(new PlanFlash()),
      fc.constant(new TakeBack()),
      fc.constant(new TakeBack()),
      fc.constant(new TakeBack()),
      fc.constant(new Reload()),
    ],
    { maxCommands: 40 },
  );
  await fc.assert(
    fc.asyncProperty(commands, async (chosen) => {
      const base = newMemoryBase();
      let openings = 1;
      const reopen = () => openForTest({ base, seed: openings++ });
      await fc.asyncModelRun(async () => {
        const notebook = await reopen();
        return { model: { forms: [], minute: 0 } as Model, real: { notebook, id: notebook.newId(), reopen } };
      }, chosen);
    }),
    { seed: 20261201, numRuns: 60 },
  );
}, 60_000);
