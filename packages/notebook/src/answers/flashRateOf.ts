import type { FlashLamp } from "../records/index.ts";

/** A lamp's rate with the doubt that counts for this paper. */
export interface FlashRateOf {
  readonly valueLx: number;
  /** Of its natural logarithm. */
  readonly sdLn: number;
  /** Whether the strip was of this very paper and index: then strip and print hang on one curve, whose doubt falls out. */
  readonly samePaper: boolean;
}

/** What a lamp gives this paper a second, or nothing where no strip was made for it as it stands. Inner helper. */
export function flashRateOf({
  flashLamp,
  paperBoxId,
  exposureIndexId,
}: {
  readonly flashLamp: FlashLamp | undefined;
  readonly paperBoxId?: string | undefined;
  readonly exposureIndexId?: string | undefined;
}): FlashRateOf | undefined {
  const rate = flashLamp?.rate;
  if (rate === undefined) return undefined;
  const samePaper =
    paperBoxId !== undefined && rate.paperBoxId === paperBoxId && rate.exposureIndexId === exposureIndexId;
  return { valueLx: rate.valueLx, sdLn: samePaper ? (rate.stripSdLn ?? rate.sdLn) : rate.sdLn, samePaper };
}
