import { driftEffectiveTime } from "./driftEffectiveTime.ts";
import type { BathReading } from "./laneTypes.ts";
import type { ProcessStep } from "./processTypes.ts";

/** What the time of one stay is worth, and when it ends. Inner helper of the engine. */
export interface StayClock {
  /** As it was when the sheet went in; null where the step has no temperature. */
  readonly bathC: number | null;
  /** Seconds in this bath, as seconds at the reference temperature. */
  readonly effectiveS: (actualS: number) => number;
  /** How long the stay is to last. */
  readonly dueS: number;
}

interface Piece {
  readonly fromS: number;
  readonly bathC: number;
  readonly airC: number;
  readonly timeConstantS: number | undefined;
}

const mostSteps = 100;
/** Far below what a clock can tell. */
const nearS = 1e-9;

/**
 * The clock of a stay: constant where only one temperature is known, piece by piece where the bath was measured again, drifting
 * where the air is known too. A temperature that is no number leaves the time as it is written: a run never ends for that.
 */
export function stayClock(
  step: ProcessStep,
  { startS, readings, at }: { readonly startS: number; readonly readings: readonly BathReading[]; readonly at: number },
): StayClock {
  const { timeS, bathC: plannedC, referenceC = 20, q10 = 2 } = step;
  const own = readings.filter((reading) => reading.step === at && Number.isFinite(reading.bathC));
  const first = own.findLast((reading) => reading.atS <= startS);
  const pieces: Piece[] = [];
  if (first !== undefined) pieces.push(pieceOf(first, startS));
  else if (plannedC !== undefined && Number.isFinite(plannedC)) pieces.push(steady(plannedC));
  for (const reading of own) if (reading.atS > startS) pieces.push(pieceOf(reading, startS));
  const [began] = pieces;
  if (began === undefined) return { bathC: null, effectiveS: (actualS) => actualS, dueS: timeS };
  if (pieces.length === 1 && began.timeConstantS === undefined && began.fromS <= 0) {
    const { bathC } = began;
    return {
      bathC,
      effectiveS: (actualS) => actualS * q10 ** ((bathC - referenceC) / 10),
      dueS: timeS * q10 ** ((referenceC - bathC) / 10),
    };
  }
  const effectiveS = (actualS: number) => {
    let sum = Math.min(actualS, Math.max(0, began.fromS));
    for (const [index, piece] of pieces.entries()) {
      const from = Math.max(0, piece.fromS);
      const to = Math.min(actualS, pieces[index + 1]?.fromS ?? Number.POSITIVE_INFINITY);
      if (to > from) sum += worthOf(piece, to - from);
    }
    return sum;
  };
  return { bathC: began.fromS > 0 ? null : began.bathC, effectiveS, dueS: inverse(effectiveS, timeS) };

  function worthOf({ bathC, airC, timeConstantS }: Piece, lastS: number): number {
    if (timeConstantS === undefined || !(q10 > 1 && q10 <= 4)) return lastS * q10 ** ((bathC - referenceC) / 10);
    return driftEffectiveTime({ timeS: lastS, startC: bathC, airC, timeConstantS, referenceC, q10 });
  }
}

function steady(bathC: number): Piece {
  return { fromS: 0, bathC, airC: bathC, timeConstantS: undefined };
}

/** A reading as a piece of the stay: one from before it has drifted until the sheet went in. */
function pieceOf({ atS, bathC, airC, timeConstantS }: BathReading, startS: number): Piece {
  const fromS = atS - startS;
  const drifts = airC !== undefined && timeConstantS !== undefined && Number.isFinite(airC) && timeConstantS > 0;
  if (!drifts) return { ...steady(bathC), fromS: Math.max(0, fromS) };
  const left = fromS < 0 ? Math.exp(fromS / timeConstantS) : 1;
  return { fromS: Math.max(0, fromS), bathC: airC + (bathC - airC) * left, airC, timeConstantS };
}

/** When a rising clock comes to a value: doubled until it is past, then by chords, each end's weight halved while it stays. */
function inverse(clock: (timeS: number) => number, wanted: number): number {
  let high = wanted;
  for (let doubled = 0; clock(high) < wanted && doubled < 20; doubled += 1) high *= 2;
  let [low, belowBy, aboveBy] = [0, -wanted, clock(high) - wanted];
  for (let step = 0; step < mostSteps && high - low > nearS; step += 1) {
    const middle = aboveBy === belowBy ? (low + high) / 2 : high - (aboveBy * (high - low)) / (aboveBy - belowBy);
    const by = clock(middle) - wanted;
    if (Math.abs(by) <= nearS) return middle;
    if (by < 0) [low, belowBy, aboveBy] = [middle, by, aboveBy / 2];
    else [high, aboveBy, belowBy] = [middle, by, belowBy / 2];
  }
  return (low + high) / 2;
}
