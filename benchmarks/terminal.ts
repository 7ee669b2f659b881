import { spawnSync } from "node:child_process";
import { rmSync } from "node:fs";
import { check, type Figure, type World } from "./promise.ts";
import { time, yardstick } from "./yardstick.ts";

/** The terminal as it is called: started anew each time, from the call to the last byte of the answer. */
export async function run({ root }: World): Promise<readonly Figure[]> {
  const out = `${root}node_modules/.cache/captray-bench-terminal`;
  const build = () =>
    start(root, "", `${root}node_modules/vite/bin/vite.js`, "build", "--config", "apps/captray/vite.config.ts", [
      ...["--logLevel", "warn", "--outDir", out, "--emptyOutDir"],
    ]);
  const loop = time(9, yardstick);
  const built = time(9, build);
  const captray = (input: string, ...words: string[]) => start(root, input, `${out}/captray.js`, ...words);

  const extensions = Array.from({ length: 1000 }, (_, n) => 210 + n / 4);
  const lines = extensions.map((extensionMm, id) =>
    JSON.stringify({ id, name: "bellowsFactor", in: { focalLengthMm: 210, extensionMm } }),
  );
  const batch = time(9, () => captray(`${lines.join("\n")}\n`, "formula", "--batch"));
  const answers = batch.answer.trimEnd().split("\n");
  check(answers.length === 1000, `${answers.length} lines for 1000`);
  for (const [n, line] of answers.entries()) {
    const { id, out: factor } = JSON.parse(line) as { id: number; out: number };
    const byHand = ((extensions[n] ?? Number.NaN) / 210) ** 2;
    check(id === n && Math.abs(factor / byHand - 1) < 1e-12, `line ${n}: ${line}`);
  }

  const reading = {
    lens: { focalLengthMm: 240, fNumber: "f/11" },
    focus: { extensionMm: 300 },
    paper: { exposureIndex: 1.5 },
    readings: [{ area: "hull", timeS: "1/15", fNumber: "f/8", iso: 100 }],
  };
  const plan = time(21, () => captray(JSON.stringify(reading), "plan"));
  const { timeS } = JSON.parse(plan.answer) as { timeS: number };
  // 1/16 s · (2^3.5/8)² · (300/240)² · 100/1.5, as the dial and the mark mean it.
  check(Math.abs(timeS / 13.020_833_333 - 1) < 1e-8, `the plan says ${timeS} s`);
  const empty = time(21, () => start(root, "", "-e", "0"));
  rmSync(out, { recursive: true, force: true });

  const more = { unit: "ms", yardstickMs: loop.timing.medianMs } as const;
  return [
    {
      ...more,
      what: "`captray formula --batch`, 1000 formulas, start and end included",
      timing: batch.timing,
      promised: { median: 3000 },
      peers: [{ name: "node that does nothing", medianMs: empty.timing.medianMs }],
      checked: "each of the 1000 answers, by hand",
      limitedBy: "starting node and reading the program",
    },
    {
      ...more,
      what: "`captray plan`, one reading, from the start to the answer",
      timing: plan.timing,
      promised: {},
      peers: [{ name: "node that does nothing", medianMs: empty.timing.medianMs }],
      checked: "the time, by hand",
      limitedBy: "starting node and reading the program",
    },
    {
      ...more,
      what: "`build:terminal`",
      timing: built.timing,
      promised: { median: 10_000 },
      checked: "the built program gave the answers above",
      limitedBy: "starting the builder",
    },
  ];
}

function start(root: string, input: string, ...words: readonly (string | readonly string[])[]): string {
  const { status, stdout, stderr } = spawnSync(process.execPath, words.flat(), { cwd: root, encoding: "utf8", input });
  if (status !== 0) throw new Error(stderr);
  return stdout;
}
