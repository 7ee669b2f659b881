import { expect, test } from "vitest";
import { exportNotebook, importNotebook } from "../../packages/notebook/src/formats/index.ts";
import type { Change, Notebook } from "../../packages/notebook/src/journal/index.ts";
import { openForTest, seededRandom } from "../../packages/notebook/src/journal/testing.ts";
import { fillDemo } from "../../packages/notebook/src/starters/index.ts";

/** A thousand damaged texts in the usual run; as many as asked in a long one: `CAPTRAY_FUZZ=100000`. */
const texts = Number(process.env.CAPTRAY_FUZZ ?? 1000);
const seed = Number(process.env.CAPTRAY_SEED ?? 20_261_125);

async function logOf(notebook: Notebook): Promise<readonly Change[]> {
  const log: Change[] = [];
  for await (const change of notebook.log()) log.push(change);
  return log;
}

/** The shelf and the scenes of the invented notebook: every kind of field, and small enough to be read often. */
async function soundText(): Promise<string> {
  const whole = await openForTest();
  await fillDemo({ notebook: whole });
  const part = await openForTest();
  await part.apply(
    (await logOf(whole)).filter(({ ops }) => ops.every(([, , set]) => !("planned" in set))).slice(0, 24),
  );
  return exportNotebook({ notebook: part });
}

const words = ["__proto__", "constructor", "toString", "", "lens", "\u0000", "ops", "h", "~", "/", "x".repeat(500)];
const values: readonly unknown[] = [
  null,
  true,
  -1,
  0,
  Number.MAX_VALUE,
  1e-320,
  "",
  [],
  {},
  [[[[]]]],
  "0mx4gus7k0000boatyard01",
];

/** Damages a text as a disk, a wire, an editor or a hostile hand might. */
function damaged(text: string, random: () => number): string {
  const below = (n: number) => Math.floor(random() * n);
  const one = <T>(from: readonly T[]): T => from[below(from.length)] as T;
  const at = below(text.length);
  switch (below(10)) {
    case 0:
      return text.slice(0, at);
    case 1:
      return text.slice(0, at) + String.fromCharCode(below(0x300)) + text.slice(at + 1);
    case 2:
      return text.slice(0, at) + text.slice(at + below(40));
    case 3:
      return text.slice(0, at) + text.slice(below(at + 1), at) + text.slice(at);
    case 4: {
      const lines = text.split("\n");
      const [a, b] = [below(lines.length), below(lines.length)];
      [lines[a], lines[b]] = [lines[b] ?? "", lines[a] ?? ""];
      return lines.join("\n");
    }
    default: {
      const file: unknown = JSON.parse(text);
      for (let change = below(3); change >= 0; change--) alter(file);
      return JSON.stringify(file);
    }
  }

  /** Walks down from the top to some depth, and changes, removes, adds or renames what is there. */
  function alter(file: unknown): void {
    let holder = file as Record<string, unknown>;
    for (let depth = below(8); depth > 0; depth--) {
      const next = holder[one(Object.keys(holder))];
      if (typeof next !== "object" || next === null || Object.keys(next).length === 0) break;
      holder = next as Record<string, unknown>;
    }
    const key = one(Object.keys(holder)) ?? "x";
    const set = (name: string, value: unknown) =>
      Object.defineProperty(holder, name, { value, enumerable: true, configurable: true, writable: true });
    const what = below(4);
    if (what === 0) set(key, structuredClone(one(values)));
    else if (what === 1) delete holder[key];
    else if (what === 2) set(Array.isArray(holder) ? String(below(3)) : one(words), structuredClone(one(values)));
    else set(Array.isArray(holder) ? String(holder.length) : `${key}x`, structuredClone(holder[key]));
  }
}

test(
  `${texts} damaged texts of a whole notebook: never a fall, never half a notebook`,
  async () => {
    const random = seededRandom(seed);
    const sound = await soundText();
    const came = new Map<string, number>();
    const count = (what: string) => came.set(what, (came.get(what) ?? 0) + 1);
    for (let n = 0; n < texts; n++) {
      const text = damaged(sound, random);
      const where = `text ${n} of seed ${seed}`;
      const notebook = await openForTest();
      const outcome = await importNotebook({ notebook, text, commit: true });
      const log = await logOf(notebook);
      if (outcome.kind === "refused") {
        count(outcome.code);
        expect([where, log.length, notebook.version()]).toEqual([where, 0, ""]);
        continue;
      }
      for (const { code } of outcome.problems) count(code);
      expect([where, outcome.committed]).toEqual([where, outcome.problems.length === 0]);
      expect([where, log.length]).toEqual([where, outcome.committed ? outcome.fresh : 0]);
      if (outcome.committed) count("whole");
      // What is sound of a damaged one can be had, and is a whole notebook again.
      const allowed = await importNotebook({ notebook, text, commit: true, allowProblems: true });
      expect([where, (await logOf(notebook)).length]).toEqual([where, outcome.fresh]);
      expect([where, allowed.kind === "read" && allowed.committed]).toEqual([where, true]);
      if (n % 10 > 0) continue;
      expect([where, await notebook.check()]).toEqual([where, []]);
      const again = await exportNotebook({ notebook });
      const other = await openForTest({ seed: 2 });
      expect(await importNotebook({ notebook: other, text: again, commit: true })).toMatchObject({ problems: [] });
      expect([where, await exportNotebook({ notebook: other })]).toEqual([where, again]);
    }
    // A run whose damages all end the same way would show nothing.
    for (const what of [
      "truncated",
      "notJson",
      "notAChange",
      "unknownField",
      "unfitValue",
      "hostileKey",
      "recordDiffers",
      "whole",
    ]) {
      expect([what, (came.get(what) ?? 0) >= texts / 500]).toEqual([what, true]);
    }
  },
  120_000 + texts * 60,
);
