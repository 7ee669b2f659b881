import { opticsOf, returnOf } from "./layerOptics.ts";

const NODES = 256;
/** Square root of the densest layer in the table. */
const MOST = 1.8;
const STEP = MOST / (NODES - 1);

// In the root of the density the share that comes back starts flat, and cubic pieces follow it to 2e-8.
const [factors, slopes] = tabled();

/**
 * The share of light that comes down again on the base, from a table; for gelatin, n = 1.5. Inner helper of drawn papers, which
 * ask for it fifty thousand times.
 */
export function quickReturn(layerDensity: number): number {
  const root = Math.sqrt(layerDensity);
  if (!(root < MOST)) return returnOf(layerDensity, opticsOf(1.5)).factor;
  const place = root / STEP;
  const node = Math.min(Math.floor(place), NODES - 2);
  const t = place - node;
  const rest = 1 - t;
  const left = factors[node] ?? 0;
  const right = factors[node + 1] ?? 0;
  const leftSlope = slopes[node] ?? 0;
  const rightSlope = slopes[node + 1] ?? 0;
  return (
    rest * rest * ((1 + 2 * t) * left + t * STEP * leftSlope) +
    t * t * ((1 + 2 * rest) * right - rest * STEP * rightSlope)
  );
}

function tabled(): readonly [Float64Array, Float64Array] {
  const factorAt = new Float64Array(NODES);
  const slopeAt = new Float64Array(NODES);
  const optics = opticsOf(1.5);
  for (let node = 0; node < NODES; node += 1) {
    const root = node * STEP;
    const { factor, slope } = returnOf(root * root, optics);
    factorAt[node] = factor;
    slopeAt[node] = 2 * root * slope;
  }
  return [factorAt, slopeAt];
}
