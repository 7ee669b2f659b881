// The page that browserKill.test.ts opens and kills. What it does stands in its address:
// ?write: without end, telling each change once it is kept · ?two: two pages on one sheet · ?read: tells what there is.
import { openBrowserStorage } from "@captray/notebook/browser";
import { type Notebook, openNotebook } from "@captray/notebook/journal";

const asked = new URLSearchParams(location.search);
const sheet = "01KDD20000BQATYARDW1NTER22";
const tell = (what: string, body: string) => fetch(`/told/${what}`, { method: "POST", body });

async function open(): Promise<Notebook> {
  return openNotebook({
    storage: await openBrowserStorage({ notebookId: "winter" }),
    notebookId: "winter",
    now: Date.now,
    random: Math.random,
    device: "boatyard",
  });
}

async function write(): Promise<void> {
  const notebook = await open();
  for (let count = 0; ; count++) {
    const set = { label: `count ${count}`, rating: 1 + (count % 5) };
    const { name, kept } = notebook.change([{ id: sheet, kind: "sheet", set }], "");
    await kept;
    await tell("kept", name);
  }
}

/** Fifty mishaps from each of two pages at once, the second in a frame. */
async function two(): Promise<void> {
  const notebook = await open();
  if (!asked.has("frame")) {
    const frame = document.createElement("iframe");
    const ready = new Promise((done) => window.addEventListener("message", done, { once: true }));
    frame.src = "?two&frame";
    document.body.append(frame);
    await ready;
  } else window.parent.postMessage("ready", "*");
  const what = asked.has("frame") ? "knocked" : "lightLeak";
  const kept: Promise<void>[] = [];
  for (let count = 0; count < 50; count++) {
    kept.push(
      notebook.change([{ id: sheet, kind: "sheet", set: { [`mishaps.${notebook.newId()}.what`]: what } }], "").kept,
    );
    if (count % 7 === 0) await kept.at(-1);
  }
  await Promise.all(kept);
  // Each page hears all of the other's in the end.
  const seen = () => notebook.cards().find(({ id }) => id === sheet)?.mishaps.length ?? 0;
  for (let turn = 0; turn < 500 && seen() < 100; turn++) await new Promise((next) => setTimeout(next, 10));
  await tell("seen", String(seen()));
}

async function read(): Promise<void> {
  const notebook = await open();
  const names: string[] = [];
  for await (const { h } of notebook.log()) names.push(h);
  const record = await notebook.load(sheet);
  const problems = await notebook.check();
  await tell("read", JSON.stringify({ names, record, cards: notebook.cards(), problems }));
}

await (asked.has("write") ? write() : asked.has("two") ? two() : read());
