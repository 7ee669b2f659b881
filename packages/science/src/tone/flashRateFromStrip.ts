import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireNotNegative, requirePositive } from "../errors/require.ts";

export interface FlashRateFromStripInput {
  /** The longest step that cannot be told from the bare one. */
  readonly lastUnseenS: number;
  /** The shortest step that can. */
  readonly firstSeenS: number;
  /** The least flash that shows, and the doubt of its natural logarithm: paper and eye. */
  readonly thresholdLxS: number;
  readonly thresholdSdLn?: number | undefined;
  /** Of that doubt what the eye adds. */
  readonly eyeSdLn?: number | undefined;
}

export interface FlashRate {
  /** lx·s a second. */
  readonly rateLx: number;
  /** One standard deviation of its natural logarithm. */
  readonly sdLn: number;
  /** Without the paper's own doubt: what holds for more sheets of the same paper and baths, reckoned with the same curve. */
  readonly stripSdLn: number;
}

/**
 * What a flash lamp gives the paper a second, from the first step of a strip that shows.
 *
 * Formula  t between the last step not seen and the first seen, evenly in ln t: r = H / √(t₁ t₂); σ² = (ln(t₂ / t₁))² / 12 + σ_H².
 * Units    times in s; H in lx·s; r in lx·s a second; doubts of natural logarithms.
 * Holds    for this lamp as it stands, this paper and these baths; the light of the lamp counts as the paper sees it.
 * Error    a stop between steps is 0.20 in ln r; what a dim long flash loses, and several short ones, is in r for this set-up only.
 *
 * @throws {OutOfDomain} notPositive, negative, outOfRange, notFinite
 * @source none: the first step that shows is common practice; none: an even distribution spreads by its width / √12 (by hand)
 * @example flashRateFromStrip({ lastUnseenS: 6, firstSeenS: 12, thresholdLxS: 1.2 }).rateLx // 0.141421356
 */
export function flashRateFromStrip({
  lastUnseenS,
  firstSeenS,
  thresholdLxS,
  thresholdSdLn = 0,
  eyeSdLn = 0,
}: FlashRateFromStripInput): FlashRate {
  requirePositive({ lastUnseenS, firstSeenS, thresholdLxS });
  requireNotNegative({ thresholdSdLn, eyeSdLn });
  if (firstSeenS <= lastUnseenS) throw new OutOfDomain("outOfRange", { firstSeenS, above: lastUnseenS });
  const between = Math.log(firstSeenS / lastUnseenS) / Math.sqrt(12);
  return {
    rateLx: thresholdLxS / Math.sqrt(lastUnseenS * firstSeenS),
    sdLn: Math.hypot(between, thresholdSdLn),
    stripSdLn: Math.hypot(between, eyeSdLn),
  };
}
