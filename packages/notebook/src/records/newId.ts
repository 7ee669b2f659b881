import type { RecordId } from "./recordId.ts";

/** Crockford's base 32: no I, L, O, U, so that a code read aloud cannot be mistaken. */
const digits = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

/** `now` in whole milliseconds since 1970 (UTC); `random` in [0, 1), asked sixteen times for five bits each. */
export interface NewIdInput {
  readonly now: number;
  readonly random: () => number;
}

/**
 * The id of a new record or list item: 26 characters that sort by the time they were made.
 *
 * Formula  48 bits of time in ms, then 80 random bits, in base 32 (10 + 16 digits).
 * Units    now in ms.
 *
 * @source none: common practice for identifiers that sort by time (common practice)
 */
export function newId({ now, random }: NewIdInput): RecordId {
  let time = "";
  for (let rest = Math.floor(now), place = 0; place < 10; place++) {
    time = digits.charAt(rest % 32) + time;
    rest = Math.floor(rest / 32);
  }
  let chance = "";
  for (let place = 0; place < 16; place++) chance += digits.charAt(Math.floor(random() * 32) & 31);
  return (time + chance) as RecordId;
}
