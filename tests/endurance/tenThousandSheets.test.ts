import { expect, test } from "vitest";
import { cardsMatching } from "../../apps/web/src/kit/notebook/cardsMatching.ts";
import { exportNotebook, importNotebook } from "../../packages/notebook/src/formats/index.ts";
import type { RecordSet } from "../../packages/notebook/src/journal/index.ts";
import { openForTest } from "../../packages/notebook/src/journal/testing.ts";
import type { Sheet } from "../../packages/notebook/src/records/index.ts";
import { newMemoryBase } from "../../packages/notebook/src/storage/index.ts";

const sheets = Number(process.env.CAPTRAY_SHEETS ?? 10_000);

test(
  `${sheets} sheets are listed, found, changed, opened again and taken out`,
  async () => {
    const base = newMemoryBase();
    const notebook = await openForTest({ base });
    const boxes = ["box C", "box D", "last winter's box"].map((name) => ({ id: notebook.newId(), name }));
    const lens = notebook.newId();
    await notebook.change(
      [
        ...boxes.map(({ id, name }): RecordSet => ({ id, kind: "paperBox", set: { name } })),
        { id: lens, kind: "lens", set: { name: "brass 210" } },
      ],
      "shelf",
    ).kept;
    const ids: string[] = [];
    for (let from = 0; from < sheets; from += 500) {
      const sets = Array.from({ length: Math.min(500, sheets - from) }, (_, place): RecordSet => {
        const n = from + place;
        const id = notebook.newId();
        ids.push(id);
        return {
          id,
          kind: "sheet",
          set: {
            code: `W${n}`,
            paperBoxId: boxes[n % 3]?.id ?? "",
            lensId: lens,
            exposedAt: { at: 1_764_500_000_000 + n * 60_000, offsetMin: 60 },
            rating: 1 + (n % 5),
            label: n % 100 === 7 ? "hull in side light" : "rope",
            [`openings.${notebook.newId()}.opening`]: {
              plannedS: 12.6,
              givenS: { value: 13, sd: 0.4 },
              manner: "ticks",
            },
          },
        };
      });
      await notebook.change(sets, "sheets").kept;
    }

    const cards = notebook.cards();
    expect(cards).toHaveLength(sheets);
    expect([cards[0]?.code, cards.at(-1)?.code]).toEqual([`W${sheets - 1}`, "W0"]);
    expect(cards.every(({ id }, place) => id === ids[sheets - 1 - place])).toBe(true);
    expect(cards.every(({ givenS, state }) => givenS === 13 && state === "exposed")).toBe(true);

    const hulls = Array.from({ length: sheets }, (_, n) => n).filter((n) => n % 100 === 7);
    const found = (words: string) => cardsMatching({ cards: notebook.cards(), words }).map(({ code }) => code);
    expect(found("HULL side")).toEqual(hulls.map((n) => `W${n}`).reverse());
    expect(found("hull winter brass")).toEqual(
      hulls
        .filter((n) => n % 3 === 2)
        .map((n) => `W${n}`)
        .reverse(),
    );
    expect(found("no such words")).toEqual([]);

    // One that lies far back, and is no longer in memory.
    const far = ids[7] ?? "";
    await notebook.load(far);
    await notebook.change([{ id: far, kind: "sheet", set: { label: "the one looked for" } }], "label").kept;
    expect(found("looked for")).toEqual(["W7"]);
    const changed = notebook.cards().filter((card, place) => card !== cards[place]);
    expect(changed.map(({ code }) => code)).toEqual(["W7"]);

    await notebook.change([{ id: boxes[1]?.id ?? "", kind: "paperBox", set: { name: "box with the torn lid" } }], "")
      .kept;
    expect(found("torn lid")).toHaveLength(
      Array.from({ length: sheets }, (_, n) => n).filter((n) => n % 3 === 1).length,
    );

    const listed = notebook.cards();
    await notebook.close();
    const again = await openForTest({ base, seed: 2 });
    expect(again.cards()).toEqual(listed);
    expect((await again.load(far)) as Sheet).toMatchObject({ code: "W7", label: "the one looked for" });

    const text = await exportNotebook({ notebook: again });
    const other = await openForTest({ seed: 3 });
    expect(await importNotebook({ notebook: other, text, commit: true })).toMatchObject({
      committed: true,
      records: { sheet: sheets, paperBox: 3, lens: 1 },
      problems: [],
    });
    expect(other.cards()).toEqual(again.cards());
    expect((await exportNotebook({ notebook: other })) === text).toBe(true);
  },
  120_000 + sheets * 10,
);
