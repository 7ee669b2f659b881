import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite } from "../errors/require.ts";
import { exponentialIntegrals } from "../numbers/exponentialIntegrals.ts";
import { gaussLegendre } from "../numbers/gaussLegendre.ts";

/** What the surface between air and a clear layer of one refractive index does to light, and where to sum it up. */
export interface LayerOptics {
  readonly refractiveIndex: number;
  readonly normalReflectance: number;
  readonly reflectance45: number;
  /** How much longer the way in is, for light at 45° outside. */
  readonly secInside45: number;
  readonly couplingC: number;
  readonly internalDiffuse: number;
  readonly externalDiffuse: number;
  readonly cosCritical: number;
  readonly slopeIntegralJ: number;
  /** Directions inside that are not totally reflected: their cosines, their share of the light, what comes back of it. */
  readonly cosines: Float64Array;
  readonly shares: Float64Array;
  readonly returned: Float64Array;
}

const LN10 = Math.LN10;

// With 12 nodes the return factor of n = 1.5 is right to 3e-14; other indices bend more sharply.
const USUAL_NODES = gaussLegendre(12);
const MANY_NODES = gaussLegendre(64);
const USUAL_INDEX = 1.5;
const USUAL = opticsFor(USUAL_INDEX);

// Inner helpers keep positions: they run for every patch of every sheet.

/** The optics of a refractive index; those of gelatin, 1.5, are kept ready. */
export function opticsOf(refractiveIndex: number): LayerOptics {
  if (refractiveIndex === USUAL_INDEX) return USUAL;
  requireFinite({ refractiveIndex });
  if (refractiveIndex <= 1) throw new OutOfDomain("outOfRange", { refractiveIndex, above: 1 });
  return opticsFor(refractiveIndex);
}

function opticsFor(n: number): LayerOptics {
  const nodes = n === USUAL_INDEX ? USUAL_NODES : MANY_NODES;
  // (n − 1)(n + 1) keeps its digits where n² − 1 loses them.
  const cosCritical = Math.sqrt((n - 1) * (n + 1)) / n;
  const cosInside45 = Math.sqrt(1 - 0.5 / (n * n));
  const count = nodes.at.length;
  const cosines = new Float64Array(count);
  const shares = new Float64Array(count);
  const returned = new Float64Array(count);
  let internal = cosCritical * cosCritical;
  let slope = 2 * cosCritical;
  for (let index = 0; index < count; index += 1) {
    const s = nodes.at[index] ?? 0;
    // The square takes the edge off the root with which reflection falls from total.
    const cosine = cosCritical + (1 - cosCritical) * s * s;
    const width = (nodes.weight[index] ?? 0) * 2 * (1 - cosCritical) * s;
    const sineInside = Math.sqrt(Math.max(0, 1 - cosine * cosine));
    const cosOutside = Math.sqrt(Math.max(0, 1 - (n * sineInside) ** 2));
    const reflected = fresnel(cosOutside, cosine, n);
    cosines[index] = cosine;
    shares[index] = 2 * cosine * width;
    returned[index] = 2 * cosine * width * reflected;
    internal += 2 * cosine * width * reflected;
    slope += 2 * width * reflected;
  }
  const normalReflectance = ((n - 1) / (n + 1)) ** 2;
  const reflectance45 = fresnel(Math.SQRT1_2, cosInside45, n);
  return {
    refractiveIndex: n,
    normalReflectance,
    reflectance45,
    secInside45: 1 / cosInside45,
    couplingC: ((1 - normalReflectance) * (1 - reflectance45)) / (n * n),
    internalDiffuse: internal,
    externalDiffuse: 1 - n * n * (1 - internal),
    cosCritical,
    slopeIntegralJ: slope,
    cosines,
    shares,
    returned,
  };
}

/** Share of unpolarised light thrown back by the surface, either way. */
function fresnel(cosOutside: number, cosInside: number, n: number): number {
  const across = (cosOutside - n * cosInside) / (cosOutside + n * cosInside);
  const along = (n * cosOutside - cosInside) / (n * cosOutside + cosInside);
  return (across * across + along * along) / 2;
}

/** Share of the light going up that comes down again on the base, and how it changes with the layer's density. */
export function returnOf(
  layerDensity: number,
  optics: LayerOptics,
): { readonly factor: number; readonly slope: number } {
  const { cosCritical, cosines, returned } = optics;
  const depth = 2 * LN10 * layerDensity;
  const total = exponentialIntegrals(depth / cosCritical);
  let factor = 2 * cosCritical * cosCritical * total.third;
  let byDepth = -2 * cosCritical * total.second;
  for (let index = 0; index < cosines.length; index += 1) {
    const cosine = cosines[index] ?? 1;
    const back = (returned[index] ?? 0) * Math.exp(-depth / cosine);
    factor += back;
    byDepth -= back / cosine;
  }
  // Adding 0 makes a plain zero of −0.
  return { factor, slope: 2 * LN10 * byDepth + 0 };
}

/** Share of the light going up that leaves into the air, in one pass through the layer. */
export function leavingOf(layerDensity: number, { cosines, shares, returned }: LayerOptics): number {
  let leaving = 0;
  for (let index = 0; index < cosines.length; index += 1) {
    const open = (shares[index] ?? 0) - (returned[index] ?? 0);
    leaving += open * Math.exp((-LN10 * layerDensity) / (cosines[index] ?? 1));
  }
  return leaving;
}
