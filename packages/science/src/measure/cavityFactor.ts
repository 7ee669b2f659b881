import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite, requireNotNegative, requireWithin } from "../errors/require.ts";

/** How much lighter a patch reads than when calibrated: (1 − g R̄cal) / (1 − g R̄). */
export function cavityFactor({
  gain,
  surround,
  calibrationSurround,
}: {
  readonly gain: number;
  readonly surround: number;
  readonly calibrationSurround: number;
}): number {
  requireFinite({ gain, surround, calibrationSurround });
  requireNotNegative({ surround, calibrationSurround });
  requireWithin({ surround, calibrationSurround }, { least: 0, most: 1 });
  const left = 1 - gain * surround;
  const leftThen = 1 - gain * calibrationSurround;
  if (gain < 0 || gain >= 1 || left <= 0 || leftThen <= 0) {
    throw new OutOfDomain("cavityImpossible", { gain, surround, calibrationSurround });
  }
  return leftThen / left;
}
