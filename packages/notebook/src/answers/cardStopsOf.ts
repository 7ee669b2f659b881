import { OutOfDomain } from "@captray/science/errors";
import { imageCircle, stopBehindLens, stopInFrontOfLens, vignettingAngles, washerStops } from "@captray/science/optics";
import type { Lens } from "../records/index.ts";

export type StopPlace = NonNullable<Lens["stopPlace"]>;

export interface CardStop {
  readonly holeMm: number;
  readonly fNumber: number;
  /** Entrance pupil: the hole as seen from the front. */
  readonly diameterMm: number;
  readonly pupilRatio: number;
  /** What a hole cut half a millimetre too wide costs. */
  readonly halfMmStops: number;
  /** Where a card that stands away from the glass darkens the corners; nothing where it stands at the glass, or the glass was not measured. */
  readonly corners?: {
    readonly fullDeg: number;
    readonly noneDeg: number;
    /** On the paper with a distant subject. */
    readonly fullCircleMm: number;
    readonly noneCircleMm: number;
  };
}

export type CardStops =
  | { readonly kind: "stops"; readonly stops: readonly CardStop[] }
  | { readonly kind: "refused"; readonly fault: OutOfDomain };

/** Holes to cut in card for wanted f-numbers, or what holes already cut amount to; where the card stands counts. */
export function cardStopsOf(
  asked: {
    readonly focalLengthMm: number;
    readonly place?: StopPlace | undefined;
  } & ({ readonly fNumbers: readonly number[] } | { readonly holesMm: readonly number[] }),
): CardStops {
  const { focalLengthMm, place } = asked;
  try {
    const { holesMm } =
      "holesMm" in asked
        ? asked
        : washerStops({
            focalLengthMm,
            fNumbers: asked.fNumbers,
            stopDistanceMm: place?.side === "behind" ? place.distanceMm : 0,
          });
    return { kind: "stops", stops: holesMm.map((holeMm) => stopOf({ focalLengthMm, place, holeMm })) };
  } catch (fault) {
    if (fault instanceof OutOfDomain) return { kind: "refused", fault };
    throw fault;
  }
}

function stopOf({
  focalLengthMm,
  place,
  holeMm,
}: {
  readonly focalLengthMm: number;
  readonly place: StopPlace | undefined;
  readonly holeMm: number;
}): CardStop {
  const stop = { focalLengthMm, stopDistanceMm: place?.distanceMm ?? 0, holeMm };
  const pupils = place?.side === "behind" ? stopBehindLens(stop) : stopInFrontOfLens(stop);
  const cut = { holeMm, ...pupils, halfMmStops: 2 * Math.log2(1 + 0.5 / holeMm) };
  if (place?.glassMm === undefined) return cut;
  const angles = vignettingAngles({ glassMm: place.glassMm, holeMm, stopDistanceMm: place.distanceMm });
  const circle = (halfAngleDeg: number) => imageCircle({ focalLengthMm, halfAngleDeg });
  return {
    ...cut,
    corners: { ...angles, fullCircleMm: circle(angles.fullDeg), noneCircleMm: circle(angles.noneDeg) },
  };
}
