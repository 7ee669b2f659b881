import { mkdtempSync, rmSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium, type Page } from "playwright-core";
import { chromiumFlags, needChromium } from "../scripts/need.mjs";
import type { Bench } from "./notebookPage.ts";
import { pageScript } from "./pageScript.ts";
import { check, type Figure, type World } from "./promise.ts";
import { summarise } from "./yardstick.ts";

const sheets = Number(process.env.CAPTRAY_SHEETS ?? 10_000);
const runs = 9;
const edits = 200;

/**
 * The promise: a notebook of ten thousand sheets is there at once.
 *
 * A list of all within 80 ms, every record within 400 ms, one change on the disk within 10 ms (95th percentile), in
 * Chromium with IndexedDB. Each run opens a page of its own; the answers are checked.
 */
export async function run({ root }: World): Promise<readonly Figure[]> {
  const profile = mkdtempSync(join(tmpdir(), "captray-benchmark-"));
  const script = await pageScript({ root, entry: "notebookPage" });
  const server = createServer((request, response) => {
    const asked = request.url === "/page.js";
    response.setHeader("content-type", asked ? "text/javascript" : "text/html");
    response.end(
      asked ? script : '<!doctype html><title>benchmark</title><script type="module" src="/page.js"></script>',
    );
  });
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: needChromium(),
    args: chromiumFlags,
  });
  context.setDefaultTimeout(600_000);
  try {
    const onPage = async <T>(work: (page: Page) => Promise<T>): Promise<T> => {
      const page = await context.newPage();
      await page.goto(address);
      await page.waitForFunction(() => "bench" in globalThis);
      try {
        return await work(page);
      } finally {
        await page.close();
      }
    };
    const characters = await onPage((page) => page.evaluate(`bench.fill(${sheets})`) as ReturnType<Bench["fill"]>);
    const ask = <K extends "list" | "all">(what: K) =>
      onPage((page) => page.evaluate(`bench.${what}()`) as Promise<Awaited<ReturnType<Bench[K]>>>);
    const yard = summarise(
      await onPage((page) => page.evaluate("Array.from({ length: 12 }, () => bench.yardstick())") as Promise<number[]>),
    );

    const lists: number[] = [];
    const alls: Awaited<ReturnType<Bench["all"]>>[] = [];
    for (let n = 0; n < runs + 1; n++) {
      const list = await ask("list");
      check(list.sheets === sheets && list.newest === `W${sheets - 1}`, "the list of sheets");
      check(list.hulls === Math.floor((sheets + 92) / 100), "the words of the list");
      lists.push(list.ms);
      const all = await ask("all");
      check(all.sheets === sheets && all.ratings === ratingsOf(sheets), "the records");
      alls.push(all);
    }
    const edited = await onPage((page) => page.evaluate(`bench.edit(${edits})`) as ReturnType<Bench["edit"]>);
    check(edited.label === `edit ${edits - 1}`, "the last change");

    const about = `${sheets} sheets of ${(characters / 1000).toFixed(1)} kB`;
    // The first run pays for a cold cache.
    const list = summarise(lists.slice(1));
    const all = summarise(alls.slice(1).map(({ ms }) => ms));
    const read = summarise(alls.slice(1).map(({ readMs }) => readMs));
    const edit = summarise(edited.ms);
    const more = { unit: "ms", yardstickMs: yard.medianMs } as const;
    return [
      {
        ...more,
        what: `list of ${about}, from opening the database to the last card`,
        timing: list,
        promised: { median: 80 },
        checked: "count, newest, and how many hold a word",
        limitedBy: "reading the cards from IndexedDB and their JSON",
      },
      {
        ...more,
        what: `every record of ${about}`,
        timing: all,
        promised: { median: 400 },
        checked: "count, and the sum of a field",
        limitedBy: `IndexedDB, ${read.medianMs.toFixed(0)} ms of it; the rest reads JSON and checks every field`,
      },
      {
        ...more,
        what: "one change durable: log, row and card in one strict transaction",
        timing: edit,
        promised: { p95: 10 },
        checked: "the last change, after opening anew",
        limitedBy: "the disk, which is waited for",
      },
    ];
  } finally {
    await context.close();
    server.close();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
}

function ratingsOf(count: number): number {
  let sum = 0;
  for (let n = 0; n < count; n++) sum += 1 + (n % 5);
  return sum;
}
