import fc from "fast-check";
import { expect, test } from "vitest";
import type { Notebook } from "../journal/index.ts";
import { openForTest } from "../journal/testing.ts";
import { type Moment, type PaperBox, type RecordId, type Sheet, type StepDate, stepDates } from "../records/index.ts";
import { newMemoryBase } from "../storage/index.ts";
import { emptySide } from "./emptySide.ts";
import { holdersOf } from "./holdersOf.ts";
import { at } from "./holdersTesting.ts";
import { stepSets } from "./stepSets.ts";
import { swapFromHere } from "./swapFromHere.ts";

/** Two sheets and their box as a person at the bench would keep them in mind: by what was done, not by fields. */
interface Kept {
  readonly done: readonly [Readonly<Record<string, number>>, Readonly<Record<string, number>>];
  readonly out: readonly [boolean, boolean];
  readonly left: number;
}
interface Model {
  forms: Kept[];
  minute: number;
}
interface Real {
  notebook: Notebook;
  readonly ids: readonly [RecordId, RecordId];
  readonly boxId: RecordId;
  readonly reopen: () => Promise<Notebook>;
}

const start: Kept = { done: [{}, {}], out: [false, false], left: 5 };
const inTheDark = ["inProcessAt", "dryingAt", "measuredAt", "keptAt", "discardedAt"];

async function sheetsOf({ notebook, ids }: Real): Promise<readonly [Sheet, Sheet]> {
  return [(await notebook.load(ids[0])) as Sheet, (await notebook.load(ids[1])) as Sheet];
}

async function agree({ forms }: Model, real: Real): Promise<void> {
  const kept = forms.at(-1) ?? start;
  const sheets = await sheetsOf(real);
  for (const which of [0, 1] as const) {
    const dates = Object.fromEntries(
      stepDates.flatMap((step) => (sheets[which][step] ? [[step, sheets[which][step]?.at]] : [])),
    );
    expect(dates).toEqual(kept.done[which]);
    expect(Boolean(sheets[which].keptAt && sheets[which].discardedAt)).toBe(false);
    // Seconds of flash stand only beside a date.
    if (!sheets[which].flashedAt) expect(sheets[which].flashGivenS).toBeUndefined();
  }
  expect((real.notebook.peek(real.boxId) as PaperBox).sheetsLeft).toBe(kept.left);
  const [holder] = holdersOf({ holders: real.notebook.shelf("holder"), cards: real.notebook.cards() });
  for (const which of [0, 1] as const) {
    const done = kept.done[which];
    const there =
      !kept.out[which] && (done.loadedAt ?? done.exposedAt) !== undefined && !inTheDark.some((step) => step in done);
    const state = holder?.sides[which]?.state;
    expect(state === "loaded" || state === "exposed").toBe(there);
  }
}

class Step implements fc.AsyncCommand<Model, Real> {
  readonly which: 0 | 1;
  readonly step: StepDate;
  readonly clear: boolean;
  constructor(which: 0 | 1, step: StepDate, clear: boolean) {
    this.which = which;
    this.step = step;
    this.clear = clear;
  }
  check = (): boolean => true;
  async run(model: Model, real: Real): Promise<void> {
    const now: Moment = at(model.minute++);
    const was = model.forms.at(-1) ?? start;
    const { [this.step]: former, ...rest } = was.done[this.which];
    if (this.clear && former === undefined) return;
    const shut: Record<string, string> = { keptAt: "discardedAt", discardedAt: "keptAt" };
    const { [shut[this.step] ?? ""]: _, ...without } = rest;
    const done = this.clear ? rest : { ...without, [this.step]: now.at };
    const loading = this.step === "loadedAt";
    model.forms.push({
      done: this.which === 0 ? [done, was.done[1]] : [was.done[0], done],
      out: was.out.map((out, one) => out && !(one === this.which && loading && !this.clear)) as [boolean, boolean],
      left: was.left + (loading ? (this.clear ? 1 : former === undefined ? -1 : 0) : 0),
    });
    const sheet = (await sheetsOf(real))[this.which];
    const paperBox = real.notebook.peek(real.boxId) as PaperBox;
    const sets = stepSets({ sheet, step: this.step, at: this.clear ? null : now, now, paperBox, flashGivenS: 4 });
    await real.notebook.change(sets, this.toString()).kept;
    await agree(model, real);
  }
  toString = (): string => `${this.clear ? "clear" : "date"} ${this.step} of sheet ${this.which + 1}`;
}

class TakeOut implements fc.AsyncCommand<Model, Real> {
  check = (): boolean => true;
  async run(model: Model, real: Real): Promise<void> {
    const was = model.forms.at(-1) ?? start;
    const now = at(model.minute++);
    const [sheet] = holdersOf({ holders: real.notebook.shelf("holder"), cards: real.notebook.cards() }).flatMap(
      ({ sides }) => sides.flatMap(({ state, sheet: one }) => (state === "exposed" && one ? [one] : [])),
    );
    if (sheet === undefined) return;
    model.forms.push({ ...was, out: sheet.id === real.ids[0] ? [true, was.out[1]] : [was.out[0], true] });
    await real.notebook.change(emptySide({ sheet, how: { to: "exposedBox" }, now }), "emptied").kept;
    await agree(model, real);
  }
  toString = (): string => "take an exposed sheet out";
}

class SwapAtTheTrays implements fc.AsyncCommand<Model, Real> {
  check = (): boolean => true;
  async run(model: Model, real: Real): Promise<void> {
    const was = model.forms.at(-1) ?? start;
    const [a, b] = await sheetsOf(real);
    const sets = swapFromHere({ a, b, from: "inProcessAt", now: at(model.minute++) });
    if (sets.length === 0) return;
    const part = (done: Readonly<Record<string, number>>, later: boolean) =>
      Object.fromEntries(Object.entries(done).filter(([step]) => inTheDark.includes(step) === later));
    const [one, two] = was.done;
    model.forms.push({
      ...was,
      done: [
        { ...part(one, false), ...part(two, true) },
        { ...part(two, false), ...part(one, true) },
      ],
    });
    await real.notebook.change(sets, "swapped from the trays on").kept;
    await agree(model, real);
  }
  toString = (): string => "swap from the trays on";
}

class TakeBack implements fc.AsyncCommand<Model, Real> {
  check = ({ forms }: Readonly<Model>): boolean => forms.length > 0;
  async run(model: Model, real: Real): Promise<void> {
    expect((await real.notebook.takeBack()).kind).toBe("takenBack");
    model.forms.pop();
    await agree(model, real);
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

test("two sheets and their box through steps, emptying, swapping, taking back and reloads: nothing counted twice, nothing lost [model]", async () => {
  const commands = fc.commands(
    [
      fc
        .tuple(fc.constantFrom(0 as const, 1 as const), fc.constantFrom(...stepDates), fc.boolean())
        .map((chosen) => new Step(...chosen)),
      fc
        .tuple(
          fc.constantFrom(0 as const, 1 as const),
          fc.constantFrom("loadedAt" as const, "exposedAt" as const),
          fc.constant(false),
        )
        .map((chosen) => new Step(...chosen)),
      fc.constant(new TakeOut()),
      fc.constant(new SwapAtTheTrays()),
      fc.constant(new TakeBack()),
      fc.constant(new Reload()),
    ],
    { maxCommands: 30 },
  );
  await fc.assert(
    fc.asyncProperty(commands, async (chosen) => {
      const base = newMemoryBase();
      let openings = 1;
      const reopen = () => openForTest({ base, seed: openings++ });
      await fc.asyncModelRun(async () => {
        const notebook = await reopen();
        const [first, second, boxId, holderId, sideA, sideB] = Array.from({ length: 6 }, () => notebook.newId());
        const put = (id: RecordId | undefined, sideId: RecordId | undefined, code: string) => ({
          id: id ?? "",
          kind: "sheet" as const,
          set: { code, paperBoxId: boxId ?? "", holderSide: { holderId: holderId ?? "", sideId: sideId ?? "" } },
        });
        await notebook.change(
          [
            { id: boxId ?? "", kind: "paperBox", set: { name: "Box C", sheetsLeft: 5 } },
            {
              id: holderId ?? "",
              kind: "holder",
              set: { name: "2", [`sides.${sideA}.name`]: "A", [`sides.${sideB}.name`]: "B" },
            },
            put(first, sideA, "W36"),
            put(second, sideB, "W37"),
          ],
          "laid out",
        ).kept;
        const ids = [first, second] as [RecordId, RecordId];
        return { model: { forms: [], minute: 0 } as Model, real: { notebook, ids, boxId: boxId as RecordId, reopen } };
      }, chosen);
    }),
    { seed: 20261202, numRuns: 50 },
  );
}, 60_000);
