/** Something that touched the screen, a key or a pedal, in ms of one clock that only rises. */
export interface PressCountsInput {
  readonly downMs: number;
  readonly upMs: number;
  /** When the last press that counted went down; nothing before the first. */
  readonly lastMs?: number | undefined;
  /** How many fingers or drops were on the glass at once. */
  readonly touches?: number | undefined;
  /** A key that is held down and sends itself again. */
  readonly isKeyRepeat?: boolean | undefined;
}

export type PressCounts =
  | { readonly counts: true }
  | { readonly counts: false; readonly why: "keyRepeat" | "severalTouches" | "tooShort" | "tooLong" | "tooSoon" };

const leastMs = 80;
const mostMs = 1500;
const apartMs = 2000;

/**
 * Whether a touch, a key or a pedal counts as a press: splashes, key repeat, a hand laid down and a second press at once do not.
 *
 * Method   one finger, held 80 to 1500 ms, down no sooner than 2 s after the last press that counted; a key counts once however long it repeats.
 * Units    ms.
 * Holds    for wet gloves on glass; a hold of 2 s is the take-back's own press and is asked for elsewhere.
 *
 * @source none: limits chosen for gloves and splashes (assumption)
 * @example pressCounts({ downMs: 1000, upMs: 1150 }).counts // true
 */
export function pressCounts({ downMs, upMs, lastMs, touches = 1, isKeyRepeat = false }: PressCountsInput): PressCounts {
  if (isKeyRepeat) return { counts: false, why: "keyRepeat" };
  if (touches > 1) return { counts: false, why: "severalTouches" };
  const heldMs = upMs - downMs;
  if (!(heldMs >= leastMs)) return { counts: false, why: "tooShort" };
  if (heldMs > mostMs) return { counts: false, why: "tooLong" };
  if (lastMs !== undefined && downMs - lastMs < apartMs) return { counts: false, why: "tooSoon" };
  return { counts: true };
}
