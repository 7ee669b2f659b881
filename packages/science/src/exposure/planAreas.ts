import { type CheckedMeter, type CheckedReading, ev100Of, type Ground } from "./planReadings.ts";
import type { PlanArea } from "./planTypes.ts";

/** Image-plane exposure per luminance, for the ordinary lens a metered tone supposes. */
const exposureConstant = 0.65;

/** Where every named reading stands, and how far the scene reaches. Inner helper of `plan`. */
export function areasOf(input: {
  readonly readings: readonly CheckedReading[];
  readonly ground: Ground;
  readonly groundEv: number;
  readonly meter: CheckedMeter;
  readonly exposureIndex: number;
}): { readonly areas: readonly PlanArea[]; readonly sceneRangeStops: number } {
  const { readings, ground, groundEv, meter, exposureIndex } = input;
  const areas: PlanArea[] = [];
  let [least, greatest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const reading of readings) {
    const ev = ev100Of(reading, meter);
    if (reading.kind === ground.kind) {
      least = Math.min(least, ev);
      greatest = Math.max(greatest, ev);
    }
    if (reading.area === null) continue;
    const aboveMidStops = ev - groundEv + ground.placeStops;
    const exposureLxS = (exposureConstant * meter.meterK * 2 ** aboveMidStops) / exposureIndex;
    const logExposure = Math.log10(exposureLxS);
    areas.push({ area: reading.area, ev100: ev - meter.offsetStops, aboveMidStops, exposureLxS, logExposure });
  }
  return { areas, sceneRangeStops: greatest - least };
}
