import type { Half } from "./bathPriors.ts";

/** One pair of halves that may be true, and how much it weighs. */
export interface WearPoint {
  readonly halfLifeH: number;
  readonly halfAreaM2L: number;
  readonly weight: number;
}

/** What a strip said: how many halvings, after so many hours and so much paper to the litre. */
export interface StripSaid {
  readonly ageH: number;
  readonly areaM2L: number;
  readonly halvings: number;
}

/** A strip is judged by eye: a tenth of its time, more or less (assumed). */
const stripSd = 0.15;
const steps = 41;
const widthSd = 3.2;

/** All pairs of the two halves on a grid over their doubt, weighed by what the strips said. */
export function wearGrid({
  halfLifeH,
  halfAreaM2L,
  strips,
}: {
  readonly halfLifeH: Half;
  readonly halfAreaM2L: Half;
  readonly strips: readonly StripSaid[];
}): readonly WearPoint[] {
  const normal = Array.from({ length: steps }, (_, place) => (2 * place * widthSd) / (steps - 1) - widthSd);
  const points = normal.flatMap((x) =>
    normal.map((y) => {
      const point = {
        halfLifeH: halfLifeH.value * Math.exp(halfLifeH.sdLn * x),
        halfAreaM2L: halfAreaM2L.value * Math.exp(halfAreaM2L.sdLn * y),
      };
      const off = strips.reduce((sum, said) => {
        const miss = (said.ageH / point.halfLifeH + said.areaM2L / point.halfAreaM2L - said.halvings) / stripSd;
        return sum + miss ** 2;
      }, 0);
      return { ...point, log: -(x * x + y * y + off) / 2 };
    }),
  );
  // Far from all strips every weight would be nothing: the best pair is the measure.
  const best = Math.max(...points.map(({ log }) => log));
  return points.map(({ log, ...point }) => ({ ...point, weight: Math.exp(log - best) }));
}

/** The middle and the nine in ten of what each point says. */
export function spreadOf(
  points: readonly WearPoint[],
  of: (point: WearPoint) => number,
): { readonly value: number; readonly low: number; readonly high: number } {
  const sorted = points.map((point) => ({ at: of(point), weight: point.weight })).sort((a, b) => a.at - b.at);
  const total = sorted.reduce((sum, { weight }) => sum + weight, 0);
  const quantile = (share: number) => {
    let passed = 0;
    for (const { at, weight } of sorted) {
      passed += weight;
      if (passed >= share * total) return at;
    }
    return sorted.at(-1)?.at ?? 0;
  };
  return { value: quantile(0.5), low: quantile(0.05), high: quantile(0.95) };
}
