import { parseTime, type TextInput } from "./parseTime.ts";
import { stopsOfTimeMark } from "./timeMarks.ts";

export interface DialTime {
  readonly timeS: number;
  /** Whether the text is a mark of a dial, so that its exact member is meant. */
  readonly marked: boolean;
}

/**
 * The time of a meter reading: a mark of the dial means its exact member, any other time stands as it is.
 *
 * Formula  the grammar of `parseTime`; a value that is a mark (see `exactDialTime`) becomes 2^k s.
 * Units    s
 * Holds    for readings only. A time given with the cap, said, or of a bath is what the watch says: `parseTime`.
 * Error    taking a mark literally costs up to 0.093 stop (15 for 16).
 *
 * @throws {OutOfDomain} unreadable
 * @source nominal-and-exact: powers of two under rounded marks (seen); iso-516 (second hand); shutter-marks: thirds and halves below 1 s (seen)
 * @example dialTime({ text: "1/125" }).timeS // 0.0078125, which is 1/128
 */
export function dialTime({ text }: TextInput): DialTime {
  const timeS = parseTime({ text });
  const stops = stopsOfTimeMark(timeS);
  return stops === undefined ? { timeS, marked: false } : { timeS: 2 ** stops, marked: true };
}
