import type { FlashLamp, Moment } from "../records/index.ts";
import { flashRateOf } from "./flashRateOf.ts";

const nineInTen = 1.645;

export type FlashOf =
  /** No strip has been made for this lamp as it stands: no seconds are given. */
  | { readonly kind: "untested" }
  | {
      readonly kind: "tested";
      readonly timeS: number;
      /** Nine in ten: the same light may need so few seconds, or so many. */
      readonly rangeS: readonly [number, number];
      /** The light itself, in lx·s, with its range. */
      readonly lightLxS: number;
      readonly lightRangeLxS: readonly [number, number];
      /** Whether the strip was of this very paper and index, so that its own doubt falls out. */
      readonly samePaper: boolean;
      readonly testId: string | undefined;
      readonly foundAt: Moment | undefined;
    };

/**
 * Seconds of flash with their doubt, asked as seconds or as light; without a tested set-up there are none.
 *
 * On the paper the strip was made of, strip and plan hang on the same curve, and its doubt falls out of the seconds.
 */
export function flashOf({
  flashLamp,
  paperBoxId,
  exposureIndexId,
  ask,
}: {
  readonly flashLamp: FlashLamp | undefined;
  readonly paperBoxId?: string | undefined;
  /** What places the curve: as a negative the same box has another one. */
  readonly exposureIndexId?: string | undefined;
  readonly ask: { readonly timeS: number } | { readonly lightLxS: number };
}): FlashOf {
  const rate = flashRateOf({ flashLamp, paperBoxId, exposureIndexId });
  if (flashLamp?.rate === undefined || rate === undefined) return { kind: "untested" };
  const timeS = "timeS" in ask ? ask.timeS : ask.lightLxS / rate.valueLx;
  const lightLxS = timeS * rate.valueLx;
  return {
    kind: "tested",
    timeS,
    rangeS: rangeOf(timeS, rate.sdLn),
    lightLxS,
    lightRangeLxS: rangeOf(lightLxS, flashLamp.rate.sdLn),
    samePaper: rate.samePaper,
    testId: flashLamp.rate.testId,
    foundAt: flashLamp.rate.foundAt,
  };
}

function rangeOf(value: number, sdLn: number): readonly [number, number] {
  const spread = Math.exp(nineInTen * sdLn);
  return [value / spread, value * spread];
}
