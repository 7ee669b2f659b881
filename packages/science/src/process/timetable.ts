import { earliestStarts } from "./earliestStarts.ts";
import { leastInterval } from "./leastInterval.ts";
import { offeredPlan, requireLine, withoutWaiting } from "./offeredPlan.ts";
import type { WaitingTrayStep } from "./traySteps.ts";

export interface TimetableStep extends WaitingTrayStep {
  /** Its name. */
  readonly step: string;
}

export interface TimetableInput {
  readonly steps: readonly TimetableStep[];
  readonly sheets?: number;
  /** How long the hands are busy with one move. */
  readonly handS?: number;
}

/** A sheet's stay in one tray. */
export interface TrayVisit {
  /** From 1. */
  readonly sheet: number;
  readonly step: string;
  readonly inS: number;
  readonly outS: number;
}

export interface StartsAndEnd {
  readonly startsS: readonly number[];
  readonly endS: number;
}

export interface Timetable {
  readonly intervalS: number;
  readonly oneSheetS: number;
  readonly even: StartsAndEnd;
  readonly earliest: StartsAndEnd;
  readonly chosen: "even" | "earliest";
  /** Of the chosen one, by the second at which a sheet goes in. */
  readonly visits: readonly TrayVisit[];
  /** Only where some step may wait and waiting ends sooner. */
  readonly waiting?: { readonly endS: number; readonly visits: readonly TrayVisit[] };
}

/** Each as early as it fits is harder to remember: it must end so much sooner to be chosen. */
const worthRemembering = 0.95;

/**
 * Several sheets through one line of trays: evenly spaced, each as early as it fits, and with waiting where that ends sooner.
 *
 * Method   `leastInterval` and `earliestStarts`; the even spacing is chosen unless the other ends more than 5 % sooner; where steps may
 *          wait, `offeredPlan`.
 * Units    s, whole, from the first sheet's start.
 * Holds    one pair of hands; sheets that are treated alike.
 *
 * @throws {OutOfDomain} tooFew, wrongType, notPositive, negative, handTooSlow
 * @source hoist-scheduling: no-wait and time-window problems of one hoist (second hand)
 * @example timetable({ steps: [{ step: "first developer", timeS: 120 }, { step: "stop", timeS: 30 }], sheets: 2 }).even.startsS // [0, 128]
 */
export function timetable({ steps, sheets = 1, handS = 8 }: TimetableInput): Timetable {
  requireLine(steps, sheets, handS);
  const { intervalS, oneSheetS } = leastInterval({ steps, handS });
  const startsS = Array.from({ length: sheets }, (_, index) => index * intervalS);
  const even = { startsS, endS: oneSheetS + (sheets - 1) * intervalS };
  const earliest = earliestStarts({ steps, sheets, handS });
  const chosen = earliest.endS < worthRemembering * even.endS ? "earliest" : "even";
  const answer = {
    intervalS,
    oneSheetS,
    even,
    earliest,
    chosen,
    visits: visitsOf(steps, withoutWaiting(steps, (chosen === "even" ? even : earliest).startsS)),
  } as const;
  if (!steps.some(({ mayWaitUpToS = 0 }) => mayWaitUpToS > 0)) return answer;
  const offered = offeredPlan({ steps, sheets, handS });
  if (offered.endS >= Math.min(even.endS, earliest.endS)) return answer;
  return { ...answer, waiting: { endS: offered.endS, visits: visitsOf(steps, offered.movesS) } };
}

function visitsOf(steps: readonly TimetableStep[], movesS: readonly (readonly number[])[]): readonly TrayVisit[] {
  return movesS
    .flatMap((moves, sheet) =>
      steps.map(({ step }, index) => ({
        sheet: sheet + 1,
        step,
        inS: moves[index] ?? 0,
        outS: moves[index + 1] ?? 0,
      })),
    )
    .sort((one, other) => one.inS - other.inS || one.sheet - other.sheet);
}
