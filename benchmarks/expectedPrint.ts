import { expectedPrintOf, papersAskedOf, planOf } from "@captray/notebook/answers";
import { drawPapers, expectPrint } from "@captray/science/tone";
import { areasOf, dial, idNumber, recordOf, someKit } from "../packages/notebook/src/answers/testing.ts";
import { check, type Figure } from "./promise.ts";
import { time, yardstick } from "./yardstick.ts";

const AREAS = 12;

/**
 * The expected print: 400 papers drawn once, in a worker; and from them, on the page's own thread and for every step of a slid cap
 * time or flash, twelve areas with their sampled ends, rings, curve, advice and verdicts.
 */
export async function run(): Promise<readonly Figure[]> {
  const kit = kitOfTwelve();
  const plan = planOf(kit);
  if (plan.kind !== "plan") throw new Error(`No plan: ${JSON.stringify(plan)}`);
  const { input } = papersAskedOf({ kit, plan });

  let seed = 1;
  const before = time(9, yardstick);
  const drawing = time(60, () => drawPapers({ ...input, seed: seed++ })).timing;
  const papers = drawPapers(input);
  let turn = 0;
  const once = () => {
    turn += 1;
    // Another time and another flash at each step, so that nothing of the last one can answer.
    return expectedPrintOf({ kit, plan, papers, choice: { timeS: 4 + (turn % 97) / 4, flashS: (turn % 40) / 5 } });
  };
  const sliding = time(2000, once).timing;
  const after = time(9, yardstick);
  const yardstickMs = Math.min(before.timing.medianMs, after.timing.medianMs);

  const print = once();
  if (print.kind !== "print") throw new Error(`No print: ${JSON.stringify(print)}`);
  const areas = plan.answer.areas.map(({ area, logExposure }) => ({
    area,
    logExposure: logExposure + print.time.slidStops * Math.log10(2),
    sdStops: input.areaSdStops,
  }));
  const { areaSdStops: _, bandLogExposure: __, meanByMid: ___, ...belief } = input;
  const curve = { ...belief.curve, x50: { value: papers.basis.curve.x50, sd: 0.5 * Math.log10(2) } };
  const untabled = expectPrint({ ...belief, curve, areas, flashS: print.flash.countedS });
  check(print.areas.length === AREAS && print.curve.length >= 73, "twelve areas and the curve");
  for (const [index, { density, interval }] of untabled.areas.entries()) {
    const ours = print.areas[index];
    check(Math.abs((ours?.density.value ?? 0) - density.value) < 1e-9, "the density of the untabled print");
    check(Math.abs((ours?.interval.low ?? 0) - interval.low) < 2e-4, "the lower end of the untabled print");
    check(Math.abs((ours?.interval.high ?? 0) - interval.high) < 2e-4, "the upper end of the untabled print");
  }
  return [
    {
      what: "drawing 400 papers with their curve's band (once for a paper and process, in the worker)",
      unit: "ms",
      timing: drawing,
      promised: { median: 20 },
      yardstickMs,
      checked: "the ends of the print from them, against papers without a table",
      limitedBy: "96 densities of each paper, and sorting 400 at each of the band's 161 points",
    },
    {
      what: "input to expected print from drawn papers, 12 areas and the curve",
      unit: "ms",
      timing: sliding,
      promised: { median: 1 },
      yardstickMs,
      checked: "densities to 1e-9 and ends of intervals to 2e-4, against papers without a table",
      limitedBy: "400 papers an area, and sorting them",
    },
  ];
}

function kitOfTwelve() {
  const readings = Array.from(
    { length: AREAS },
    (_, index) => [`area ${index + 1}`, dial(2 ** (-4 - 3.5 + (index * 7) / (AREAS - 1)))] as const,
  );
  return {
    ...someKit({ scene: { ...areasOf(readings), place: { areaId: idNumber(105), stops: 0 } } }),
    flashLamp: recordOf("flashLamp", idNumber(9), { rate: { valueLx: 0.25, sdLn: 0.08 } }),
  };
}
