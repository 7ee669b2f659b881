import type { Half } from "./bathPriors.ts";

/** Hours and paper that a bath has behind it at some moment; null where nobody knows. */
export interface Past {
  readonly ageH: number | null;
  /** m² to a litre. */
  readonly areaM2L: number | null;
}

/** A strip through the bath: how much longer it took than when fresh. */
export interface StripSeen extends Past {
  readonly timeFactor: number;
  readonly sdLn: number;
}

/** Halves of a bath as weighted points: what is believed of them together. */
export interface WearGrid {
  readonly lifeH: Float64Array;
  readonly areaM2L: Float64Array;
  readonly weight: Float64Array;
  /** Halvings that an unknown past has brought, one a point. */
  readonly unknown: Float64Array;
}

const SIDE = 61;
const REACH = 3.6;
/** An unknown past is somewhere about a third of a halving, give or take a factor of three. */
const UNKNOWN = { value: 1 / 3, sdLn: 1.1 };

/**
 * The grid of half-lives and half-areas, each weighed by its prior and by how well it explains the strips.
 *
 * Points lie evenly in the logarithms, so that no chance is needed. Inner helper of the wear.
 */
export function wearGrid(life: Half, area: Half, strips: readonly StripSeen[]): WearGrid {
  const size = SIDE * SIDE;
  const grid = {
    lifeH: new Float64Array(size),
    areaM2L: new Float64Array(size),
    weight: new Float64Array(size),
    unknown: new Float64Array(size),
  };
  let total = 0;
  for (let row = 0; row < SIDE; row++) {
    for (let column = 0; column < SIDE; column++) {
      // Each moved by a part of a step, so that along either axis no two points fall together.
      const first = scoreAt(row + partOf(column));
      const second = scoreAt(column + partOf(row));
      const at = row * SIDE + column;
      const lifeH = life.value * Math.exp(first * life.sdLn);
      const areaM2L = area.value * Math.exp(second * area.sdLn);
      let lnWeight = -(first * first + second * second) / 2;
      for (const strip of strips) {
        const miss = (Math.log(strip.timeFactor) - Math.LN2 * halvingsOf(strip, lifeH, areaM2L, 0)) / strip.sdLn;
        lnWeight -= (miss * miss) / 2;
      }
      const weight = Math.exp(lnWeight);
      grid.lifeH[at] = lifeH;
      grid.areaM2L[at] = areaM2L;
      grid.weight[at] = weight;
      // Neighbours take turns through the scores, evenly and without regard to row and column.
      grid.unknown[at] = UNKNOWN.value * Math.exp(scoreAt((row * 23 + column * 37) % SIDE) * UNKNOWN.sdLn * NARROW);
      total += weight;
    }
  }
  for (let at = 0; at < size; at++) grid.weight[at] = (grid.weight[at] as number) / total;
  return grid;
}

/** Even scores spread wider than a normal of one standard deviation; this brings them back. */
const NARROW = 1 / (REACH / Math.sqrt(3));

/** Between −½ and ½, evenly, also over a few neighbours: multiples of the golden section. */
function partOf(index: number): number {
  return ((index * 0.6180339887498949) % 1) - 0.5;
}

function scoreAt(index: number): number {
  return REACH * ((2 * index) / (SIDE - 1) - 1);
}

/** Halvings that a past brings; `unknown` stands for each part nobody knows. */
export function halvingsOf({ ageH, areaM2L }: Past, lifeH: number, halfAreaM2L: number, unknown: number): number {
  return (ageH === null ? unknown : ageH / lifeH) + (areaM2L === null ? unknown : areaM2L / halfAreaM2L);
}
