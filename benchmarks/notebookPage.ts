/** What the notebook's benchmark does inside the browser; `notebookInBrowser.ts` builds it, serves it and asks it. */

import { type Notebook, openNotebook, type RecordSet } from "../packages/notebook/src/journal/index.ts";
import { readRow, recordOfRow } from "../packages/notebook/src/journal/row.ts";
import type { Json } from "../packages/notebook/src/records/index.ts";
import { openBrowserStorage } from "../packages/notebook/src/storage/browser/index.ts";
import { yardstick } from "./yardstick.ts";

const notebookId = "benchmark";
const ledgerLines = [
  "reading",
  "place",
  "aperture",
  "extension",
  "exposureIndex",
  "transmission",
  "filters",
  "colourOfLight",
  "longExposure",
  "hand",
];

function open(): Promise<Notebook> {
  return openBrowserStorage({ notebookId }).then((storage) =>
    openNotebook({ storage, notebookId, now: Date.now, random: Math.random, device: "boatyard" }),
  );
}

/** A sheet as it is after its measuring: every date, a frozen ledger, two openings; 2.3 kB as JSON. */
function sheetSet(notebook: Notebook, n: number, links: Readonly<Record<string, Json>>): RecordSet {
  const at = (hour: number) => ({ at: 1_764_500_000_000 + n * 600_000 + hour * 3_600_000, offsetMin: 60 });
  const opening = (plannedS: number, value: number) => ({
    plannedS,
    givenS: { value, sd: 0.43 },
    manner: "ticks",
    startedAt: at(3),
  });
  return {
    id: notebook.newId(),
    kind: "sheet",
    set: {
      ...links,
      code: `W${n}`,
      result: "positive",
      planned: {
        timeS: 12.642893586005837,
        ledger: ledgerLines.map((line, place) => ({
          line,
          stops: { value: place / 7 - n / 1e4, sd: place / 70 },
          ground: `${line} of sheet ${n}, as it was that day`,
        })),
        frozenAt: at(2),
      },
      flashPlanned: { timeS: 4, when: "beforeLoading" },
      loadedAt: at(0),
      flashedAt: at(1),
      exposedAt: at(3),
      inProcessAt: at(9),
      dryingAt: at(10),
      measuredAt: at(30),
      rating: 1 + (n % 5),
      label: n % 100 === 7 ? "hull in side light" : "rope close",
      notes: `The slip was white, the water grey, sheet ${n}. `.repeat(6),
      createdAt: at(0),
      [`openings.${notebook.newId()}.opening`]: opening(12.6, 8.3),
      [`openings.${notebook.newId()}.opening`]: opening(4.3, 4.4),
      [`mishaps.${notebook.newId()}.what`]: "knocked",
    },
  };
}

const bench = {
  /** Writes so many sheets; gives the JSON characters of one. */
  async fill(sheets: number): Promise<number> {
    const notebook = await open();
    const links = { paperBoxId: notebook.newId(), lensId: notebook.newId(), cameraId: notebook.newId() };
    await notebook.change(
      [
        { id: links.paperBoxId, kind: "paperBox", set: { name: "box C" } },
        { id: links.lensId, kind: "lens", set: { name: "210 mm" } },
        { id: links.cameraId, kind: "camera", set: { name: "red bellows" } },
      ],
      "shelf",
    ).kept;
    let characters = 0;
    for (let from = 0; from < sheets; from += 100) {
      const sets = Array.from({ length: Math.min(100, sheets - from) }, (_, place) =>
        sheetSet(notebook, from + place, links),
      );
      characters = JSON.stringify(sets[0]?.set).length;
      await notebook.change(sets, "sheets").kept;
    }
    await notebook.close();
    return characters;
  },

  /** From nothing to the list of all sheets. */
  async list(): Promise<{ ms: number; sheets: number; newest: string; hulls: number }> {
    const start = performance.now();
    const notebook = await open();
    const cards = notebook.cards();
    const ms = performance.now() - start;
    const hulls = cards.filter(({ searchText }) => searchText.includes("hull in side light")).length;
    await notebook.close();
    return { ms, sheets: cards.length, newest: cards[0]?.code ?? "", hulls };
  },

  /** Every sheet's record, read from the database and checked field by field; `readMs` is the database's share. */
  async all(): Promise<{ ms: number; readMs: number; sheets: number; ratings: number }> {
    const storage = await openBrowserStorage({ notebookId });
    const start = performance.now();
    const rows = await storage.transact("read", (transaction) => transaction.all("row", "sheet/"));
    const readMs = performance.now() - start;
    const records = rows.map(([key, text]) => {
      const row = readRow(key, text);
      return row && recordOfRow(row);
    });
    const ms = performance.now() - start;
    await storage.close();
    const ratings = records.reduce((sum, record) => sum + (record?.kind === "sheet" ? (record.rating ?? 0) : 0), 0);
    return { ms, readMs, sheets: records.length, ratings };
  },

  /** So many changes of one sheet, each waited for until it is on the disk. */
  async edit(times: number): Promise<{ ms: number[]; label: string }> {
    const notebook = await open();
    const cards = notebook.cards();
    const ms: number[] = [];
    const id = cards[Math.floor(cards.length / 2)]?.id ?? "";
    await notebook.load(id);
    for (let n = 0; n < times; n++) {
      const start = performance.now();
      await notebook.change([{ id, kind: "sheet", set: { label: `edit ${n}` } }], "label").kept;
      ms.push(performance.now() - start);
    }
    await notebook.close();
    const again = await open();
    const sheet = await again.load(id);
    await again.close();
    return { ms, label: sheet?.kind === "sheet" ? (sheet.label ?? "") : "" };
  },

  yardstick(): number {
    const start = performance.now();
    yardstick();
    return performance.now() - start;
  },
};

export type Bench = typeof bench;
Object.assign(globalThis, { bench });
