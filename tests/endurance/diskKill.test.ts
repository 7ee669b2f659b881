import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openDiskStorage } from "@captray/notebook/disk";
import { openNotebook } from "@captray/notebook/journal";
import { expect, test } from "vitest";
import { buildWriter } from "./writing/buildWriter.ts";
import { howManyKills } from "./writing/howManyKills.ts";

const sheet = "01KDD20000BQATYARDW1NTER22";
const kills = howManyKills(10);

test(
  `disk: ${kills} writers killed with -9 while writing, every acknowledged change is found`,
  async () => {
    const writer = join(
      buildWriter({ writer: new URL("./writing/diskWriter.ts", import.meta.url), forNode: true }),
      "diskWriter.js",
    );
    const folder = mkdtempSync(join(tmpdir(), "captray-kill-"));
    const acknowledged: string[] = [];
    try {
      for (let kill = 0; kill < kills; kill++) {
        // Killed at another moment each time: after 3, 8, 13 … acknowledged changes.
        const names = await writeAndKill([writer, folder, `device0${kill % 10}`, sheet], 3 + 5 * (kill % 10));
        expect(names.length).toBeGreaterThan(0);
        acknowledged.push(...names);
        await findAll(folder, acknowledged);
      }
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  },
  60_000 + kills * 8000,
);

/** What the writer said before it died, whole lines only. */
function writeAndKill(words: readonly string[], after: number): Promise<string[]> {
  return new Promise((done, failed) => {
    const child = spawn(process.execPath, words, { stdio: ["ignore", "pipe", "inherit"] });
    let said = "";
    const lines = () => said.split("\n").slice(0, -1);
    child.stdout.setEncoding("utf8").on("data", (text: string) => {
      said += text;
      if (lines().length >= after) child.kill("SIGKILL");
    });
    child.on("error", failed);
    child.on("close", (code, signal) => {
      if (signal === "SIGKILL") done(lines());
      else failed(new Error(`The writer ended by itself: ${code}.`));
    });
  });
}

async function findAll(folder: string, acknowledged: readonly string[]): Promise<void> {
  const notebook = await openNotebook({
    storage: openDiskStorage({ folder, notebookId: "winter" }),
    notebookId: "winter",
    now: Date.now,
    random: Math.random,
    device: "boatyard",
  });
  const labels = new Map<string, unknown>();
  let sheets = 0;
  for await (const { h, ops } of notebook.log()) {
    labels.set(h, ops[0]?.[2].label);
    sheets += ops.length - 1;
  }
  expect(acknowledged.filter((name) => !labels.has(name))).toEqual([]);
  // Rows and cards agree with the log: the newest change's value stands, and every sheet has its card.
  const newest = [...labels.keys()].sort().at(-1) ?? "";
  expect(await notebook.load(sheet)).toMatchObject({ label: labels.get(newest) });
  expect(notebook.cards()).toHaveLength(sheets + 1);
  expect(await notebook.check()).toEqual([]);
  await notebook.close();
}
