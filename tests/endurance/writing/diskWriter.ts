// Writes to a notebook in a folder without end, and says each change's name once it is kept. Killed by diskKill.test.ts.
import { writeSync } from "node:fs";
import { openDiskStorage } from "@captray/notebook/disk";
import { openNotebook } from "@captray/notebook/journal";

const [folder = "", device = "", id = ""] = process.argv.slice(2);
const notebook = await openNotebook({
  storage: openDiskStorage({ folder, notebookId: "winter" }),
  notebookId: "winter",
  now: Date.now,
  random: Math.random,
  device,
});
// Four hands at once, so that a kill also falls between changes written together.
await Promise.all([1, 2, 3, 4].map(write));

async function write(rating: number): Promise<never> {
  for (let count = 0; ; count++) {
    const sets = [
      { id, kind: "sheet", set: { rating, label: `hand ${rating} count ${count}` } },
      { id: notebook.newId(), kind: "sheet", set: { code: `W${count % 1000}` } },
    ] as const;
    const { name, kept } = notebook.change(sets, "");
    await kept;
    writeSync(1, `${name}\n`);
  }
}
