import type { OutOfDomain } from "@captray/science/errors";
import { type PlanInput, planDefaults, planWithFacts, reciprocityEffectiveTime } from "@captray/science/exposure";
import type { ExposureIndex, Test } from "../records/index.ts";
import type { Kit } from "./kit.ts";
import { paperLawOf } from "./paperLawOf.ts";
import { type MissingPart, supposedSource } from "./planInputOf.ts";
import { planOf } from "./planOf.ts";
import { stepStrips } from "./stepStrips.ts";

export type StepTestIndex =
  | {
      readonly kind: "found";
      /** The seconds that print the board mid grey. */
      readonly timeS: number;
      readonly value: { readonly value: number; readonly sdStops: number };
      readonly found: Extract<ExposureIndex["found"], { how: "ownSheets" }>;
      /** Against the index the test was planned with: + when the paper is faster. */
      readonly fasterStops: number;
    }
  | { readonly kind: "missing"; readonly missing: readonly MissingPart[] }
  | { readonly kind: "refused"; readonly fault: OutOfDomain };

/**
 * The exposure index that a step test gives, from the strip that printed the board mid grey; 2.5 lies between the second and third.
 *
 * It is an index of one's own sheets: light, glass and meter of the test are in it, so that the same scene planned again
 * with it asks for the very seconds of that strip.
 */
export function stepTestIndex({
  kit,
  test,
  strip,
  planned,
}: {
  readonly kit: Kit;
  readonly test: Test;
  readonly strip: number;
  /** What was asked when the test went to the cap: the scene may have been read, focused or lit anew since. */
  readonly planned?: PlanInput | undefined;
}): StepTestIndex {
  const strips = stepStrips({ test });
  const [below, above] = [strips[Math.floor(strip) - 1], strips[Math.ceil(strip) - 1]];
  const index = kit.exposureIndex;
  if (index?.value === undefined || below === undefined || above === undefined) {
    return { kind: "missing", missing: ["exposureIndex"] };
  }
  const timeS = Math.sqrt(below.timeS * above.timeS);
  const found = {
    how: "ownSheets",
    source: planned?.light?.source ?? kit.scene.light?.source ?? supposedSource,
    ...glassOf(kit),
    ...(kit.meter && { meterId: kit.meter.id }),
    timesS: [timeS],
    sheetIds: test.sheetIds ?? [],
  } as const;
  const { value } = index.value;
  const asOwn = { ...index, value: { value, sdStops: planDefaults.exposureIndexSdStops.stepTest }, found };
  const plan = planOf({ ...kit, exposureIndex: asOwn, meterThen: undefined });
  if (plan.kind !== "plan") return plan;
  const boardTimeS = planWithFacts(onMid({ ...plan.input, ...(planned && asThen(planned)) })).timeS;
  const { reciprocityExponent: exponent, reciprocityFromS: fromS } = paperLawOf({ kit });
  const worth = (seconds: number) => reciprocityEffectiveTime({ timeS: seconds, exponent, fromS });
  const fasterStops = Math.log2(worth(boardTimeS) / worth(timeS));
  return {
    kind: "found",
    timeS,
    value: { value: value * 2 ** fasterStops, sdStops: sdOf(test) },
    found,
    fasterStops,
  };
}

/** What the test was given with; paper and meter are those of the index that is looked for. */
function asThen({ readings, lens, focus, filters, light }: PlanInput): Partial<PlanInput> {
  return {
    readings,
    lens,
    ...(focus && { focus }),
    ...(filters && { filters }),
    ...(light && { light }),
  };
}

/** The board is to print mid grey, wherever the scene places what it points at. */
function onMid({ place, ...input }: PlanInput): PlanInput {
  return place === undefined ? input : { ...input, place: { ...place, stops: 0 } };
}

/** Strips farther apart than a stop cannot tell what strips of one stop can. */
function sdOf(test: Test): number {
  const stops = stepStrips({ test }).map(({ plannedS }) => Math.log2(plannedS));
  const apart = ((stops.at(-1) ?? 0) - (stops[0] ?? 0)) / Math.max(1, stops.length - 1);
  return planDefaults.exposureIndexSdStops.stepTest * Math.max(1, apart);
}

function glassOf({ lens }: Kit) {
  const held = lens?.sort === "pinhole" ? planDefaults.pinhole : planDefaults.lens;
  return { glass: lens?.glass ?? held.glass, transmission: lens?.transmission?.value ?? held.transmission };
}
