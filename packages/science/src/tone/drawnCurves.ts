import { type Development, developedAt, layerAt } from "./development.ts";
import { quickReturn } from "./quickReturn.ts";
import { shareOfPlace, straightPlace } from "./richards.ts";

/** Many curves as flat numbers: the facts of each, and its densities at places spread evenly over it. */
export interface DrawnCurves {
  readonly facts: Float64Array;
  readonly densities: Float64Array;
}

const NODES = 96;
/** The table reaches from this share to this near to 1; what lies beyond is worked out anew each time. */
const LEAST_SHARE = 1e-4;
const LEAST_REST = 1e-5;

/** What is kept of a curve, in this order. */
const FACTS = 14;
const [BY_LOG, PLACE_0, FIRST, BY_STEP, Q, LAYER_0, LAYER_BY_SHARE, WAY, LIFT, BASE, SURFACE, PHI, RATE, LIGHTEST] = [
  0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13,
] as const;

// Inner helpers keep positions: they run for every patch of every paper drawn.

/** Tables the curves of papers in their baths. */
export function drawnCurves(developments: readonly Development[]): DrawnCurves {
  const facts = new Float64Array(developments.length * FACTS);
  const densities = new Float64Array(developments.length * NODES);
  for (const [draw, development] of developments.entries()) {
    const { curve, face, x50 } = development;
    const at = draw * FACTS;
    const { slope, start } = straightPlace({ x50, width: curve.width, q: curve.q });
    const first = Math.log(LEAST_SHARE) / curve.q;
    const last = Math.log(curve.q / LEAST_REST);
    const step = (last - first) / (NODES - 1);
    const layerAtNone = layerAt(developedAt(0, development), development);
    facts[at + BY_LOG] = slope;
    facts[at + PLACE_0] = start;
    facts[at + FIRST] = first;
    facts[at + BY_STEP] = 1 / step;
    facts[at + Q] = curve.q;
    facts[at + LAYER_0] = layerAtNone;
    facts[at + LAYER_BY_SHARE] = layerAt(developedAt(1, development), development) - layerAtNone;
    facts[at + WAY] = 1 + face.optics.secInside45;
    facts[at + LIFT] = face.optics.couplingC * face.baseReflectance;
    facts[at + BASE] = face.baseReflectance;
    facts[at + SURFACE] = face.surface;
    facts[at + PHI] = curve.phi;
    facts[at + RATE] = curve.fr;
    facts[at + LIGHTEST] = curve.Db;
    for (let node = 0; node < NODES; node += 1) {
      densities[draw * NODES + node] = workedOut(facts, at, first + node * step);
    }
  }
  return { facts, densities };
}

/** Flare by mean image exposure of a drawn lens. */
export function flareOfDrawn({ facts }: DrawnCurves, draw: number): number {
  return facts[draw * FACTS + PHI] ?? 0;
}

/** Lux-seconds of flash a second of a drawn lamp. */
export function flashRateOfDrawn({ facts }: DrawnCurves, draw: number): number {
  return facts[draw * FACTS + RATE] ?? 0;
}

/** Density that a drawn paper prints at a log exposure, all of it; `unevenness` is that of the patch. */
export function densityOfDrawn(
  { facts, densities }: DrawnCurves,
  draw: number,
  logExposure: number,
  unevenness: number,
): number {
  const at = draw * FACTS;
  const place = (facts[at + BY_LOG] ?? 0) * logExposure + (facts[at + PLACE_0] ?? 0);
  const along = (place - (facts[at + FIRST] ?? 0)) * (facts[at + BY_STEP] ?? 0);
  const node = Math.floor(along);
  const density =
    node >= 1 && node < NODES - 2 ? cubic(densities, draw * NODES + node, along - node) : workedOut(facts, at, place);
  // A print is never lighter than its base, nor darker than its surface.
  const cap = -Math.log10(facts[at + SURFACE] ?? 0);
  return Math.min(Math.max(density + unevenness, facts[at + LIGHTEST] ?? 0), cap);
}

/** Lagrange's cubic through four neighbours, `t` of the way from the second to the third. */
function cubic(values: Float64Array, node: number, t: number): number {
  const a = values[node - 1] ?? 0;
  const b = values[node] ?? 0;
  const c = values[node + 1] ?? 0;
  const d = values[node + 2] ?? 0;
  const third = (d - a) / 6 + (b - c) / 2;
  const second = (a + c) / 2 - b;
  return b + t * (c - a / 3 - b / 2 - d / 6 + t * (second + t * third));
}

function workedOut(facts: Float64Array, at: number, place: number): number {
  const share = shareOfPlace(place, facts[at + Q] ?? 1);
  const layer = (facts[at + LAYER_0] ?? 0) + (facts[at + LAYER_BY_SHARE] ?? 0) * share;
  const rest = 1 - (facts[at + BASE] ?? 0) * quickReturn(layer);
  const fromLayer = ((facts[at + LIFT] ?? 0) / rest) * Math.exp(-Math.LN10 * (facts[at + WAY] ?? 0) * layer);
  return -Math.log10((facts[at + SURFACE] ?? 0) + fromLayer);
}
