import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { cpus, loadavg, release, type as system, tmpdir, totalmem } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { serve } from "../apps/server/src/serving/index.ts";
import { run as alignPrints } from "./alignPrints.ts";
import { run as cueJitter } from "./cueJitter.ts";
import { run as expectedPrint } from "./expectedPrint.ts";
import { run as firstLoad } from "./firstLoad.ts";
import { run as fitSixtyPatches } from "./fitSixtyPatches.ts";
import { run as inputToLedger } from "./inputToLedger.ts";
import { run as inputToPaint } from "./inputToPaint.ts";
import { run as notebookInBrowser } from "./notebookInBrowser.ts";
import { run as offlineStart } from "./offlineStart.ts";
import { type Figure, keeps, type World } from "./promise.ts";
import { run as scans } from "./scans.ts";
import { run as slideToPaint } from "./slideToPaint.ts";
import { run as sunPosition } from "./sunPosition.ts";
import { run as terminal } from "./terminal.ts";
import { run as timetable } from "./timetable.ts";

const benches: Readonly<Record<string, (world: World) => Promise<readonly Figure[]>>> = {
  inputToLedger,
  expectedPrint,
  fitSixtyPatches,
  inputToPaint,
  slideToPaint,
  firstLoad,
  offlineStart,
  notebookInBrowser,
  terminal,
  sunPosition,
  timetable,
  cueJitter,
  scans,
  alignPrints,
};

export interface MainInput {
  readonly root: string;
  readonly app: string;
  readonly chromiumPath: string;
  readonly chromiumFlags: readonly string[];
  /** Only these, by the names of their files; all of them where none is named. Results are written down only by a whole run. */
  readonly only: readonly string[];
}

/** Runs the promises one after the other, prints each figure as it comes, and writes RESULTS.md. */
export async function main({ root, app, chromiumPath, chromiumFlags, only }: MainInput): Promise<void> {
  const served = await serve({ folder: app, port: 0 });
  const browsers: { close(): Promise<void> }[] = [];
  const world: World = {
    root,
    app,
    address: served.address,
    newBrowser: async (...flags) => {
      const browser = await chromium.launch({ executablePath: chromiumPath, args: [...chromiumFlags, ...flags] });
      browsers.push(browser);
      return browser;
    },
    newProfile: async (options) => {
      const folder = mkdtempSync(join(tmpdir(), "captray-profile-"));
      const launch = { executablePath: chromiumPath, args: [...chromiumFlags] };
      const context = await chromium.launchPersistentContext(folder, { ...launch, ...options });
      browsers.push({
        close: async () => {
          await context.close();
          rmSync(folder, { recursive: true, force: true });
        },
      });
      return context;
    },
  };
  const loadBefore = loadavg()[0] ?? 0;
  const figures: Figure[] = [];
  const wanted = only.length === 0 ? Object.keys(benches) : only;
  try {
    for (const name of wanted) {
      const bench = benches[name];
      if (bench === undefined) throw new Error(`There is no promise “${name}”: ${Object.keys(benches).join(", ")}.`);
      for (const figure of await bench(world)) {
        figures.push(figure);
        console.log(lineOf(figure));
      }
    }
  } finally {
    for (const browser of browsers) await browser.close();
    await served.close();
  }
  const probe = await chromium.launch({ executablePath: chromiumPath, args: [...chromiumFlags] });
  const machine = machineWords({ chromiumVersion: probe.version(), loadBefore });
  await probe.close();
  console.log(machine);
  if (only.length === 0) writeFileSync(`${root}benchmarks/RESULTS.md`, resultsPage({ figures, machine }));
  const missed = figures.filter((figure) => keeps(figure) === false);
  if (missed.length > 0) console.log(`${missed.length} not kept.`);
}

function lineOf(figure: Figure): string {
  const { what, unit, timing, yardstickMs, peers = [] } = figure;
  const kept = keeps(figure);
  return [
    `${kept === undefined ? "no promise" : kept ? "kept" : "NOT KEPT"}: ${what}`,
    `median ${number(timing.medianMs)} ${unit}, p95 ${number(timing.p95Ms)}, ${timing.runs} runs${promiseWords(figure)}`,
    ...(yardstickMs === undefined
      ? []
      : [`${number(timing.medianMs / yardstickMs)} × yardstick ${number(yardstickMs)} ms`]),
    ...peers.map(({ name, medianMs }) => `${name} ${number(medianMs)} ms`),
  ].join(" · ");
}

function promiseWords({ promised: { median, p95 } }: Figure): string {
  const words = [
    ...(median === undefined ? [] : [`median at most ${number(median)}`]),
    ...(p95 === undefined ? [] : [`p95 at most ${number(p95)}`]),
  ];
  return words.length === 0 ? "" : `, promised ${words.join(", ")}`;
}

function resultsPage({ figures, machine }: { readonly figures: readonly Figure[]; readonly machine: string }): string {
  const rows = figures.map((figure) => {
    const { what, unit, timing, promised, yardstickMs, peers, checked } = figure;
    const kept = keeps(figure);
    const limits = [promised.median, promised.p95].map((limit, i) =>
      limit === undefined ? [] : [`${i === 0 ? "median" : "p95"} ${number(limit)}`],
    );
    return [
      what,
      `${number(timing.medianMs)} ${unit}`,
      timing.runs === 1 ? "" : number(timing.p95Ms),
      timing.runs,
      limits.flat().join(", ") || "none",
      kept === undefined ? "" : kept ? "yes" : "**no**",
      yardstickMs === undefined ? "" : number(timing.medianMs / yardstickMs),
      peers
        ?.map(
          ({ name, medianMs }) => `${name} ${number(medianMs)} ms (ours ÷ it: ${number(timing.medianMs / medianMs)})`,
        )
        .join("; ") ?? "none",
      checked,
    ].join(" | ");
  });
  const missed = figures.filter((figure) => keeps(figure) === false);
  return `# Results

The last whole run of \`npm run bench\`, ${new Date().toISOString().slice(0, 10)}. ${machine}

What counts is the figure ÷ the yardstick (a fixed loop of arithmetic, timed beside it in the same engine) and the ratio to
a peer; milliseconds are those of this machine. Medians; p95 is the 95th percentile. Every answer is checked, and a
wrong one stops the run.

| what | median | p95 | runs | promised, at most | kept | ÷ yardstick | peer in the same run | answer checked |
| --- | --- | --- | --- | --- | --- | --- | --- | --- |
${rows.map((row) => `| ${row} |`).join("\n")}
${
  missed.length === 0
    ? ""
    : `\n## Not kept\n\n${missed.map(({ what, limitedBy }) => `- ${what}: limited by ${limitedBy}.`).join("\n")}\n`
}`;
}

function machineWords(facts: { readonly chromiumVersion: string; readonly loadBefore: number }): string {
  const [cpu] = cpus();
  return [
    `Machine: ${cpus().length} × ${cpu?.model.trim() ?? "unknown processor"}`,
    `${Math.round(totalmem() / 2 ** 30)} GB`,
    `${system()} ${release().split("-")[0]}`,
    `Node ${process.versions.node}`,
    `Chromium ${facts.chromiumVersion}`,
    `load ${facts.loadBefore.toFixed(1)} at the start${facts.loadBefore > 2 ? " (a busy machine: these times are too long)" : ""}.`,
  ].join(", ");
}

function number(value: number): string {
  return String(Number(value.toPrecision(3)));
}
