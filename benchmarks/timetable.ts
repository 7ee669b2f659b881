import { offeredPlan, timetable } from "@captray/science/process";
import { check, type Figure } from "./promise.ts";
import { time, yardstick } from "./yardstick.ts";

/** A direct positive of nine steps: seconds, places, and how long a sheet may wait. */
const steps = [
  { step: "first developer", timeS: 120 },
  { step: "stop", timeS: 30 },
  { step: "rinse", timeS: 60, sheets: 2, mayWaitUpToS: 60 },
  { step: "bleach", timeS: 90 },
  { step: "second rinse", timeS: 120, sheets: 2 },
  { step: "clear", timeS: 60, sheets: 2 },
  { step: "third rinse", timeS: 60, mayWaitUpToS: 60 },
  { step: "second developer", timeS: 120, sheets: 2 },
  { step: "wash", timeS: 300, sheets: 4, mayWaitUpToS: 300 },
];

/** Twenty sheets through nine trays, and four in the best order there is. */
export async function run(): Promise<readonly Figure[]> {
  const twenty = time(21, () => timetable({ steps, sheets: 20 }));
  const four = time(21, () => offeredPlan({ steps, sheets: 4 }));
  const loop = time(9, yardstick);
  const { waiting, even, earliest } = twenty.answer;
  check(waiting !== undefined && waiting.endS < Math.min(even.endS, earliest.endS), "waiting ends no sooner");
  for (const [index, { step, sheets: places = 1 }] of steps.entries()) {
    const stays = (waiting?.visits ?? []).filter((visit) => visit.step === step);
    for (const { inS } of stays) {
      const atOnce = stays.filter((other) => other.inS <= inS && inS < other.outS).length;
      check(atOnce <= places, `tray ${index} holds ${atOnce}`);
    }
  }
  check(four.answer.proven, "four sheets are not the best there is");
  return [
    {
      what: "timetable of 20 sheets through 9 trays",
      unit: "ms",
      timing: twenty.timing,
      promised: { median: 20 },
      yardstickMs: loop.timing.medianMs,
      checked: "no tray holds more than it has places for; ends before even spacing",
      limitedBy: "the search for waits, sheet by sheet",
    },
    {
      what: "best plan of 4 sheets through 9 trays",
      unit: "ms",
      timing: four.timing,
      promised: {},
      yardstickMs: loop.timing.medianMs,
      checked: "every order of moves was ruled out",
      limitedBy: "the number of orders",
    },
  ];
}
