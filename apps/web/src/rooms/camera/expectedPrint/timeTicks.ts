import { showTime } from "@captray/science/notation";

export interface TimeTick {
  /** Stops from the ledger's time. */
  readonly at: number;
  readonly words?: string;
}

// Figured first to last, as room allows: the round times of a watch.
const figured = [1, 60, 4, 15, 240, 30, 2, 8, 120, 0.5, 900, 1800, 3600, 480, 0.25, 14_400];
const between = [
  0.3, 0.4, 0.6, 0.7, 0.8, 0.9, 1.5, 3, 5, 6, 7, 9, 10, 12, 20, 25, 40, 50, 80, 100, 150, 180, 300, 360, 420, 600, 720,
  1200, 1500, 2400, 3000, 5400, 7200, 10_800,
];

/** The marks of a scale of cap times: upright at the times of a watch, with figures where they do not touch. */
export function timeTicks({
  ledgerS,
  least,
  most,
  perStopPx,
  letterPx,
}: {
  readonly ledgerS: number;
  /** Ends of the scale, in stops from the ledger's time. */
  readonly least: number;
  readonly most: number;
  readonly perStopPx: number;
  readonly letterPx: number;
}): readonly TimeTick[] {
  const place = (timeS: number) => Math.log2(timeS / ledgerS);
  const inside = (timeS: number) => place(timeS) >= least - 1e-9 && place(timeS) <= most + 1e-9;
  const taken: { readonly from: number; readonly to: number }[] = [];
  const ticks: TimeTick[] = [];
  for (const timeS of figured.filter(inside)) {
    const at = place(timeS);
    const words = tickWords(timeS);
    const half = (words.length * 0.46 * letterPx) / 2 + 4;
    const box = { from: at * perStopPx - half, to: at * perStopPx + half };
    const isFree = taken.every((other) => box.to <= other.from || other.to <= box.from);
    if (isFree) taken.push(box);
    ticks.push(isFree ? { at, words } : { at });
  }
  for (const timeS of between.filter(inside)) {
    const at = place(timeS);
    if (ticks.every((other) => Math.abs(other.at - at) * perStopPx >= 4)) ticks.push({ at });
  }
  return ticks.sort((one, other) => one.at - other.at);
}

/** “1”, “30”, “1 min”, “1 h”: seconds without their unit. */
function tickWords(timeS: number): string {
  if (timeS >= 3600) return `${timeS / 3600} h`;
  if (timeS >= 60) return `${timeS / 60} min`;
  return showTime({ timeS }).replace(/ s$/, "");
}
