import { OutOfDomain } from "@captray/science/errors";
import { planWithFacts } from "@captray/science/exposure";
import { discIlluminance, lampIlluminance } from "@captray/science/light";
import type { PlanOf } from "./planOf.ts";

/** How well a distance to a lamp is measured. */
const distanceSdMm = 10;

export type LampMoved =
  | {
      readonly kind: "moved";
      /** + is more time. */
      readonly stops: { readonly value: number; readonly sd: number };
      /** The cap time after the move, nine in ten; nothing where there is no plan yet. */
      readonly time: { readonly timeS: number; readonly lowS: number; readonly highS: number } | undefined;
    }
  | { readonly kind: "refused"; readonly fault: OutOfDomain };

/**
 * What moving a lamp does to the cap time: the square of the distances, or for a round panel its own law close by.
 *
 * The readings are taken to have been made before the move. Light from walls and other lamps does not follow.
 */
export function lampMoved({
  fromMm,
  toMm,
  radiusMm = 0,
  plan,
}: {
  readonly fromMm: number;
  readonly toMm: number;
  /** Of a round panel or a softbox; 0 is a small lamp. */
  readonly radiusMm?: number;
  readonly plan?: PlanOf | undefined;
}): LampMoved {
  try {
    const value = Math.log2(lux(fromMm, radiusMm) / lux(toMm, radiusMm));
    const sd = Math.hypot(slope(fromMm, radiusMm), slope(toMm, radiusMm)) * distanceSdMm;
    if (plan?.kind !== "plan") return { kind: "moved", stops: { value, sd }, time: undefined };
    const moved = planWithFacts({
      ...plan.input,
      filters: [...(plan.input.filters ?? []), { name: "the lamp moved", stops: value, sdStops: sd }],
    });
    const { low, high } = moved.timeIntervalS;
    return { kind: "moved", stops: { value, sd }, time: { timeS: moved.timeS, lowS: low, highS: high } };
  } catch (fault) {
    if (fault instanceof OutOfDomain) return { kind: "refused", fault };
    throw fault;
  }
}

function lux(distanceMm: number, radiusMm: number): number {
  const distanceM = distanceMm / 1000;
  return radiusMm === 0
    ? lampIlluminance({ intensityCd: 1, distanceM })
    : discIlluminance({ intensityCd: 1, distanceM, radiusM: radiusMm / 1000 });
}

/** Stops a millimetre of the distance costs. */
function slope(distanceMm: number, radiusMm: number): number {
  return (2 * distanceMm) / (distanceMm ** 2 + radiusMm ** 2) / Math.LN2;
}
