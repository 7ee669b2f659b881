import { requireInteger, requirePositive } from "../errors/require.ts";
import { clashesOf, movesOf, placesOf, requireSteps, spanAt, type TrayStep } from "./traySteps.ts";

export interface EarliestStartsInput {
  readonly steps: readonly TrayStep[];
  readonly handS: number;
  readonly sheets: number;
}

export interface EarliestStarts {
  readonly startsS: readonly number[];
  /** When the last sheet has left the last tray. */
  readonly endS: number;
}

/**
 * When each sheet goes into the first tray, if each starts as early as those before it allow.
 *
 * Method   sheet after sheet at the first whole second at which every tray has a place for it and the hand is never wanted twice within h.
 * Units    s, whole, from the first sheet's start.
 * Holds    without waiting anywhere. It is not always the earliest end: a later start of one may let the others follow sooner.
 *
 * @throws {OutOfDomain} tooFew, wrongType, notPositive, negative
 * @source hoist-scheduling: fixed times, moves of one hand (second hand)
 * @example earliestStarts({ steps: [{ timeS: 120 }, { timeS: 30 }, { timeS: 60 }, { timeS: 300, sheets: 3 }, { timeS: 60 }, { timeS: 90 }], handS: 8, sheets: 4 }) // {"startsS": [0, 128, 256, 398], "endS": 1058}
 */
export function earliestStarts({ steps, handS, sheets }: EarliestStartsInput): EarliestStarts {
  requireSteps(steps, handS);
  requireInteger({ sheets });
  requirePositive({ sheets });
  const clashes = clashesOf(steps, handS);
  const places = placesOf(steps);
  const oneSheetS = movesOf(steps).at(-1) ?? 0;
  const startsS = [0];
  // Sheets that are long through no longer matter to the next one.
  let nearest = 0;
  while (startsS.length < sheets) {
    const bySpace = steps.map(({ timeS }, index) => {
      const inItsPlace = startsS[startsS.length - (places[index] ?? 1)];
      return inItsPlace === undefined ? 0 : inItsPlace + timeS + handS;
    });
    let startS = Math.max(startsS.at(-1) ?? 0, ...bySpace);
    while ((startsS[nearest] ?? startS) + oneSheetS + handS <= startS) nearest += 1;
    for (let moved = true; moved; ) {
      moved = false;
      for (let other = nearest; other < startsS.length; other += 1) {
        const otherS = startsS[other] ?? 0;
        const clash = spanAt(clashes, startS - otherS);
        if (clash === undefined) continue;
        startS = otherS + clash[1] + 1;
        moved = true;
      }
    }
    startsS.push(startS);
  }
  return { startsS, endS: (startsS.at(-1) ?? 0) + oneSheetS };
}
