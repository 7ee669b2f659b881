import { spawnSync } from "node:child_process";
import { type FitPaperInput, fitPaper, nextSheet } from "@captray/science/learn";
import fits from "../packages/science/fixtures/learn/fits.json" with { type: "json" };
import { check, type Figure, type World } from "./promise.ts";
import { time, yardstick } from "./yardstick.ts";

interface Peer {
  readonly medianMs: number;
  readonly objective: number;
  readonly z: readonly number[];
}

/** Thirty candidates for the next sheet: changes of exposure, flash and doses, with and without patches. */
const candidates = Array.from({ length: 30 }, (_, n) => ({
  name: `candidate ${n}`,
  settings: { stops: (n % 5) / 2 - 1, flashS: n % 4, log2u1: (n % 3) / 2 },
  controls: n % 2 === 0 ? [] : (["black", "bleachOnly"] as const),
}));
const scene = [1.85, 1.5, 0.9, 0.4, 0.25].map((wanted, n) => ({ area: `area ${n}`, logExposure: 0.4 * n, wanted }));

/** Learning from ten sheets of sixty patches, both optima and all that is answered of them; and ranking what to do next. */
export async function run({ root }: World): Promise<readonly Figure[]> {
  const sixty = fits.cases.find(({ name }) => name === "sixty patches");
  if (sixty === undefined) throw new Error("no campaign of sixty patches");
  const input = sixty.in as unknown as FitPaperInput;
  const peers = peersOf(root);
  const ours = time(101, () => fitPaper(input));
  const ranking = time(31, () => nextSheet({ ...input, scene, candidates }));
  const loop = time(9, yardstick);
  check(Math.abs(ours.answer.objective - sixty.rescaled.objective) < 1e-9, `objective ${ours.answer.objective}`);
  check(ranking.answer.candidates.length === candidates.length, `${ranking.answer.candidates.length} candidates`);
  const fitted = Object.values(ours.answer.parameters).map(({ fitted: { value } }) => value);
  for (const [name, { objective, z }] of Object.entries(peers ?? {})) {
    check(Math.abs(objective - ours.answer.objective) < 1e-6, `${name}: objective ${objective}`);
    for (const [index, value] of fitted.entries()) {
      const off = Math.abs(value - (z[index] ?? 0)) / (sixty.priorSd[index] ?? 1);
      check(off < 1e-3, `${name}: parameter ${index} is ${off} prior deviations off`);
    }
  }
  return [
    {
      what: "fit of 60 patches on 10 sheets: 13 parameters and 10 offsets, both optima, posterior, warnings",
      unit: "ms",
      timing: ours.timing,
      // And so many times faster than the peer, in this very run.
      promised: {
        median: Math.min(8, (peers?.analytic.medianMs ?? Infinity) / 4, (peers?.differences.medianMs ?? Infinity) / 20),
      },
      yardstickMs: loop.timing.medianMs,
      ...(peers === undefined
        ? {}
        : {
            peers: [
              { name: "scipy least_squares, analytic slopes", medianMs: peers.analytic.medianMs },
              { name: "scipy least_squares, 2-point", medianMs: peers.differences.medianMs },
            ],
          }),
      checked: `objective to 1e-9 of scipy polished by Newton; ${peers === undefined ? "scipy is absent here, and was not timed" : "the timed peers end in the same place"}`,
      limitedBy: "one print of all patches with their slopes, some hundred times",
    },
    {
      what: "ranking 30 candidates for the next sheet, the fit of 60 patches included",
      unit: "ms",
      timing: ranking.timing,
      promised: { median: 50 },
      yardstickMs: loop.timing.medianMs,
      checked: "30 ranked; bits, errors and scores of six others are held to numpy in the tests",
      limitedBy: "the fit, and some hundred expected prints on the way to the best settings",
    },
  ];
}

/** scipy on the same campaign, in its own process; undefined where there is none. */
function peersOf(root: string): { readonly analytic: Peer; readonly differences: Peer } | undefined {
  const fixtures = `${root}packages/science/fixtures/`;
  const { status, stdout } = spawnSync(
    "python3",
    [`${root}benchmarks/fitPeer.py`, `${fixtures}runners`, `${fixtures}learn/fits.json`],
    { encoding: "utf8", env: { ...process.env, OMP_NUM_THREADS: "1", OPENBLAS_NUM_THREADS: "1" } },
  );
  return status === 0 ? (JSON.parse(stdout) as { readonly analytic: Peer; readonly differences: Peer }) : undefined;
}
