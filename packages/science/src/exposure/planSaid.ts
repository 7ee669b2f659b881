import type { LedgerFactsOf } from "../errors/ledgerFacts.ts";
import type { LensOnTheBoard } from "./planLens.ts";
import type { LongExposure } from "./planLongExposure.ts";
import type { CheckedMeter } from "./planReadings.ts";
import type { PlanInput, SaidAnswer } from "./planTypes.ts";
import { rankSlips } from "./rankSlips.ts";
import { saidRounding } from "./saidRounding.ts";
import { positiveAt } from "./valuesAt.ts";

/** “I worked it out as …”: compares that with the ledger; null where nothing was said. Inner helper of `plan`. */
export function saidOf(asked: {
  readonly input: PlanInput;
  readonly facts: LedgerFactsOf;
  readonly meter: CheckedMeter;
  readonly lens: LensOnTheBoard;
  readonly long: LongExposure;
}): SaidAnswer | null {
  const { input, facts, meter, lens, long } = asked;
  const { reading, filters } = facts;
  if (input.saidTimeS === undefined) return null;

  const saidTimeS = positiveAt(input.saidTimeS, "", "saidTimeS");
  const roundingS = positiveAt(input.saidRoundingS ?? saidRounding(saidTimeS), "", "saidRoundingS");
  let neutralDensity = 0;
  let densityStops = 0;
  for (const filter of filters.filters) {
    if (filter.way !== "neutralDensity") continue;
    neutralDensity += filter.value;
    densityStops += filter.stops;
  }
  const { trueTimeS: _, ...said } = rankSlips(
    {
      readingStops: reading.stops - meter.offsetStops,
      readingIsOneTime: reading.averaged === 1 && reading.way === "timeS",
      bridgeStops: facts.exposureIndex.stops,
      clickStops: meter.clickStops,
      apertureStops: facts.aperture.stops,
      nominalApertureStops: lens.markedFNumber === null ? null : 2 * Math.log2(lens.markedFNumber / reading.fNumber),
      bellowsStops: facts.extension.stops,
      neutralDensity,
      densityStops,
      filterStops: filters.stops - densityStops,
      colourStops: facts.colourOfLight.stops,
      glassStops: facts.transmission.stops,
      otherStops: facts.place.stops + meter.offsetStops,
      longExposure: (meteredTimeS) => long.needed(meteredTimeS).timeS,
    },
    saidTimeS,
    roundingS,
  );
  return said;
}
