import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requirePositive } from "../errors/require.ts";
import { parseTime } from "./parseTime.ts";
import { stopsOfTimeMark } from "./timeMarks.ts";

export interface ExactDialTimeInput {
  /** A mark of the dial, as a text ("1/15") or as a number (15). */
  readonly timeS: string | number;
}

/**
 * The time a mark of a shutter or meter dial stands for: the member of its series, not the rounded mark.
 *
 * Formula  t = 2^k s; full stops k whole, thirds k/3, halves k/2. A mark of two series is read in the first of full, third, half.
 * Units    s
 * Holds    for the marks of full, third and half stops from 1/8000 to 60 s, known by their value (relative 1e-6).
 * Error    the largest snap is 0.093 stop (15 s stands for 16); on a half-stop dial 3, 6, 10, 20 are 1/6 stop off.
 *
 * @throws {OutOfDomain} unknownWord, unreadable, notPositive, notFinite
 * @source nominal-and-exact: powers of two under rounded marks (seen); iso-516 (second hand); shutter-marks: thirds and halves below 1 s (seen); none: thirds and halves above 1 s (from memory)
 * @example exactDialTime({ timeS: "1/15" }) // 0.0625, which is 1/16
 */
export function exactDialTime({ timeS }: ExactDialTimeInput): number {
  const markedS = typeof timeS === "number" ? timeS : secondsOf(timeS);
  requirePositive({ timeS: markedS });
  const stops = stopsOfTimeMark(markedS);
  if (stops === undefined) {
    throw new OutOfDomain("unknownWord", { timeS, wanted: "a mark of full, third or half stops from 1/8000 to 60 s" });
  }
  return 2 ** stops;
}

function secondsOf(text: string): number {
  try {
    return parseTime({ text });
  } catch (error) {
    if (error instanceof OutOfDomain) throw new OutOfDomain(error.code, error.facts, "timeS");
    throw error;
  }
}
