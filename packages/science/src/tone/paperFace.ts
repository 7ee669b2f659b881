import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireFinite } from "../errors/require.ts";
import { type LayerOptics, opticsOf, returnOf } from "./layerOptics.ts";
import { type SurfaceInput, surfaceOf } from "./surfaceOf.ts";

/** A bare paper under its clear layer, ready to have silver put into it. */
export interface PaperFace {
  readonly optics: LayerOptics;
  readonly baseDensity: number;
  /** First-surface light. */
  readonly surface: number;
  /** Of the base itself, seen from inside the layer. */
  readonly baseReflectance: number;
  /** No print on this surface is darker; infinite without any surface light. */
  readonly cap: number;
}

export interface PaperFaceInput extends SurfaceInput {
  readonly baseDensity: number;
  readonly refractiveIndex?: number | undefined;
}

/** Density of a print, and its slopes by the density of the layer and by that of the base. */
export interface PrintDensity {
  readonly density: number;
  readonly slope: number;
  readonly slopeByBase: number;
}

// Inner helpers keep positions: they run for every patch of every sheet.

/**
 * The paper of a base density and a finish; what the base reflects is derived from what can be measured.
 *
 * @throws {OutOfDomain} baseTooLight, outOfRange, twoOfOne, unknownWord, negative, notFinite
 */
export function paperFace(
  { baseDensity, refractiveIndex = 1.5, ...finish }: PaperFaceInput,
  key = "baseDensity",
): PaperFace {
  const surface = surfaceOf(finish);
  const optics = opticsOf(refractiveIndex);
  requireFinite({ [key]: baseDensity });
  if (baseDensity <= 0) throw new OutOfDomain("baseTooLight", { baseDensity }, key);
  const fromLayer = 10 ** -baseDensity - surface;
  if (fromLayer <= 0) {
    const cap = -Math.log10(surface);
    if (finish.surface === undefined) throw new OutOfDomain("outOfRange", { [key]: baseDensity, below: cap }, key);
    throw new OutOfDomain("outOfRange", { surface, below: 10 ** -baseDensity }, "surface");
  }
  const baseReflectance = fromLayer / (optics.couplingC + optics.internalDiffuse * fromLayer);
  if (baseReflectance > 1) throw new OutOfDomain("baseTooLight", { baseDensity, refractiveIndex }, key);
  return { optics, baseDensity, surface, baseReflectance, cap: -Math.log10(surface) };
}

/** The print of a layer's density. */
export function printOf(layerDensity: number, { optics, surface, baseReflectance }: PaperFace): PrintDensity {
  const { secInside45, couplingC, internalDiffuse } = optics;
  const { factor, slope: factorSlope } = returnOf(layerDensity, optics);
  const rest = 1 - baseReflectance * factor;
  const lift = (couplingC * baseReflectance) / rest;
  const way = (1 + secInside45) * layerDensity;
  const fromLayer = lift * 10 ** -way;
  const all = surface + fromLayer;
  // Without surface light a dense layer would leave nothing to take the logarithm of.
  const share = surface === 0 ? 1 : fromLayer / all;
  const density = surface === 0 ? way - Math.log10(lift) : 0 - Math.log10(all);
  const bareLayer = (couplingC * baseReflectance) / (1 - baseReflectance * internalDiffuse);
  const reflectanceByBase =
    ((couplingC / (couplingC + internalDiffuse * bareLayer) ** 2) * (bareLayer + surface)) / (baseReflectance * rest);
  return {
    density,
    slope: share * (1 + secInside45 - (baseReflectance * factorSlope) / (rest * Math.LN10)),
    slopeByBase: share * reflectanceByBase,
  };
}

/**
 * The layer's density that prints `density`; the caller has seen that it lies from the base to below the cap.
 *
 * Newton's method inside a bracket: the curve rises everywhere, and bends only downwards but for the pull of the cap.
 */
export function layerFor(density: number, face: PaperFace): number {
  if (density <= face.baseDensity) return 0;
  let low = 0;
  let high = 1;
  while (printOf(high, face).density < density && high < 1e6) {
    low = high;
    high *= 2;
  }
  let layer = (low + high) / 2;
  for (let step = 0; step < 200; step += 1) {
    const { density: reached, slope } = printOf(layer, face);
    if (reached < density) low = layer;
    else high = layer;
    const newton = layer - (reached - density) / slope;
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - layer) <= 1e-16 + 2e-16 * next) return next;
    layer = next;
  }
  return layer;
}
